import { describe, expect, it } from 'vitest';
import { addDays, civilDay, type CivilDay } from '#core/calendar';
import { quantities } from '#core/journal';
import {
  cautionPlaces,
  cautions,
  cautionsAtReading,
  cautionsAtSetUp,
  cautionsDue,
  mayBePutAway,
  type CautionFacts,
} from '#core/lessons';
import { cautionWords, childCautionWords, everyChildCaution, localAdvice } from '#ui/words';

const today = civilDay('2026-06-10');
const fresh: CautionFacts = { putAway: new Map(), today };
const putAwayOn = (day: CivilDay): CautionFacts => ({
  putAway: new Map(cautions.map((caution) => [caution, day])),
  today,
});

describe('cautions', () => {
  it('are each told somewhere at set-up', () => {
    const told = new Set(quantities.flatMap((quantity) => cautionsDue('set-up', quantity, fresh)));
    expect([...told].sort()).toEqual([...cautions].sort());
  });

  it.each([
    ['shadow', 'reading', ['sun', 'thunder']],
    ['rain', 'reading', ['thunder']],
    ['plant-height', 'reading', []],
    ['shadow', 'outdoors', ['sun', 'thunder', 'outdoors']],
    ['rain', 'outdoors', ['thunder', 'outdoors']],
    ['rain', 'weekly', ['water']],
    ['plant-height', 'sowing', ['beans', 'treated-seed', 'small-parts', 'soil']],
    [
      'plant-height',
      'shopping',
      ['beans', 'treated-seed', 'small-parts', 'allergy', 'unknown-plants', 'glass'],
    ],
  ] as const)('of %s at the moment of %s are %j', (quantity, place, expected) => {
    expect(cautionsDue(place, quantity, fresh)).toEqual(expected);
  });

  it('of beans stand at set-up and at sowing', () => {
    expect(cautionsAtSetUp('plant-height')[0]).toBe('beans');
    expect(cautionsDue('sowing', 'plant-height', fresh)[0]).toBe('beans');
  });

  it('rest for seven days once put away, and come back', () => {
    const dueAfter = (days: number) =>
      cautionsDue('sowing', 'plant-height', putAwayOn(addDays(today, -days))).length;
    expect([0, 1, 6].map(dueAfter)).toEqual([0, 0, 0]);
    expect([7, 8, 400].map(dueAfter)).toEqual([4, 4, 4]);
  });

  it('are not hidden by a day put away that has not come yet', () => {
    expect(cautionsDue('weekly', 'rain', putAwayOn(addDays(today, 1)))).toEqual(['water']);
  });

  it('are all told again at a set-up', () => {
    for (const quantity of quantities) {
      expect(cautionsDue('set-up', quantity, putAwayOn(today))).toEqual(cautionsAtSetUp(quantity));
    }
  });

  it('of sun and thunder never rest', () => {
    for (const place of cautionPlaces) {
      for (const quantity of quantities) {
        const always = ['sun', 'thunder'] as const;
        const due = cautionsDue(place, quantity, putAwayOn(today));
        for (const caution of always) {
          expect(due.includes(caution)).toBe(cautionsDue(place, quantity, fresh).includes(caution));
        }
      }
    }
    expect(cautions.filter((caution) => !mayBePutAway(caution))).toEqual(['sun', 'thunder']);
  });

  it('of the sun stand on every page of a shadow', () => {
    for (const place of ['set-up', 'reading', 'outdoors'] as const) {
      expect(cautionsDue(place, 'shadow', putAwayOn(today))).toContain('sun');
    }
    expect(cautionsAtReading('shadow')).toContain('sun');
  });

  it('of a lamp are told while it is not known, and at readings when there is one', () => {
    const lamp = (place: 'set-up' | 'reading', known?: boolean) =>
      cautionsDue(place, 'plant-height', {
        ...fresh,
        ...(known === undefined ? {} : { lamp: known }),
      }).includes('heat-lamp');
    expect([lamp('set-up'), lamp('set-up', true), lamp('set-up', false)]).toEqual([
      ...[true, true, false],
    ]);
    expect([lamp('reading'), lamp('reading', true), lamp('reading', false)]).toEqual([
      ...[false, true, false],
    ]);
  });

  it('of small parts are left out only where there is surely no small child', () => {
    const has = (facts: CautionFacts) =>
      cautionsDue('sowing', 'plant-height', facts).includes('small-parts');
    expect(has(fresh)).toBe(true);
    expect(has({ ...fresh, smallChildren: true })).toBe(true);
    expect(has({ ...fresh, smallChildren: false })).toBe(false);
  });

  it('do not change what they are given', () => {
    const facts = Object.freeze({ putAway: Object.freeze(new Map()), today });
    expect(() => cautionsDue('set-up', 'rain', facts)).not.toThrow();
  });
});

describe('the words of the cautions', () => {
  it('are there for every caution, for a grown-up and for a child', () => {
    for (const caution of cautions) {
      expect(cautionWords[caution].length).toBeGreaterThan(20);
      expect(everyChildCaution[caution].length).toBeGreaterThan(8);
    }
    expect(localAdvice).toContain('Local advice');
  });

  it('have a child’s sentence for all that stands at a reading', () => {
    for (const quantity of quantities) {
      for (const caution of cautionsAtReading(quantity)) {
        expect(childCautionWords[caution]).toBe(everyChildCaution[caution]);
      }
    }
  });
});
