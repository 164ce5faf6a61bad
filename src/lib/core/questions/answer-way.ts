import type { AskedQuestion, Told } from './question';
import { sameTold } from './told';

/** How a child gives an answer: what a page asks for, and what `judgeAnswer` then takes. */
export interface AnswerWay {
  readonly by: AnswerBy;
  /** What is chosen from or put in order, never with the answer in a place of its own. */
  readonly choices: readonly Told[];
  /** A grown-up listens: it is in words, or a guess that needs a reason. */
  readonly isHeard: boolean;
}

/**
 * - `count` (R2, R4, R6, R7, C1, C3, C4, C10 to C12, C14), `length` (R1, R10, C2, C8, C9, C10, C13;
 *   heard: Y1, Y2, Y7);
 * - `day` (R3, C13), `days` (R8, C5), `stretch` (two days and how many days that is: C7), `from-to`
 *   (from one day to another, heard: Y10);
 * - `order` (C6), `choice` (R5, R9, H9; heard: Y8);
 * - `words` (heard: all others beyond and behind).
 */
export const answerBys = [
  ...(['count', 'length', 'day', 'days', 'stretch', 'from-to'] as const),
  ...(['order', 'choice', 'words'] as const),
] as const;
export type AnswerBy = (typeof answerBys)[number];

/**
 * How a question is answered, by what its answer is.
 * @example
 * answerWayOf({ level: 'read', answer: { kind: 'count', count: 3, of: 'days' }, slips: [] }) // => { by: 'count', choices: [], isHeard: false }
 * answerWayOf({ level: 'behind', answer: { kind: 'idea', idea: 'soil-line' }, slips: [] }) // => { by: 'words', choices: [], isHeard: true }
 */
export const answerWayOf = ({
  level,
  answer,
  slips,
  blanks = {},
}: Pick<AskedQuestion, 'level' | 'answer' | 'slips'> &
  Partial<Pick<AskedQuestion, 'blanks'>>): AnswerWay => {
  const isFurther = level === 'beyond' || level === 'behind';
  const offered = Object.values(blanks).flatMap((told) =>
    told.kind === 'order' && told.things.some((each) => sameTold(each, answer)) ? told.things : [],
  );
  if (answer.kind === 'order') {
    const isHeard = answer.things.some(({ kind }) => kind === 'idea');
    return isHeard ? heard('words') : { by: 'order', choices: thingsToOrder(blanks), isHeard };
  }
  if (answer.kind === 'idea') {
    if (offered.length > 0) return { by: 'choice', choices: offered, isHeard: false };
    if (isFurther) return heard('words');
    const choices = [answer, ...slips.map(({ told }) => told)].filter(isIdea);
    return { by: 'choice', choices: mixed(choices, blanks), isHeard: false };
  }
  if (answer.kind === 'word') return { by: 'choice', choices: offered, isHeard: isFurther };
  return { by: waysByKind(answer), choices: [], isHeard: isFurther };
};

const heard = (by: AnswerBy): AnswerWay => ({ by, choices: [], isHeard: true });

const thingsToOrder = (blanks: AskedQuestion['blanks']): readonly Told[] =>
  Object.values(blanks).flatMap((told) => (told.kind === 'order' ? told.things : []));

type Idea = Extract<Told, { kind: 'idea' }>;
const isIdea = (told: Told): told is Idea => told.kind === 'idea';
/** In an order that only the question's own words decide, so that the answer has no usual place. */
const mixed = (ideas: readonly Idea[], blanks: AskedQuestion['blanks']): readonly Idea[] => {
  const about = JSON.stringify(blanks);
  const placeOf = ({ idea }: Idea): number =>
    [...`${about} ${idea}`].reduce((sum, char) => (sum * 31 + char.charCodeAt(0)) % 9973, 7);
  return ideas.toSorted((one, other) => placeOf(one) - placeOf(other));
};

const waysByKind = (answer: Exclude<Told, { kind: 'order' | 'idea' | 'word' }>): AnswerBy => {
  if (answer.kind === 'between') return answer.low.kind === 'day' ? 'from-to' : 'length';
  return answer.kind === 'interval' ? 'stretch' : answer.kind === 'time' ? 'choice' : answer.kind;
};
