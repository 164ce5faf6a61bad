import { formatDay, type CivilDay } from '#core/calendar';
import type { CautionPlace, ZeroCheck, ZeroFix } from '#core/lessons';
import type { HelperLength, Quantity } from '#core/journal';

/** When a caution matters, after "when": the moments a set-up page can look ahead to. */
export const momentWords: Readonly<Record<CautionPlace, string>> = {
  'set-up': 'now',
  shopping: 'when you shop',
  sowing: 'when you sow',
  reading: 'at each reading',
  outdoors: 'out of doors',
  weekly: 'every week',
};

export const cautionListWords = {
  title: 'With care',
  putAway: 'Put away for a week',
  /** The text itself stays: set-up tells all of them, always. */
  resting: (until: CivilDay): string =>
    `Put away: on other pages it comes again on ${formatDay(until, 'long')}.`,
} as const;

export const rulerCheckWords = {
  title: 'Our ruler',
  ask: 'Stand the ruler on a table. Does zero touch the table?',
  why: 'On many rulers zero is not the edge. Standing on the soil, such a ruler makes every height short by the same few millimetres, and no reading shows it.',
  yes: 'Yes, zero touches the table',
  no: 'No, there is a gap',
  again: 'Look at a ruler again',
  withTheChild: 'Look at it with the child',
} as const;

export function zeroWords(check: Exclude<ZeroCheck, { kind: 'not-checked' }>): string {
  const when = formatDay(check.day, 'long');
  return check.kind === 'zero-at-edge'
    ? `Looked at on ${when}: zero touches the table.`
    : `Looked at on ${when}: there is a gap before zero. One of these helps:`;
}

export const fixWords: Readonly<Record<ZeroFix, string>> = {
  'strip-first':
    'Cut a paper strip as tall as the plant, lay it on the table, and measure the strip.',
  'zero-at-edge-ruler': 'Take a ruler whose zero is at its very edge.',
  trim: 'Trim the edge off, so that zero is the end; a grown-up does it.',
};

/** A length of one's own body, and how it is measured. All are common practice, no source. */
export const helperNames: Readonly<
  Record<Exclude<HelperLength, 'ruler'>, { name: string; how: string }>
> = {
  'little-finger': { name: 'Little finger', how: 'How wide the nail of the little finger is.' },
  thumb: { name: 'Thumb', how: 'How wide the thumb is, at the knuckle.' },
  'hand-span': {
    name: 'Hand span',
    how: 'The hand spread wide: from the tip of the thumb to the tip of the little finger.',
  },
  foot: { name: 'Foot', how: 'From heel to toe, standing on paper.' },
  step: {
    name: 'Step',
    how: 'An ordinary step: from the heel of one foot to the heel of the other.',
  },
  reach: { name: 'Reach', how: 'Arms spread wide: from fingertip to fingertip, along a wall.' },
};

export const helperSheetWords = {
  title: 'My own helpers',
  about:
    'Lengths of the child’s own body help to guess others. Measure them on the child: bodies differ, and they grow, so look again now and then.',
  nobody: 'Add the child under “People” first: helpers belong to somebody.',
  notYet: 'not measured yet',
  measure: 'Measure',
  again: 'Measure again',
  leave: 'Leave it',
  submit: 'Write it down',
} as const;

/** The whole way to measure, for the card that hangs beside the plant. Common practice, no source. */
export const protocolSteps: Readonly<Record<Quantity, readonly string[]>> = {
  'plant-height': [
    'From the soil to the growing tip, not to the top of the tallest leaf. Mark the soil line on a small stick beside the stem: soil settles and washes.',
    'Bent or hooked: measure it as it stands, and note “bent”. A climbing stem: lay a thread along it. Do not stretch the plant.',
    'The same ruler, the same end, the eye level with the tip, the same person if you can.',
    'The same time each day: in the morning, before watering.',
    'Read to the nearest mark. Just in the middle: go up, always.',
    'On lesson days read three times and keep the middle one. On other days once.',
    'Not up yet is not 0. A day nobody measured stays without a number.',
  ],
  rain: [
    'A straight-sided container with a flat bottom. Its width does not matter; a funnel, sloping sides or a domed bottom do.',
    'In the open: at least twice as far from a wall or a tree as that is tall. The rim level, off the ground, no sprinkler near.',
    'The same time each morning. Write it on the day it is read. Then empty it.',
    'A dry day is a reading: write 0. Wet, but too little to measure: stamp “just a bit wet” (T).',
    'After several days without a look, the number is a total: write for how many days. It is never one day’s rain.',
    'Leave snow out.',
  ],
  shadow: [
    'The same upright stick, at the same place, on level ground. Measure its height once.',
    'Mark the tip of the shadow with a stone or chalk, and write the clock time. Then measure from the foot of the stick to the mark.',
    'The tip is fuzzy: take the middle of the fuzzy edge.',
    'Every hour of one sunny day, or the same three times each day for a week.',
    'No sun is not 0: stamp it. A person is a poor stick: they move.',
    'Eyes down, on the shadow. Never at the sun.',
  ],
  length: [
    'From one end to the other, always the same two ends.',
    'The same ruler, lined up at zero, the eye straight above the mark.',
    'Read to the nearest mark. Just in the middle: go up, always.',
    'The same time each day.',
  ],
  'daily-kind': [
    'The same window, the same time each day.',
    'One word a day. When two fit, choose what there was most of.',
    'A day nobody looked stays without a word.',
  ],
};

export const protocolTitle = 'How we measure, step by step';
export const printCards = 'Print the set-up cards';
