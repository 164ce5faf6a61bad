import { askIdea, fromGrade2, graphsOfCounts, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { aWord } from './told';
import { isOfWeather } from './log-of-table';

/**
 * "Which kind of day is most likely tomorrow? Is it certain?" One kind leads by two days or more;
 * the answer is that kind out of all that were marked, and "not certain", which a grown-up hears.
 */
export const likelyKindTomorrow: QuestionTemplate = {
  ...{ id: 'Y8', level: 'beyond', graphs: graphsOfCounts, ranges: fromGrade2 },
  ask: (facts) => {
    const { table } = facts;
    if (table.form !== 'counts' || table.counted !== 'days' || !isOfWeather(facts)) return [];
    const [first, second] = table.rows.toSorted((one, other) => other.count - one.count);
    if (!first || !second || first.count - second.count < 2 || together.has(first.label)) return [];
    const kinds = table.rows.filter(({ label }) => !together.has(label));
    return askIdea(likelyKindTomorrow, facts, {
      blanks: { kinds: { kind: 'order', things: kinds.map(({ label }) => aWord(label)) } },
      answer: aWord(first.label),
      slips: [
        ideaSlip('sure-of-it'),
        ...(second.count > 0
          ? [{ told: aWord(second.label), shows: 'other-category' } as const]
          : []),
      ],
      wholeSet: true,
    });
  },
};

/** Kinds that were put together are no kind of day. */
const together: ReadonlySet<string> = new Set(['other', 'all others']);
