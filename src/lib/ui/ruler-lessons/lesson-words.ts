import type { ZeroFix } from '#core/lessons';

/** What a child reads in the ruler lessons: one thing to do at a time. */
export const lessonWords = {
  name: 'Read a ruler',
  task: 'Pick one to try.',
  back: 'All ruler lessons',
  backToMeasure: 'Measure with care',
  lessons: {
    zero: 'Does zero touch the table?',
    spaces: 'Count the spaces',
    between: 'Between the numbers',
    how: 'How to measure',
  },
  another: 'One more',
  strip: 'The strip is',
  say: 'That is it',
  moreHelp: 'More help',
  look: 'I look again',
  before: 'Back',
  next: 'Next',
  fromStart: 'From the start',
  paper: 'On paper',
  zero: {
    stand: 'Stand your ruler on the table.',
    ask: 'Look at the 0. Which one is yours?',
    touches: 'The 0 touches the table.',
    gap: 'There is a gap under the 0.',
    good: 'Good. You can stand your ruler on the soil.',
    short: 'With a gap, each measure comes out short.',
    choose: 'Do one of these with a grown-up.',
    fixes: {
      'strip-first': 'Cut a strip as tall. Then measure the strip.',
      'zero-at-edge-ruler': 'Take a ruler with 0 at its end.',
      trim: 'Let a grown-up cut the gap off.',
    } satisfies Record<ZeroFix, string>,
    kept: 'It is in the notebook.',
    again: 'Look at a ruler again',
  },
  spaces: {
    ask: 'How long is the strip?',
    tap: 'Tap each space beside the strip.',
    say: 'Now write how long it is.',
  },
  between: {
    start: 'The strip begins at 0. It comes from the left.',
    startSeen: 'The strip begins at 0.',
    which: 'Between which two numbers does it end?',
    nearer: 'Which number is nearer to the end?',
    part: 'Which part is it? Write the whole measure.',
    named: 'Yes. The end is between these two.',
  },
} as const;

/** Five small pictures of measuring a plant: where, how, with what, from where, and what to say. */
export const howWords = [
  { picture: 'soil', text: 'Begin at the soil.' },
  { picture: 'straight', text: 'Stand the ruler straight up.' },
  { picture: 'eyes', text: 'Bring your eyes as high as the tip.' },
  { picture: 'same-end', text: 'Put the same end down each day.' },
  { picture: 'say', text: 'Read the number. Say the unit too.' },
] as const;

export type HowPicture = (typeof howWords)[number]['picture'];
