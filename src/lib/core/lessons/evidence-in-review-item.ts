import * as v from 'valibot';
import { decodeQuestion, type AskedQuestion } from '#core/questions';
import type { ReviewSign } from './skill';

/** An item of the daily review, as far as it shows a skill. */
export interface ReadReviewItem {
  readonly kind: string;
  /** It is asked again by this name. */
  readonly name: string;
  readonly sign: ReviewSign | null;
  readonly question: AskedQuestion | null;
}

/** Reads what was kept of an item; null where it is none, or of a later program. Not part of the public door. */
export const readReviewItem = (sheet: unknown): ReadReviewItem | null => {
  const read = v.safeParse(itemSchema, sheet);
  if (!read.success) return null;
  const { kind, name, task, question } = read.output;
  if (question === undefined) return { kind, name, sign: signOf(kind, task?.kind), question: null };
  const asked = decodeQuestion(question);
  return asked.ok ? { kind, name, sign: null, question: asked.value } : null;
};

const itemSchema = v.object({
  kind: v.string(),
  name: v.string(),
  task: v.optional(v.object({ kind: v.optional(v.string()) })),
  question: v.optional(v.unknown()),
});

const signOf = (kind: string, task: string | undefined): ReviewSign | null => {
  if (kind === 'measure-today' || kind === 'sum') return kind;
  return task === 'off-zero' || task === 'between-marks' ? task : null;
};
