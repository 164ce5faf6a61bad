import * as v from 'valibot';
import type { EntryId, Notebook, QuestionAnswered, ReviewAnswered } from '#core/journal';
import { decodeQuestion, levels, type AskedQuestion, type Level } from '#core/questions';
import type { FoundEvidence, UnreadEvidence } from './evidence';
import { decodeReviewItem } from './review-decode';
import type { ReviewTask } from './review-item';
import { skills, type SkillId } from './skill';

/** What was found, and what could not be read, with who wrote it. Not part of the public door. */
export type Finding =
  | { readonly found: FoundEvidence }
  | { readonly unread: UnreadEvidence; readonly author: FoundEvidence['author'] };

/** What the answers of talk, the daily review and questions of the child's own show. Not part of the public door. */
export const evidenceInAnswers = ({ answers, reviews, ownQuestions }: Notebook): Finding[] => [
  ...answers.filter(stands).map(inAnswer),
  ...inReviews(reviews.filter(stands)),
  ...ownQuestions.filter(stands).map((line): Finding => {
    const { id, author, day, at, text, answer = null } = line;
    const of = { kind: 'own-question', entry: id, text, answer } as const;
    return { found: { id, author, day, at, how: 'seen', of, skills: ['asks-own-questions'] } };
  }),
];

const stands = ({ takenBack }: { readonly takenBack: object | null }): boolean =>
  takenBack === null;

const inAnswer = ({ id, author, day, at, how, question, answer }: QuestionAnswered): Finding => {
  const own = v.safeParse(ownQuestionSchema, question);
  if (own.success) {
    const of = { kind: 'own-answer', entry: id, ...own.output.own, said: answer } as const;
    return { found: { id, author, day, at, how, of, skills: [skillByLevel[of.level]] } };
  }
  const read = decodeQuestion(question);
  if (!read.ok) return unreadLine(id, author, 'not-a-question');
  const of = { kind: 'answer', entry: id, question: read.value, answer } as const;
  return { found: { id, author, day, at, how, of, skills: skillsShownBy(read.value) } };
};

/** A question in somebody's own words is kept so, with what they said the answer was. */
const ownQuestionSchema = v.object({
  own: v.object({ level: v.picklist(levels), text: v.string(), answer: v.string() }),
});

const skillByLevel: Readonly<Record<Level, SkillId>> = {
  read: 'reads-a-graph',
  between: 'compares-and-combines',
  beyond: 'looks-beyond',
  behind: 'knows-where-data-came-from',
};

/**
 * An item that was missed comes again on the next school day: it is still being learnt, so it is no
 * evidence, and nothing is held against the child for it. What was right later on the day it was
 * missed was right with help.
 */
const inReviews = (reviews: readonly ReviewAnswered[]): Finding[] => {
  const read = reviews.map((line) => ({ line, item: decodeReviewItem(line.item) }));
  const keyOf = ({ author, day }: ReviewAnswered, name: string) => `${author} ${day} ${name}`;
  const missed = new Set(
    read.flatMap(({ line, item }) =>
      line.outcome === 'again' && item.ok ? [keyOf(line, item.value.name)] : [],
    ),
  );
  return read.flatMap(({ line, item }) => {
    const { id, author, day, at, answer, outcome } = line;
    if (!item.ok) return [unreadLine(id, author, 'not-a-review')];
    if (outcome === 'again') return [];
    const how = missed.has(keyOf(line, item.value.name)) ? 'with-help' : 'alone';
    const of = { kind: 'review', entry: id, item: item.value, answer } as const;
    const shown = skillsShownInReview(item.value.task);
    return [{ found: { id, author, day, at, how, of, skills: shown } }];
  });
};

const skillsShownInReview = (task: ReviewTask): readonly SkillId[] => {
  if (task.of === 'question') return skillsShownBy(task.question);
  const sign = task.of === 'ruler' ? task.ruler.kind : 'sum';
  return skills.filter(({ reviews }) => reviews.includes(sign)).map(({ id }) => id);
};

const skillsShownBy = ({ template }: AskedQuestion): readonly SkillId[] =>
  skills.filter(({ questions }) => questions.includes(template)).map(({ id }) => id);

const unreadLine = (
  id: EntryId,
  author: FoundEvidence['author'],
  why: UnreadEvidence['why'],
): Finding => ({ unread: { id, why }, author });
