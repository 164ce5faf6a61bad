import { describe, expect, it } from 'vitest';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import { twoLines, type NumberLine } from '../../../src/lib/ui/both-sides/two-lines';
import { read } from '../../core/journal/entries';

const pair = (
  cm: number,
  inches: number,
  { agrees = true, inchMark = '1 in' as MarkId, unit = 'in' as Unit } = {},
) => ({ metric: read(cm), customary: read(inches, unit, inchMark), agrees });

const labels = ({ ticks }: NumberLine) => ticks.flatMap(({ label }) => label ?? []);
const [wide, narrow] = [1000, 290];

describe('two lines of one length', () => {
  it('have one scale: an inch is 2.54 centimetres of the other line (NIST SP 811, Appendix B.8)', () => {
    const { metric, customary } = twoLines(pair(13, 5), wide, 21);
    const at = (line: NumberLine, label: string) =>
      line.ticks.find((tick) => tick.label === label)!.at;
    expect(at(customary, '5') / at(metric, '1')).toBeCloseTo(5 * 2.54, 10);
    expect([at(metric, '0'), at(customary, '0')]).toEqual([0, 0]);
  });

  it('are a little longer than what was measured, to an even inch, and never a stub', () => {
    const inches = (cm: number, of: number) =>
      twoLines(pair(cm, of), wide, 21).lengthExact / exactPerUnit('in');
    expect([inches(1, 0), inches(13, 5), inches(15, 6), inches(86, 34)]).toEqual([4, 6, 8, 36]);
  });

  it('have one strip, which ends where the finer side says, when the numbers agree', () => {
    const { stripPx, isOneStrip, metric } = twoLines(pair(13, 5), wide, 21);
    expect(isOneStrip).toBe(true);
    expect([stripPx.metric, stripPx.customary]).toEqual([metric.readPx, metric.readPx]);
    const quarters = twoLines(pair(13, 5.25, { inchMark: '1/4 in' }), wide, 21);
    expect(quarters.stripPx.metric).toBe(quarters.customary.readPx);
  });

  it('have two ends when the numbers do not agree', () => {
    const { stripPx, isOneStrip, metric, customary } = twoLines(
      pair(13, 8, { agrees: false }),
      wide,
      21,
    );
    expect(isOneStrip).toBe(false);
    expect(stripPx).toEqual({ metric: metric.readPx, customary: customary.readPx });
  });

  it('have every number where there is room', () => {
    expect(labels(twoLines(pair(13, 5), wide, 21).metric)).toEqual(
      Array.from({ length: 16 }, (_, number) => String(number)),
    );
  });

  it('where numbers go by twos, keep the odd one that was read, and its neighbours make room', () => {
    const { metric } = twoLines(pair(13, 5), narrow, 16);
    expect(labels(metric)).toEqual(['0', '2', '4', '6', '8', '10', '13']);
    expect(metric.isReadLabelled).toBe(true);
  });

  it.each([7, 11, 13, 29, 47, 83])(
    'has the whole number %i that was read on a narrow line, with room on both sides',
    (cm) => {
      const { metric } = twoLines(pair(cm, Math.round(cm / 2.54)), narrow, 16);
      const labelled = metric.ticks.filter(({ label }) => label !== null);
      expect(labels(metric)).toContain(String(cm));
      expect(metric.isReadLabelled).toBe(true);
      const gaps = labelled.slice(1).map(({ at }, index) => at - labelled[index]!.at);
      expect(Math.min(...gaps)).toBeGreaterThan(16);
      const places = metric.ticks.map(({ exact }) => exact);
      expect(places).toEqual([...new Set(places)].sort((left, right) => left - right));
    },
  );

  it('leaves a number between two wholes to its flag', () => {
    const { customary } = twoLines(pair(14, 5.5, { inchMark: '1/2 in' }), narrow, 16);
    expect(customary.isReadLabelled).toBe(false);
    expect(labels(customary)).toEqual(['0', '1', '2', '3', '4', '5', '6', '7', '8']);
  });
});
