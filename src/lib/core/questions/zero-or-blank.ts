import { askFairly } from './ask-fairly';
import { reading } from './fits-range';
import type { QuestionTemplate } from './question';
import { dayLogs } from './shown-values';
import { anIdea, aWord } from './told';

const about = {
  id: 'R9',
  level: 'read',
  graphs: ['bar-graph'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/**
 * R9: how a day of no rain differs from a day that nobody read. It needs a sure 0 and a blank; the
 * 0 itself is never named, for the answer would stand in the question.
 */
export const zeroOrBlank: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    if (facts.series[0]?.investigation.quantity !== 'rain') return [];
    return dayLogs(facts).flatMap(({ name, values, without }) => {
      const hasZero = values.some(({ exact, isSure }) => exact === 0 && isSure);
      const hasBlank = without.some(({ state }) => state === 'blank' || state === 'missed');
      if (!hasZero || !hasBlank) return [];
      return askFairly(about, facts, {
        blanks: { plant: aWord(name) },
        answer: anIdea('dry-is-read-blank-is-not'),
        slips: [{ told: anIdea('both-mean-no-rain'), shows: 'blank-is-zero' }],
        fits: reading(),
      });
    });
  },
};
