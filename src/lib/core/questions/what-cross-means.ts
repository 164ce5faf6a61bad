import { askFairly } from './ask-fairly';
import type { TableSource } from '#core/graphs';
import { reading } from './fits-range';
import type { QuestionTemplate } from './question';
import { anIdea, aWord } from './told';

const about = {
  id: 'R5',
  level: 'read',
  graphs: ['line-plot'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** R5: what each cross of a line plot means: one measurement, whatever it is of. */
export const whatCrossMeans: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const { table, choice } = facts;
    const idea = ideaBySource[choice.source];
    if (table.form !== 'measures' || !idea || table.values.length === 0) return [];
    return askFairly(about, facts, {
      blanks: { measured: aWord(table.measured) },
      answer: anIdea(idea),
      slips: [
        { told: anIdea('cross-is-a-unit'), shows: 'mark-is-unit' },
        { told: anIdea('cross-is-a-day-name'), shows: 'mark-is-day' },
      ],
      fits: reading(),
    });
  },
};

const ideaBySource: Readonly<Partial<Record<TableSource, string>>> = {
  'each-specimen': 'cross-is-one-thing',
  'reads-of-one': 'cross-is-one-read',
  'growth-amounts': 'cross-is-one-growth',
  'rain-amounts': 'cross-is-one-day-of-rain',
};
