import type { PurposeId } from '#core/lessons';

/** What a lesson is for, as one plain line for a grown-up. */
export const purposeText = (id: PurposeId): string => purposeWords[id];

const purposeWords: Readonly<Record<PurposeId, string>> = {
  'picture-graph-of-kinds': 'Show how many days of each kind with pictures',
  'bar-graph-of-how-many-days': 'Show how many days of each kind with bars, and compare them',
  'value-bars': 'Show each measure as a bar, one after the other',
  'line-plot-of-one-thing': 'Measure one thing many times, and see how far the numbers spread',
  'line-plot-of-many': 'Measure many things once, and see which lengths come most often',
  'line-plot-of-amounts': 'See how often each amount came in one day',
  'line-graph-guided': 'Follow a measure through time with points and joins',
  'how-much-taller': 'Find how much taller it got, with jumps on a number line',
  'two-units-of-one-thing':
    'Measure one thing in centimetres and in inches, and see why the numbers differ',
  'guess-before-measuring': 'Guess first, then measure, and see how close the guess came',
  'fair-test-of-two': 'Compare the two plants of a fair test in one graph',
  'two-side-by-side': 'Set two plants side by side as bars, and say how much taller one is',
};
