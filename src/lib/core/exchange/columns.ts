/**
 * The columns of our own table of a log, in their order, each with what it holds. One row is one
 * line of the log, crossed-out lines among them; the headings stand in the first record.
 */
export const logColumns = [
  { heading: 'day', holds: 'The day it was measured: 2026-03-02.', isFree: false },
  { heading: 'time', holds: 'The time of day, where one was noted: 07:30.', isFree: false },
  { heading: 'investigation', holds: "The investigation's title.", isFree: true },
  { heading: 'specimen', holds: "The specimen's name.", isFree: true },
  {
    heading: 'state',
    holds:
      'number, not up yet, missed, no sun, trace, lost; word for a daily word; note for a note.',
    isFree: false,
  },
  { heading: 'reading', holds: 'The reading as it was written down.', isFree: true },
  {
    heading: 'unit',
    holds: 'The unit it was read in: in, ft, yd, mm, cm, m or count.',
    isFree: false,
  },
  { heading: 'mark', holds: 'The finest division it was read to: 1/2 in, 1 mm.', isFree: false },
  {
    heading: 'value',
    holds: 'The reading in its unit as a decimal, rounded to 6 places where it does not end.',
    isFree: false,
  },
  {
    heading: 'cm',
    holds: 'The same length in centimetres, exactly. Empty for counts.',
    isFree: false,
  },
  {
    heading: 'span days',
    holds: 'How many days a rain total was gathered over, where more than one.',
    isFree: false,
  },
  {
    heading: 'all readings',
    holds: 'Where several were taken at once, each of them: 8 cm to 1 mm; 9 cm to 1 mm.',
    isFree: true,
  },
  { heading: 'word', holds: "The day's word, where the state is word.", isFree: true },
  { heading: 'leaves', holds: 'How many leaves were counted.', isFree: false },
  { heading: 'weather', holds: 'sun, cloud, rain, snow, wind or fog.', isFree: false },
  { heading: 'who', holds: 'The nickname of who wrote it down.', isFree: true },
  { heading: 'note', holds: 'What was written beside it.', isFree: true },
  { heading: 'why', holds: 'Why there is no number, where somebody said so.', isFree: true },
  { heading: 'line', holds: 'counts, crossed out or taken back.', isFree: false },
  { heading: 'line why', holds: 'Why it was crossed out or taken back.', isFree: true },
  { heading: 'line who', holds: 'The nickname of who did so.', isFree: true },
  {
    heading: 'line when',
    holds: 'When that was, in universal time: 2026-03-02T08:00:00.000Z.',
    isFree: false,
  },
] as const satisfies readonly LogColumn[];

export interface LogColumn {
  readonly heading: string;
  readonly holds: string;
  /** Whether it holds what people typed, which must be guarded against running as a formula. */
  readonly isFree: boolean;
}

export type LogHeading = (typeof logColumns)[number]['heading'];

/** How each state is written in the state column. */
export const wordByState = {
  'not-up-yet': 'not up yet',
  missed: 'missed',
  'no-sun': 'no sun',
  trace: 'trace',
  lost: 'lost',
} as const;

export const lineWords = ['counts', 'crossed out', 'taken back'] as const;
export type LineWord = (typeof lineWords)[number];
