import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { QuestionTemplate } from './question';
import { dayLogs } from './shown-values';
import { aCount, aDay, aLength, aWord } from './told';

const about = {
  id: 'R1',
  level: 'read',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** R1: how tall it was (or how much rain there was) on a day that has a number. */
export const howTallOnDay: QuestionTemplate = {
  ...about,
  ask: (facts) =>
    dayLogs(facts).flatMap(({ name, measured, values }) =>
      values.flatMap((value, index) => {
        if (!value.isSure) return [];
        const number = inUnits(value.exact, value.unit);
        const other = values[index + 1] ?? values[index - 1];
        return askFairly(about, facts, {
          blanks: { plant: aWord(name), measured: aWord(measured), day: aDay(value.day) },
          answer: aLength(value.exact, value),
          slips: [
            ...(other ? [{ told: aLength(other.exact, other), shows: 'other-day' as const }] : []),
            { told: aCount(number, ''), shows: 'forgot-unit' },
          ],
          fits: reading(number),
        });
      }),
    ),
};
