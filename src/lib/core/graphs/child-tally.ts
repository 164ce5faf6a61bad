import { formatDay, type CivilDay } from '#core/calendar';
import type { CountTable, GraphTable } from './graph-table';
import type { SortCard } from './sort-cards';

/** How far a tally is: still sorted; drawn from; or put aside for the log's own table. */
export const tallyUses = ['sorting', 'mine', 'log'] as const;
export type TallyUse = (typeof tallyUses)[number];

/** A child's own tally: what was sorted, and where each card was put. Plain data for a journal. */
export interface ChildTally {
  /** The kinds it is sorted into: the rows of its table, in their order. */
  readonly kinds: readonly string[];
  readonly cards: readonly TallyCard[];
  readonly use: TallyUse;
}

export interface TallyCard {
  readonly thing: string;
  readonly day: CivilDay;
  /** What the log said of it when it was sorted. */
  readonly says: string;
  /** Where it was put: none yet, once, or once more after a second look. The last one counts. */
  readonly picks: readonly string[];
}

/** A table of counts that a child made by sorting, not the log. */
export interface TallyTable extends CountTable {
  readonly madeBy: 'sorting';
}

/**
 * The table of a tally: each card counts as one mark of the kind it was put to last.
 * @param counted what is counted, in the plural: "days"
 * @example
 * tallyTable({ kinds: ['sun', 'rain'], use: 'mine', cards: [{ thing: '2026-03-02', day: '2026-03-02', says: 'sun', picks: ['rain', 'sun'] }] }, 'days') // => { form: 'counts', counted: 'days', madeBy: 'sorting', rows: [{ label: 'sun', count: 1 }, { label: 'rain', count: 0 }] }
 */
export const tallyTable = ({ kinds, cards }: ChildTally, counted: string): TallyTable => ({
  ...{ form: 'counts', counted, madeBy: 'sorting' },
  rows: kinds.map((label) => ({
    label,
    count: cards.filter(({ picks }) => picks.at(-1) === label).length,
  })),
});

/**
 * Whether a table was made by sorting, so that its marks are the child's own.
 * @example
 * isTallyTable({ form: 'counts', counted: 'days', rows: [] }) // => false
 */
export const isTallyTable = (table: GraphTable): table is TallyTable =>
  table.form === 'counts' && 'madeBy' in table && table.madeBy === 'sorting';

/** A day that a child put elsewhere than the log has it. */
export interface SortedOtherwise {
  /** The day as a family reads it. */
  readonly label: string;
  readonly says: string;
  readonly sorted: string;
  /** Where the log has it now; null where the log does not say so any more. */
  readonly inLog: string | null;
}

/**
 * The cards of a tally that stand elsewhere than in the log as it is now, in the order of the
 * tally: sorted otherwise, or corrected in the log since then.
 * @example
 * sortedOtherwise({ kinds: ['sun', 'rain'], use: 'mine', cards: [{ thing: '2026-03-02', day: '2026-03-02', says: 'sun', picks: ['rain'] }] }, []) // => [{ label: 'Mon 2 Mar', says: 'sun', sorted: 'rain', inLog: null }]
 */
export const sortedOtherwise = (
  { cards }: ChildTally,
  log: readonly SortCard[],
): readonly SortedOtherwise[] =>
  cards.flatMap(({ thing, day, says, picks }) => {
    const sorted = picks.at(-1);
    const inLog = log.find((card) => card.thing === thing && card.says === says)?.kind ?? null;
    return sorted === undefined || sorted === inLog
      ? []
      : [{ label: formatDay(day, 'short'), says, sorted, inLog }];
  });
