import type { LessonQuestion } from '#core/lessons';
import type { AskedQuestion, Told } from '#core/questions';
import { ideaText } from '#ui/ladder-words';

/** What a child is given to write an answer on. */
export interface AnswerSpace {
  /** Short places in a row, each between its words. */
  readonly blanks: readonly AnswerBlank[];
  /** Whole lines under them. */
  readonly lines: number;
  /** What can be ringed, where the answer is one of a few. */
  readonly choices: readonly string[];
}

export interface AnswerBlank {
  readonly before: string;
  /** A number is short; a day or a word is long. */
  readonly room: 'number' | 'word';
  readonly after: string;
}

/**
 * The room a question's answer needs on paper. A unit stands after the blank, except where saying
 * the unit, or what is counted, is what is asked.
 */
export const answerSpace = (question: LessonQuestion): AnswerSpace => {
  if (question.kind === 'own') return { blanks: [], lines: 1, choices: [] };
  const { answer, level, template } = question.question;
  // Beside its practice graph lines are short.
  if (template === 'H6') return { blanks: [], lines: 4, choices: [] };
  const more = level === 'beyond' || level === 'behind' ? 1 : 0;
  if (template === 'H9') return { blanks: [], lines: 0, choices: offered(question.question) };
  const blanks =
    template === 'C5' ? [long(''), long('and')] : blanksFor(answer, asksForUnit.has(template));
  return { blanks, lines: blanks.length > 0 ? more : linesFor(answer), choices: [] };
};

/** "Say it in cm", "What does each picture stand for?" */
const asksForUnit: ReadonlySet<AskedQuestion['template']> = new Set(['R4', 'R10']);

const offered = ({ blanks }: AskedQuestion): readonly string[] =>
  blanks['offered']?.kind === 'order'
    ? blanks['offered'].things.flatMap((told) => (told.kind === 'idea' ? ideaText(told.idea) : []))
    : [];

const blanksFor = (answer: Told, isUnitAsked: boolean): readonly AnswerBlank[] => {
  switch (answer.kind) {
    case 'length':
    case 'count':
      return isUnitAsked ? [long('')] : [number(unitAfter(answer))];
    case 'time':
      return [number('')];
    case 'day':
    case 'word':
      return [long('')];
    case 'order':
      return isIdea(answer) ? [] : answer.things.map((_, index) => long(`${index + 1}`));
    case 'interval':
      return [long('from'), long('to'), number('days')];
    case 'between':
      if (answer.low.kind === 'day') return [long('from'), long('to')];
      return blanksFor(answer.low, isUnitAsked);
    case 'days':
    case 'idea':
      return [];
  }
};

/** Answers in words: room for two lines; an idea is as long as a child makes it. */
const linesFor = (answer: Told): number => (answer.kind === 'days' || isIdea(answer) ? 2 : 1);

const isIdea = (told: Told): boolean =>
  told.kind === 'idea' ||
  (told.kind === 'order' && told.things.some(({ kind }) => kind === 'idea'));

const number = (after: string): AnswerBlank => ({ before: '', room: 'number', after });
const long = (before: string): AnswerBlank => ({ before, room: 'word', after: '' });

const unitAfter = (told: Extract<Told, { kind: 'length' | 'count' }>): string => {
  if (told.kind === 'count') return told.of;
  if (told.unit === 'count') return '';
  return unitNames[told.unit] ?? told.unit;
};

const unitNames: Readonly<Record<string, string>> = { in: 'inches', ft: 'feet', yd: 'yards' };
