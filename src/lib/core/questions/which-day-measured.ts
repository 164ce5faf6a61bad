import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { QuestionTemplate, Slip } from './question';
import { dayLogs } from './shown-values';
import { aDay, aLength, aWord } from './told';

const about = {
  id: 'R3',
  level: 'read',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** R3: on which day it measured so much, where that came once. */
export const whichDayMeasured: QuestionTemplate = {
  ...about,
  ask: (facts) =>
    dayLogs(facts).flatMap(({ name, measured, values }) =>
      values.flatMap((value, index) => {
        const cameOnce = values.filter(({ exact }) => exact === value.exact).length === 1;
        if (!value.isSure || !cameOnce || value.exact === 0) return [];
        const beside = [values[index - 1], values[index + 1]].flatMap((each) => each ?? []);
        return askFairly(about, facts, {
          blanks: {
            ...{ plant: aWord(name), measured: aWord(measured) },
            value: aLength(value.exact, value),
          },
          answer: aDay(value.day),
          slips: beside.map(({ day }): Slip => ({ told: aDay(day), shows: 'other-day' })),
          fits: reading(inUnits(value.exact, value.unit)),
        });
      }),
    ),
};
