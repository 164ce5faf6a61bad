import type { SpecimenId } from '#core/journal';
import type { ReviewQuestion } from './review-question';
import type { Sum } from './review-sum';
import type { RulerTask } from './ruler-task';

/** The places of a daily review. */
export const reviewKinds = [
  ...(['measure-today', 'ruler', 'sum', 'graph-read', 'from-before', 'choice'] as const),
] as const;
export type ReviewKind = (typeof reviewKinds)[number];

/** What a child can choose to do: also what an item asks for. */
export const reviewPicks = ['ruler', 'sum', 'question'] as const;
export type ReviewPick = (typeof reviewPicks)[number];

/** An item that is answered, kept and asked again. */
export interface ReviewItem {
  /** Its place on the page it was asked on. */
  readonly kind: ReviewKind;
  /** The name it is asked again by. */
  readonly name: string;
  readonly task: ReviewTask;
}

export type ReviewTask =
  | { readonly of: 'ruler'; readonly ruler: RulerTask }
  | { readonly of: 'sum'; readonly sum: Sum }
  | ({ readonly of: 'question' } & ReviewQuestion);

/** A place on the page that is not an item to be kept: to measure, and to choose. */
export type ReviewPlace =
  | {
      readonly kind: 'measure-today';
      /** The logs whose plan wants a reading today. */
      readonly logs: readonly { readonly specimen: SpecimenId; readonly isTaken: boolean }[];
    }
  | { readonly kind: 'choice' }
  | (ReviewItem & { readonly kind: Exclude<ReviewKind, 'measure-today' | 'choice'> });

/**
 * The name a ruler task is asked again by.
 * @example
 * rulerName({ kind: 'off-zero', unit: 'cm', mark: '1 cm', rulerFromExact: 0, beginsExact: 20000000, endsExact: 50000000 }) // => 'ruler off-zero cm 1 cm 0 20000000 50000000'
 */
export const rulerName = ({
  kind,
  unit,
  mark,
  rulerFromExact,
  beginsExact,
  endsExact,
}: Omit<RulerTask, 'answerExact' | 'slips' | 'rulerToExact'>): string =>
  ['ruler', kind, unit, mark, rulerFromExact, beginsExact, endsExact].join(' ');

/**
 * An item as a journal keeps it: its kind, its name, and what was asked beside them.
 * @example
 * reviewSheet({ kind: 'ruler', name: 'a', task: { of: 'ruler', ruler: { kind: 'off-zero' } } }) // => { kind: 'ruler', name: 'a', of: 'ruler', task: { kind: 'off-zero' } }
 */
export const reviewSheet = ({
  kind,
  name,
  task,
}: ReviewItem): Readonly<Record<string, unknown>> => {
  if (task.of === 'ruler') return { kind, name, of: 'ruler', task: task.ruler };
  return { kind, name, ...task };
};
