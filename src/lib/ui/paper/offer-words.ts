import { formatDay } from '#core/calendar';
import { markWords } from '#ui/words';
import type { PaperOffer } from './paper-offers';

/** What tells one way to get a table from another: its days, whose they are, and the mark. */
export const offerDetail = ({ choice, told }: Pick<PaperOffer, 'choice' | 'told'>): string => {
  const { from, to, specimens, told: toldIn } = choice;
  const days =
    from === to
      ? formatDay(from, 'short')
      : `${formatDay(from, 'short')} to ${formatDay(to, 'short')}`;
  const whose = specimens.length > 1 ? `, ${specimens.length} together` : '';
  const mark =
    toldIn === null || told === 'as-read' ? '' : `, to the nearest ${markWords[toldIn.mark]}`;
  return `${days}${whose}${mark}`;
};

export const offerWords = {
  drawings: 'Saved drawings',
  tables: 'Tables that are ready',
  plain: 'Plain squares',
  noTables: 'No table of this log is ready for a graph yet. Measure some more days.',
  otherWays: 'Other days and units',
  all: 'All sheets',
} as const;

/** Why a finished graph is not shown, and what the grown-up can do. */
export const coverWords = {
  why: 'A child’s drawing of this log is still open, so the finished graph is not shown here.',
  print: 'You can print it as it is, or look at it when the child does not.',
  show: 'Show it to me',
  hide: 'Hide it again',
} as const;
