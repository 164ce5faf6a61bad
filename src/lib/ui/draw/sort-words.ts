import type { SortedOtherwise, TableSource } from '#core/graphs';

/** What the child is asked while it sorts, in ten words at most. */
export const sortWords = (source: TableSource): string =>
  askBySource[source] ?? 'Sort each day into its kind.';

const askBySource: Readonly<Partial<Record<TableSource, string>>> = {
  'growth-days': 'Did it grow? Look at the two strips.',
  'wet-days': 'How was this day? Look at the rain.',
  'specimen-readings': 'Whose number is this? Tap the name.',
};

export const lookAgainWords = 'Look at this one again.';
export const sortedSameWords = 'Your tally and the log say the same.';
export const sortedOwnWords = 'Your tally is done. You draw what you sorted.';

/** Why the log's table stands beside the paper though the child had a tally. */
export const tallyNoticeWords: Readonly<Record<'lost' | 'does-not-fit', string>> = {
  lost: 'Your tally cannot be read here.',
  'does-not-fit': 'Your tally does not fit on this paper.',
};

/** For the grown-up: one day that stands elsewhere than in the log. */
export const otherwiseWords = ({ label, says, sorted, inLog }: SortedOtherwise): string => {
  const log = inLog === null ? 'the log says otherwise now' : `the log has it as “${inLog}”`;
  return `${label} (${says}): sorted as “${sorted}”; ${log}.`;
};
