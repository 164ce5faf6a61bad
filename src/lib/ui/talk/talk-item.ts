import type { LessonId, QuestionAnswered } from '#core/journal';
import type { LessonQuestion } from '#core/lessons';
import { decodeQuestion, type AskedQuestion, type Level } from '#core/questions';

/** A question to talk about: asked of the log, or somebody's own. */
export type TalkItem = AskedItem | OwnItem;

export interface AskedItem {
  readonly kind: 'asked';
  /** The same for the same question, also after it was kept and read again. */
  readonly key: string;
  readonly question: AskedQuestion;
  readonly lesson: LessonId | null;
}

export interface OwnItem {
  readonly kind: 'own';
  readonly key: string;
  readonly level: Level;
  readonly text: string;
  /** What its writer says the answer is; empty where nobody said. */
  readonly answer: string;
  readonly lesson: LessonId | null;
}

export const itemOf = (asked: LessonQuestion, lesson: LessonId | null): TalkItem => {
  if (asked.kind === 'own') return { ...asked, key: ownKey(asked.level, asked.text), lesson };
  return { kind: 'asked', key: keyOf(asked.question), question: asked.question, lesson };
};

/** What the journal keeps of a question that was answered. */
export const sheetOf = (item: TalkItem): QuestionAnswered['question'] => {
  if (item.kind === 'asked') return { ...item.question };
  const { level, text, answer } = item;
  return { own: { level, text, answer } };
};

/** The key of a question that was kept with an answer; null for one that cannot be read here. */
export const keyOfSheet = (sheet: QuestionAnswered['question']): string | null => {
  const own = sheet['own'];
  if (typeof own === 'object' && own !== null && 'level' in own && 'text' in own) {
    return ownKey(String(own.level), String(own.text));
  }
  const read = decodeQuestion(sheet);
  return read.ok ? JSON.stringify(read.value) : null;
};

/** Decoded first: what is kept and read again has its parts in that order. */
const keyOf = (question: AskedQuestion): string => keyOfSheet({ ...question }) ?? '';

const ownKey = (level: string, text: string): string => JSON.stringify(['own', level, text]);
