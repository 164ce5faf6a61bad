import { formatDay } from '#core/calendar';
import type { TableChoice, TableSource } from '#core/graphs';
import type { LessonMissing, PurposeId } from '#core/lessons';
import { missingWords, sourceWords } from '#ui/graph-words';
import type { IconName } from '#ui/icons';

/** The grown-up's page where lessons are made. */
export const lessonsWords = {
  name: 'Lessons',
  what: 'What is the lesson for?',
  lead: 'A lesson is made of your own log: one graph, one thing to teach, and questions with answers.',
  wish: 'Grade and minutes',
  stage: 'For which grade?',
  minutes: 'How long?',
  ready: 'Ready today',
  noneReady: 'No graph lesson of this log is ready yet. That is usual in the first weeks.',
  later: 'Not ready yet',
  make: 'Make this lesson',
  which: 'Of which table?',
  made: 'Lessons made before',
  noneMade: 'None yet.',
  notMade: 'This log makes no such lesson just now. Nothing was written.',
} as const;

/** An empty notebook, met kindly. */
export const emptyWords = {
  why: 'A lesson is made of what your child measured, and there is no log yet.',
  begin: 'Begin to measure',
  sample: 'Look around a made-up notebook',
  sampleWhy: 'It has four weeks of numbers, so its lessons can be tried.',
} as const;

/** Which days of the log the lesson is of, and of how many logs. */
export const choiceDetail = ({ from, to, specimens }: TableChoice): string => {
  const days =
    from === to
      ? formatDay(from, 'short')
      : `${formatDay(from, 'short')} to ${formatDay(to, 'short')}`;
  return specimens.length > 1 ? `${days}, ${specimens.length} together` : days;
};

/** A table of the log that a lesson can be of. */
export const tableText = (choice: TableChoice): string =>
  `${sourceWords[choice.source]} (${choiceDetail(choice)})`;

/** What is missing for a lesson, as the next thing to do. */
export const missingText = (missing: readonly LessonMissing[], source: TableSource): string =>
  missing.map((each) => missingOne(each, source)).join(' ');

const missingOne = (missing: LessonMissing, source: TableSource): string => {
  switch (missing.kind) {
    case 'more-needed':
      return more(missing, countedBySource[source]);
    case 'no-growth':
      return 'It has not grown from one reading to the next yet.';
    case 'more-pairs':
      return more(missing, [
        'reading on both sides of the ruler',
        'readings on both sides of the ruler',
      ]);
    case 'more-guesses':
      return more(missing, [
        'guess that is measured afterwards',
        'guesses that are measured afterwards',
      ]);
    case 'one-log':
      return 'A second plant with numbers of its own.';
    case 'no-fair-test':
      return 'A plan of the test: what is different, and what is kept the same.';
    case 'open-doubts':
      return missing.have === 1
        ? 'One number that looks odd is to be settled first: see the log.'
        : `${missing.have} numbers that look odd are to be settled first: see the log.`;
    default:
      return missingWords(missing);
  }
};

const more = (
  { have, need }: { readonly have: number; readonly need: number },
  [one, many]: readonly [string, string],
): string => (need - have === 1 ? `1 more ${one}.` : `${need - have} more ${many}.`);

const day = ['day', 'days'] as const;
const reading = ['reading', 'readings'] as const;

const countedBySource: Readonly<Record<TableSource, readonly [string, string]>> = {
  'kind-days': day,
  'weather-days': ['day with its weather', 'days with their weather'],
  'wet-days': ['day read by itself', 'days read one by one'],
  'growth-days': ['day read next to another', 'days read next to one another'],
  'state-days': day,
  'specimen-readings': reading,
  'day-values': ['day with a number', 'days with a number'],
  'values-side-by-side': ['day with two numbers', 'days with two numbers'],
  'week-values': ['week', 'weeks'],
  'hour-values': ['reading that day', 'readings that day'],
  'each-specimen': ['plant or thing measured', 'plants or things measured'],
  'reads-of-one': ['reading of the same thing', 'readings of the same thing'],
  'growth-amounts': ['day read next to another', 'days read next to one another'],
  'rain-amounts': ['day read by itself', 'days read one by one'],
  'days-in-order': ['day with a number', 'days with a number'],
  'hours-in-order': ['reading that day', 'readings that day'],
};

