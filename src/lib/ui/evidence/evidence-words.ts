import { formatDay, yearOf, type CivilDay } from '#core/calendar';
import type { EvidenceLevel } from '#core/journal';
import type { EvidenceDay, SeenHow, UnreadEvidence } from '#core/lessons';

/** What the page of evidence says to a grown-up. */
export const evidenceWords = {
  name: 'Evidence',
  lead: 'What has been seen, skill by skill, each with its day. No tests, no scores.',
  noChild: 'No child is in this notebook yet. Put one in under Set-up: a nickname is enough.',
  which: 'Which child',
  add: 'Add a note',
  print: 'Print this page',
  noteAbout: 'Add a note about it',
  showAll: (count: number): string => `Show all ${count}`,
  onPaper:
    'No scores are kept. What records must hold differs from place to place: check your own rules.',
  skillsOf: (stage: string): string => `Skills of ${stage.toLowerCase()}.`,
  here: 'Kept on this device only, for grown-ups. No page of the child shows it.',
} as const;

export const deedWords = {
  written: (skill: string): string => `Written down under “${skill}”.`,
  'taken-back': (skill: string): string => `The note is taken back: “${skill}”.`,
} as const;

export const seenWords: Readonly<
  Record<SeenHow, { readonly title: string; readonly hint: string }>
> = {
  often: { title: 'Seen often', hint: 'Done alone, on three different days or more.' },
  sometimes: { title: 'Seen sometimes', hint: 'Seen, but not yet alone on three days.' },
  'not-yet': {
    title: 'Not seen yet',
    hint: 'Not a fault: there may have been no moment for it. Open one to see where it would show.',
  },
};

export const noneSeenWords: Readonly<Record<SeenHow, string>> = {
  often: 'Nothing yet. It takes three days, and they come by themselves.',
  sometimes: 'Nothing here now.',
  'not-yet': 'Everything here has been seen.',
};

export const howWords: Readonly<Record<EvidenceLevel, string>> = {
  seen: 'seen',
  'with-help': 'with help',
  alone: 'alone',
};

/** With its year where that is another than this one. */
export const dayWords = (day: CivilDay, today: CivilDay): string =>
  yearOf(day) === yearOf(today) ? formatDay(day, 'short') : datedWords(day);

/** A day on paper has its year, and no room for its weekday. */
export const datedWords = (day: CivilDay): string =>
  formatDay(day, 'long').split(' ').slice(1).join(' ');

/**
 * The days of a skill in one line, by how it was done: alone first, each with its newest days and
 * how many more there are.
 */
export const daysLine = (
  days: readonly EvidenceDay[],
  tell: (day: CivilDay) => string,
  most: Readonly<Record<EvidenceLevel, number>>,
): string =>
  (['alone', 'with-help', 'seen'] as const)
    .map((how) => ({ how, of: days.filter((each) => each.how === how) }))
    .filter(({ of }) => of.length > 0)
    .map(({ how, of }, index) => {
      const shown = of.slice(0, most[how]).map(({ day }) => tell(day));
      const more = of.length - shown.length;
      const named = index === 0 ? capital(howWords[how]) : howWords[how];
      return `${named}: ${shown.join(', ')}${more > 0 ? ` and ${more} more ${more === 1 ? 'day' : 'days'}` : ''}`;
    })
    .join('; ');

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** Why skills that show by themselves are not "often": only a grown-up knows who helped. */
export const wasItAlone = (days: number): string =>
  `The notebook saw it on ${days} days, but cannot tell who helped. A note can say so.`;

export const sampleWords = {
  title: 'Kept samples',
  none: 'None chosen yet. Three to five drawings are usually enough: attach one to a note.',
  hint: (count: number): string =>
    count < 3 ? `${count} chosen. Three to five are usually enough.` : `${count} chosen.`,
} as const;

export const nobodysWords = {
  title: 'Nobody’s name is on these',
  some: (count: number): string =>
    `${count} ${count === 1 ? 'piece has' : 'pieces have'} nobody’s name on ${count === 1 ? 'it' : 'them'}`,
  hint: 'They count for nobody until a note says whose they are.',
  its: (name: string): string => `It is ${name}’s`,
} as const;

export const unreadWords = {
  count: (count: number): string =>
    `${count} ${count === 1 ? 'entry' : 'entries'} could not be read here and ${count === 1 ? 'was' : 'were'} left out. Nothing of ${count === 1 ? 'it' : 'them'} is lost.`,
  why: {
    'not-a-question': 'an answer to a question of another program',
    'not-a-review': 'an item of a review of another program',
    'not-a-skill': 'a note about a skill this program does not know',
    'not-a-graph': 'a drawing of a kind this program does not know',
    'not-a-day': 'something written on a day outside the calendar',
  } satisfies Record<UnreadEvidence['why'], string>,
} as const;

export const showWords = {
  title: 'Where it would show',
  ready: 'ready today',
  notReady: 'not ready yet',
  lesson: 'See the lessons',
  noLesson: 'No lesson of your logs would show it now.',
  also: 'Also:',
} as const;

export const codesTitle = 'What the codes are';
