import type { OwnQuestionLevel } from '#core/journal';
import type { NumberUnit } from './number-answer';

/** What the Talk page says to a child: ten words or fewer, and never "wrong". */
export const talkWords = {
  name: 'Talk',
  whoTalks: 'Who wants to talk?',
  myGraph: 'My graph',
  theGraph: 'The graph',
  theTable: 'The table',
  whatToSee: 'What to look at',
  computerDrew: 'The computer drew this one.',
  practice: 'Practice numbers, not ours',
  tableToo: 'Look in the table, too.',

  // How to answer.
  tapOne: 'Tap it on the graph.',
  tapSome: 'Tap each one on the graph.',
  tapTwo: 'Tap two days on the graph.',
  pickOne: 'Pick one.',
  pickSome: 'Pick each one.',
  pickTwo: 'Pick two days.',
  order: 'Tap them in order.',
  sentence: 'Which one would you say?',
  number: 'My number',
  noUnit: 'My number of what?',
  daysBetween: 'How many days is that?',
  daysFirst: 'Say how many days, too.',
  first: 'From',
  then: 'to',
  none: 'None picked yet',
  one: 'Pick one first.',
  all: 'Put them all in order first.',
  twoFirst: 'Pick two days first.',
  before: 'before',
  after: 'after',
  pick: 'Pick',
  putBack: 'Put back',
  takeBack: 'Take one back',
  cannotTell: 'We can not tell.',
  ownWords: 'I say it my own way.',
  write: 'Write it here, or just say it.',
  sayIt: 'That is my answer',
  later: 'Not now',

  // After an answer.
  lookAgain: 'Let us look once more.',
  together: 'Let us look at it together.',
  lookTogether: 'With my grown-up',
  fetch: 'Fetch your grown-up for this one.',
  tell: 'Tell it to your grown-up.',
  tellWhy: 'Say why you think so, too.',
  youSaid: 'You said',
  tryMore: 'Try once more',
  next: 'Go on',
  heard: 'Thank you. Your answer is kept.',
  looked: 'You looked at it together. It is kept.',
  notKept: 'It is not kept yet.',
  keepAgain: 'Keep it now',

  // When there is no more, or nothing yet.
  done: 'You talked about all of it.',
  skipped: 'Some are left for later.',
  goBack: 'Go to those now',
  drawOn: 'Finish your drawing first. Then there is more to ask.',
  toDraw: 'Go to my drawing',
  notReady: 'There is not much to talk about yet.',
  measureFirst: 'Measure it on a few more days first.',
  measure: 'Measure it now',
  more: 'More to talk about',
  toLesson: 'Back to the lesson',

  // A question of one's own.
  mine: 'Make up a question',
  write1: 'Now you ask. Make up a question.',
  myQuestion: 'My question',
  myAnswer: 'What is the answer?',
  maybe: 'You can leave this out.',
  keepMine: 'Keep my question',
  mineKept: 'Your question is kept. It comes up next time.',
  writeFirst: 'Write your question first.',
  answerFirst: 'Say it, or write it first.',
  helper: 'A grown-up may write it for you.',
} as const;

/** What a question of one's own is to be about. */
export const ownHint: Readonly<Record<OwnQuestionLevel, string>> = {
  read: 'Ask for one thing you can see.',
  between: 'Ask for two things at a time.',
};

/** How a question of one's own may begin. */
export const ownBeginnings: Readonly<Record<OwnQuestionLevel, readonly string[]>> = {
  read: ['How tall was it on', 'On which day was', 'How many days were'],
  between: ['How many more', 'How much did it grow from', 'How many in all'],
};

/** The units a child chooses from. */
export const unitNames: Readonly<Record<NumberUnit, string>> = {
  ...{ mm: 'mm', cm: 'cm', m: 'm', in: 'inches', ft: 'feet', yd: 'yards' },
  ...{ count: '', days: 'days' },
};
