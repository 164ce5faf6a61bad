import type { FeatureId } from '#core/lessons';

/** The one thing a lesson teaches, as a line for a grown-up. */
export const featureText = (feature: FeatureId): string => features[feature];

const features: Readonly<Record<FeatureId, string>> = {
  'one-picture-each': 'One picture stands for one, and every row starts at the same line.',
  'key-with-number': 'The key says how many one picture stands for, so we count by that number.',
  'bars-from-zero': 'Every bar starts at 0, and ends at its number.',
  'missed-day-keeps-place': 'A missed day keeps its place and has no bar. Empty is not 0.',
  'one-cross-each': 'Every measure gets one cross above its number, also when it came before.',
  'parts-of-a-unit': 'Between two whole numbers there are equal parts, each with its place.',
  'along-then-up':
    'To find a point, walk along to the day or hour first, then climb to the number.',
  'gaps-are-dashed': 'What was missed keeps its place, and the join across it is dashed.',
  'jump-is-the-difference': 'How much taller it got is the jump from one number to the next.',
  'smaller-unit-more-units': 'The smaller the unit, the more of them it takes for the same length.',
  'guess-then-measure':
    'A good guess starts from a length we know. Then we measure, and count how far off it was.',
  'whose-line':
    'Two plants need two lines that look different, and a key that says whose is whose.',
};