/** A lesson that needs no plant and no waiting, in place of one that is not ready. */
export interface Instead {
  readonly text: string;
  readonly link: string;
  readonly path:
    | '/begin'
    | '/measure/together'
    | '/measure/ruler'
    | '/measure/both-sides'
    | '/measure/fair-test';
}

const kindOfDay: Instead = {
  text: 'Needs no plant: one word a day for the kind of day. After eight days it makes this graph.',
  link: 'Begin a log of kinds of days',
  path: '/begin',
};
const measureTogether: Instead = {
  text: 'Needs no plant: all of you measure one thing, eight times in all. That makes this graph today.',
  link: 'Measure with others',
  path: '/measure/together',
};
const shadowDay: Instead = {
  text: 'Needs no plant: a stick’s shadow, every hour of one sunny day.',
  link: 'Begin a shadow day',
  path: '/begin',
};

export const insteadByPurpose: Readonly<Record<PurposeId, Instead>> = {
  'picture-graph-of-kinds': kindOfDay,
  'bar-graph-of-how-many-days': kindOfDay,
  'value-bars': shadowDay,
  'line-plot-of-one-thing': measureTogether,
  'line-plot-of-many': measureTogether,
  'line-plot-of-amounts': measureTogether,
  'line-graph-guided': shadowDay,
  'how-much-taller': shadowDay,
  'two-units-of-one-thing': {
    text: 'Needs no plant: read both sides of a ruler, on paper strips and pencils.',
    link: 'Read both sides',
    path: '/measure/both-sides',
  },
  'guess-before-measuring': measureTogether,
  'fair-test-of-two': {
    text: 'Today already: plan the test together, before the numbers come.',
    link: 'Plan a fair test',
    path: '/measure/fair-test',
  },
  'two-side-by-side': shadowDay,
};

/** When no lesson of a log is ready: what can be done today all the same. */
export const rulerLesson: Instead = {
  text: 'Today already: read a ruler, and find what its marks say.',
  link: 'Read a ruler',
  path: '/measure/ruler',
};

export const givenText = (days: readonly string[]): string =>
  days.length === 0 ? 'Not given yet' : `Given on ${days.join(', ')}`;

/** What goes with all lessons. */
export const besideLessons = [
  { path: '/lessons/evidence', name: 'What has been seen', icon: 'look' },
  { path: '/review', name: 'The day’s review', icon: 'tally' },
  { path: '/review/paper', name: 'The review on paper', icon: 'print' },
] as const satisfies readonly { path: string; name: string; icon: IconName }[];

/** The other pages of one lesson. */
export const lessonLinks = [
  { path: '/lessons/plan', name: 'Plan', icon: 'plan' },
  { path: '/lessons/run', name: 'Teach', icon: 'lessons' },
  { path: '/lessons/paper', name: 'Print', icon: 'print' },
  { path: '/talk', name: 'Talk', icon: 'talk' },
] as const;

/** Why a lesson cannot be opened, and what can be done. */
export const openWords = {
  'not-here':
    'This lesson is not in this notebook. Perhaps it was made on another device, or making it was undone.',
  'not-a-lesson':
    'A part of this lesson was written by a newer Morning Measure and cannot be shown here. It is kept as it is.',
  'no-table':
    'The log this lesson was made of is not in the notebook now. The lesson is kept; a log that was removed can be put back under Records.',
  'no-graph':
    'Numbers of the log were put right since, and what is left makes no such graph. Make a new lesson of the log.',
  records: 'Go to Records',
  all: 'All lessons',
} as const;
