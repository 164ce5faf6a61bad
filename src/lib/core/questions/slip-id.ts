/**
 * What a typical wrong answer shows about the thinking behind it. Commonly seen slips in reading
 * graphs (common practice, no source), named after what was done instead.
 */
export const slipIds = [
  // Read and between.
  ...(['larger-value', 'smaller-value', 'added', 'off-by-one', 'one-part-only'] as const),
  ...(['other-category', 'other-day', 'other-time', 'other-pile', 'axis-for-count'] as const),
  ...(['count-for-axis', 'forgot-scale', 'forgot-unit', 'blank-is-zero', 'counted-ends'] as const),
  ...([
    'divided-by-readings',
    'whole-jump',
    'counted-kinds',
    'kind-for-key',
    'top-number',
  ] as const),
  ...(['mark-is-unit', 'mark-is-day', 'one-day-only', 'reversed', 'log-order'] as const),
  ...(['tallest-day', 'tallest-plant', 'summed-axis', 'left-out-equal', 'one-step-only'] as const),
  ...(['half-as-whole', 'other-unit', 'some-left-out', 'more-than-asked'] as const),
  // Beyond and behind.
  ...(['a-wish', 'decimals', 'midpoint-as-fact', 'sure-of-it', 'nothing-changes'] as const),
  ...(['straight-on', 'exactly-the-same', 'one-number', 'same-place', 'one-exact-day'] as const),
  ...(['bottom-of-pot', 'did-not-grow', 'older-is-right', 'bigger-unit', 'the-plants'] as const),
  ...(['neatness', 'taller-is-healthier', 'everywhere', 'hardest-sum', 'forgot-to-erase'] as const),
] as const;
export type SlipId = (typeof slipIds)[number];
