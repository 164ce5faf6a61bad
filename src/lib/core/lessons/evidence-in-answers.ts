import type { EntryId, Notebook, QuestionAnswered, ReviewAnswered } from '#core/journal';
import { decodeQuestion, type AskedQuestion } from '#core/questions';
import type { FoundEvidence, UnreadEvidence } from './evidence';
import { readReviewItem, type ReadReviewItem } from './evidence-in-review-item';
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
  const read = decodeQuestion(question);
  if (!read.ok) return unreadLine(id, author, 'not-a-question');
  const of = { kind: 'answer', entry: id, question: read.value, answer } as const;
  return { found: { id, author, day, at, how, of, skills: skillsShownBy(read.value) } };
};

/**
 * An item that was missed comes again on the next school day: it is still being learnt, so it is no
 * evidence, and nothing is held against the child for it. What was right later on the day it was
 * missed was right with help.
 */
const inReviews = (reviews: readonly ReviewAnswered[]): Finding[] => {
  const read = reviews.map((line) => ({ line, item: readReviewItem(line.item) }));
  const keyOf = ({ author, day }: ReviewAnswered, name: string) => `${author} ${day} ${name}`;
  const missed = new Set(
    read.flatMap(({ line, item }) =>
      line.outcome === 'again' && item ? [keyOf(line, item.name)] : [],
    ),
  );
  return read.flatMap(({ line, item }) => {
    const { id, author, day, at, answer, outcome } = line;
    if (!item) return [unreadLine(id, author, 'not-a-review')];
    const shown = skillsShownInReview(item);
    if (outcome === 'again' || shown.length === 0) return [];
    const how = missed.has(keyOf(line, item.name)) ? 'with-help' : 'alone';
    const { kind, sign, question } = item;
    const of = { kind: 'review', entry: id, item: kind, sign, question, answer } as const;
    return [{ found: { id, author, day, at, how, of, skills: shown } }];
  });
};

const skillsShownInReview = ({ sign, question }: ReadReviewItem): readonly SkillId[] => [
  ...skills.filter(({ reviews }) => sign !== null && reviews.includes(sign)).map(({ id }) => id),
  ...(question ? skillsShownBy(question) : []),
];

const skillsShownBy = ({ template }: AskedQuestion): readonly SkillId[] =>
  skills.filter(({ questions }) => questions.includes(template)).map(({ id }) => id);

const unreadLine = (
  id: EntryId,
  author: FoundEvidence['author'],
  why: UnreadEvidence['why'],
): Finding => ({ unread: { id, why }, author });
