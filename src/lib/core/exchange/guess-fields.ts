import type { ColumnFacts } from './column-facts';
import type { ImportField } from './import-mapping';

/**
 * Which column most likely holds what: each field takes the best of the columns that no field
 * before it took. A heading counts for more than what the cells look like.
 */
export function guessFields(
  columns: readonly ColumnFacts[],
): Readonly<Partial<Record<ImportField, number>>> {
  const columnByField: Partial<Record<ImportField, number>> = {};
  const left = new Set(columns);
  for (const [field, score] of scorers()) {
    // A word alone is the day's word only where there is no number beside it.
    if (field === 'word' && columnByField.number !== undefined) continue;
    const scored = [...left].map((facts) => ({ facts, score: score(facts) }));
    const best = scored.reduce((most, each) => (each.score > most.score ? each : most), {
      facts: null as ColumnFacts | null,
      score: 0,
    });
    if (best.facts === null) continue;
    columnByField[field] = best.facts.column;
    left.delete(best.facts);
  }
  // The day's word is often the weather: with no number there is nothing it stands beside.
  if (columnByField.number === undefined && columnByField.weather !== undefined) {
    const { weather, ...others } = columnByField;
    return { ...others, word: columnByField.word ?? weather };
  }
  return columnByField;
}

type Scorer = (facts: ColumnFacts) => number;

const has = ({ words }: ColumnFacts, ...wanted: readonly string[]): boolean =>
  words.some((word) => wanted.includes(word));

const named =
  (...wanted: readonly string[]): Scorer =>
  (facts) =>
    has(facts, ...wanted) ? 1 : 0;

/** In the order the fields take their columns. */
const scorers = (): readonly (readonly [ImportField, Scorer])[] => [
  [
    'day',
    (facts) => {
      const isNamed = has(facts, 'day', 'date', 'days', 'datum', 'when');
      if (facts.share.day >= 0.5 && facts.share.day > facts.share.wholeNumber) {
        return facts.share.day + Number(isNamed);
      }
      return (isNamed || facts.words[0] === 'x') && facts.share.wholeNumber >= 0.5 ? 0.4 : 0;
    },
  ],
  ['time', named('time', 'clock')],
  [
    'span-days',
    ({ words }) =>
      Number(/^(?:span( days)?|days covered|number of days|multi day.*)$/.test(words.join(' '))),
  ],
  ['leaves', named('leaves')],
  [
    'unit',
    (facts) => {
      if (has(facts, 'unit', 'units')) return facts.share.unit;
      return facts.share.unit >= 0.9 ? 0.5 : 0;
    },
  ],
  ['mark', named('mark')],
  ['state', named('state', 'status')],
  ['weather', (facts) => Number(has(facts, 'weather', 'sky')) + Number(facts.share.weather >= 0.6)],
  [
    'number',
    (facts) => {
      if (facts.share.number + facts.share.state < 0.5 || facts.share.number === 0) return 0;
      if (has(facts, 'id', 'no', 'row', 'index', 'year', 'month', 'week', 'day', 'grade')) return 0;
      const isNamed = has(facts, ...measureWords.split(' '));
      return 1 + 2 * Number(facts.headingUnit !== null) + Number(isNamed);
    },
  ],
  ['specimen', named('specimen', 'plant', 'series', 'subject', 'pot', 'gauge', 'stick', 'name')],
  ['investigation', named('investigation', 'project')],
  ['note', named('note', 'notes', 'comment', 'comments', 'remark', 'remarks')],
  ['why', named('why', 'reason')],
  ['word', (facts) => Number(has(facts, 'word', 'kind', 'type', 'category'))],
];

const measureWords =
  'height tall length long rain rainfall precipitation precip prcp shadow ' +
  'reading value measure measurement amount y';
