import type { GraphKind, RightPart } from '#core/graphs';

/**
 * What is right already, told to the child: what was done, never how clever somebody is.
 * Where the kinds of graph need other words, they have them.
 */
export const rightWords = (part: RightPart, kind: GraphKind): string =>
  wordsByKind[kind][part] ?? wordsByPart[part];

const wordsByPart: Readonly<Record<RightPart, string>> = {
  title: 'Your title says what it is about.',
  key: 'Your key says what each picture means.',
  'side-label': 'You said what your numbers are of.',
  'bottom-label': 'You said what the bottom line is for.',
  'scale-from-zero': 'Your numbers start at zero.',
  'even-scale': 'Your numbers go up by the same jump.',
  'every-place': 'Each kind has its own place.',
  'same-size': 'You made them all the same size.',
  'stand-on-base': 'They all start at the same line.',
  'every-value': 'Each one shows what your table says.',
  'one-mark-each': 'Each number has its own mark.',
  'every-day': 'Each day has its own place.',
  'joined-in-order': 'Your line goes day by day.',
  'gaps-shown': 'You kept the place of a day without a number.',
  unit: 'You wrote the unit.',
};

const wordsByKind: Readonly<Record<GraphKind, Partial<Record<RightPart, string>>>> = {
  'picture-graph': {
    title: 'You gave your graph a title.',
    'same-size': 'Your pictures are all the same size.',
    'stand-on-base': 'Your rows all start at the same line.',
    'every-value': 'Each row shows what your table says.',
  },
  'bar-graph': {
    'same-size': 'Your bars are all as wide as each other.',
    'stand-on-base': 'Your bars all start at the same line.',
    'every-value': 'Each bar shows what your table says.',
  },
  'line-plot': {
    'same-size': 'Your marks are all the same size.',
    'every-value': 'Each mark sits at its own number.',
  },
  'line-graph': {
    'every-value': 'Each point sits where your table says.',
    'gaps-shown': 'Your line shows the days you did not measure.',
  },
};
