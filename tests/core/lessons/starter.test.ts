import { describe, expect, it } from 'vitest';
import { quantities, stages } from '#core/journal';
import {
  cautions,
  cautionsAtReading,
  cautionsAtSetUp,
  starters,
  unitAndMark,
  unitFamilies,
} from '#core/lessons';
import { markById } from '#core/measure';

describe('beginning an investigation', () => {
  it('has a way to begin for every quantity', () => {
    expect(starters.map((starter) => starter.quantity)).toEqual([...quantities]);
  });

  it('gives every quantity, stage and family a mark that belongs to its unit', () => {
    for (const quantity of quantities) {
      for (const stage of stages) {
        for (const family of unitFamilies) {
          const { unit, mark } = unitAndMark(quantity, stage, family);
          const { unit: markUnit } = markById(mark);
          expect([unit, 'mm']).toContain(markUnit);
        }
      }
    }
  });

  // Common Core 2.MD.A.1 and 2.MD.D.9 (whole units), 3.MD.B.4 (half inches), from memory.
  it.each([
    ['plant-height', 'grade-1', 'inches', 'in', '1 in'],
    ['plant-height', 'grade-2', 'centimetres', 'cm', '1 cm'],
    ['plant-height', 'grade-3', 'inches', 'in', '1/2 in'],
    ['plant-height', 'grade-3', 'centimetres', 'cm', '1 mm'],
    // Rain: whole millimetres or quarter inches (common practice, no source).
    ['rain', 'grade-2', 'inches', 'in', '1/4 in'],
    ['rain', 'grade-1', 'centimetres', 'mm', '1 mm'],
    ['daily-kind', 'grade-1', 'inches', 'count', '1'],
  ] as const)(
    'reads %s in %s with %s to the mark of that stage',
    (quantity, stage, family, unit, mark) => {
      expect(unitAndMark(quantity, stage, family)).toEqual({ unit, mark });
    },
  );

  it('warns of the sun wherever a shadow is measured, at set-up and at every reading', () => {
    expect(cautionsAtSetUp('shadow')).toContain('sun');
    expect(cautionsAtReading('shadow')).toContain('sun');
    expect(cautionsAtReading('rain')).toContain('thunder');
    expect(cautionsAtSetUp('plant-height')).toContain('beans');
    expect(cautionsAtSetUp('rain')).toContain('water');
  });

  it('knows no caution that is never shown', () => {
    const shown = new Set(quantities.flatMap((quantity) => cautionsAtSetUp(quantity)));
    expect([...shown].sort()).toEqual([...cautions].sort());
  });
});
