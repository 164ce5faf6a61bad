import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { QuestionTemplate, Told } from './question';
import { aCount, aLength, aWord } from './told';

const about = {
  id: 'R7',
  level: 'read',
  graphs: ['bar-graph'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** R7: by how much the numbers on the side go up. */
export const whatStepOnSide: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const { table, right } = facts;
    const { step, to } = right.scale;
    if (to < fewestSteps * step) return [];
    const isCount = table.form === 'counts';
    const tell = (exact: number): Told =>
      isCount ? aCount(exact, table.counted) : aLength(exact, table);
    const number = isCount ? step : inUnits(step, table.unit);
    return askFairly(about, facts, {
      blanks: { counted: aWord(isCount ? table.counted : table.measured) },
      answer: tell(step),
      slips: [
        { told: tell(to), shows: 'top-number' },
        ...(number === 1 || !isCount ? [] : [{ told: tell(1), shows: 'forgot-scale' as const }]),
      ],
      fits: reading(number),
    });
  },
};

const fewestSteps = 2;
