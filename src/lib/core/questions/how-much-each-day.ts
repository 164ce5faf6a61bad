import { daysBetween } from '#core/calendar';
import { exactPerUnit } from '#core/measure';
import { askFairly } from './ask-fairly';
import { allOf, inUnits, isWhole, reading, sharing, subtracting } from './fits-range';
import type { QuestionTemplate, Slip } from './question';
import { pairsOf } from './shown-counts';
import { dayLogs } from './shown-values';
import { aCount, aDay, aLength, aWord } from './told';

const about = {
  id: 'C8',
  level: 'between',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/**
 * C8: about how much it grew each day, from one day to another two to five days on: the jump,
 * shared by the days between, not by the readings. In grade 2 it comes out even; in grade 3 what
 * is left over is said in words, so that any answer between two neighbouring numbers is right.
 */
export const howMuchEachDay: QuestionTemplate = {
  ...about,
  ask: (facts) =>
    dayLogs(facts).flatMap(({ name, measured, values }) =>
      pairsOf(values).flatMap(([to, from]) => {
        const gapDays = daysBetween(from.day, to.day);
        if (measured === 'rain' || gapDays < 2 || gapDays > 5) return [];
        if (!from.isSure || !to.isSure || from.unit !== to.unit) return [];
        if (!isWhole(from.exact, to.unit) || !isWhole(to.exact, to.unit)) return [];
        const jump = inUnits(to.exact - from.exact, to.unit);
        const isEven = jump % gapDays === 0;
        if (jump < gapDays || (!isEven && facts.stage !== 'grade-3')) return [];
        const tell = (number: number) => aLength(number * exactPerUnit(to.unit), to);
        const whole = Math.floor(jump / gapDays);
        const readings = values.filter(({ day }) => from.day <= day && day <= to.day).length;
        const shared = (parts: number, shows: Slip['shows']): readonly Slip[] =>
          parts > 1 && parts !== gapDays && jump % parts === 0
            ? [{ told: tell(jump / parts), shows }]
            : [];
        return askFairly(about, facts, {
          blanks: {
            ...{ plant: aWord(name), measured: aWord(measured) },
            ...{ from: aDay(from.day), to: aDay(to.day), gap: aCount(gapDays, 'days') },
          },
          answer: isEven
            ? tell(whole)
            : { kind: 'between', low: tell(whole), high: tell(whole + 1), hasLeftOver: true },
          slips: [
            { told: tell(jump), shows: 'whole-jump' },
            ...shared(readings, 'divided-by-readings'),
            ...shared(gapDays + 1, 'counted-ends'),
          ],
          fits: allOf(
            subtracting(inUnits(to.exact, to.unit), inUnits(from.exact, to.unit)),
            sharing(jump, gapDays),
            reading(gapDays),
          ),
        });
      }),
    ),
};
