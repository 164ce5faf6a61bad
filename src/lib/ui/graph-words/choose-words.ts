import type {
  GraphFit,
  Missing,
  NoGraph,
  TableQuestion,
  TableSource,
  TableVariant,
} from '#core/graphs';

/** What is counted or measured, in a child's words. */
export const sourceWords: Readonly<Record<TableSource, string>> = {
  'kind-days': 'The kinds of days',
  'weather-days': 'The weather',
  'wet-days': 'Wet days and dry days',
  'growth-days': 'Did it grow that day?',
  'state-days': 'The days we measured',
  'specimen-readings': 'How often we measured each',
  'day-values': 'Each day’s measure',
  'values-side-by-side': 'Two of them, day by day',
  'week-values': 'Each week’s rain',
  'hour-values': 'The shadow, hour by hour',
  'each-specimen': 'All of them, measured once',
  'reads-of-one': 'One thing, measured many times',
  'growth-amounts': 'How much it grew each day',
  'rain-amounts': 'How much it rained each day',
  'days-in-order': 'Walking through the days',
  'hours-in-order': 'Walking through the hours',
};

export const tableQuestionWords: Readonly<Record<TableQuestion, string>> = {
  'which-came-most': 'Which came most?',
  'which-had-most': 'Which had the most?',
  'how-often': 'How often?',
  'how-did-it-change': 'How did it change?',
};

export const fitWords: Readonly<Record<GraphFit, string | null>> = {
  now: null,
  guided: 'with a grown-up',
  later: 'for a later grade',
};

export const missingWords = (missing: Missing): string => {
  if (missing.kind === 'no-repeats') return 'All the numbers differ. There are no piles yet.';
  if (missing.kind === 'no-graph') return noGraphWords[missing.why.kind];
  const more = missing.need - missing.have;
  return more === 1 ? 'One more is needed first.' : `${more} more are needed first.`;
};

const noGraphWords: Readonly<Record<NoGraph['kind'], string>> = {
  'wrong-table-for-kind': 'This table is for another graph.',
  'too-few': 'More measures are needed first.',
  'too-many-kinds': 'There are too many kinds for now.',
  'too-many-series': 'There are too many plants for one graph.',
  'too-many-marks': 'The pile is higher than the paper.',
  'no-numbers': 'There are no numbers yet.',
  'units-mixed': 'The numbers are in two units.',
  'below-zero': 'A number is less than 0.',
  'no-key-fits': 'No key fits these numbers.',
  'too-tall': 'It is taller than the paper.',
  'too-wide': 'It is wider than the paper.',
};

/** Another way to get the table, for the grown-up to pick. */
export const variantWords = ({ span, told, together, choice }: TableVariant): string =>
  [
    spanWords[span],
    told === null ? '' : toldWords[told],
    choice.specimens.length > 1 ? 'together in one graph' : '',
    together ? 'the small kinds together' : '',
    choice.givenSteps ? 'on a frame with its scale, by fives and more' : '',
  ]
    .filter((part) => part !== '')
    .join(', ');

const spanWords: Readonly<Record<TableVariant['span'], string>> = {
  whole: 'The whole log',
  'first-ten': 'The first ten',
  'first-that-fit': 'The first ones that fit the paper',
  'latest-ten': 'The latest ten',
  'latest-shared': 'The latest days of both',
  'shared-that-fit': 'The latest days of both that fit the paper',
  'one-day': 'One day',
};

const toldWords: Readonly<Record<Exclude<TableVariant['told'], null>, string>> = {
  'as-read': '',
  'one-unit': 'told in one unit',
  'coarser-mark': 'to a coarser mark (about)',
  'other-unit': 'in another unit (about)',
};
