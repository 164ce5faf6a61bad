import { addDays } from '#core/calendar';
import { stages } from '#core/journal';
import { logSumsOf, reviewFor, type Sum } from '#core/lessons';
import {
  blockWords,
  otherSumWords,
  reviewWords,
  sumHelpWords,
  takenWords,
  takeWords,
} from '../../../src/lib/ui/review/review-words';
import { jumpsText } from '../../../src/lib/ui/review/jumps-text';
import { paperChildWords } from '../../../src/lib/ui/review/review-paper-words';
import { storyOf } from '../../../src/lib/ui/review/story-words';
import { sampleNotebook, sampleToday } from '../../core/graphs/sample-logs';

/** Some of the sums of the made-up notebook, of each kind and unknown, and made-up ones. */
const sums: readonly Sum[] = stages.flatMap((stage) => {
  const all = logSumsOf(sampleNotebook, stage, sampleToday);
  const kinds = [...new Set(all.map(({ story, unknown }) => `${story} ${unknown}`))];
  const practice = [0, 1, 2, 3].flatMap((day) =>
    reviewFor({ ...sampleNotebook, specimens: new Map() }, null, addDays(sampleToday, day), {
      ...{ stage, family: 'inches' },
    }).flatMap((place) => ('task' in place && place.task.of === 'sum' ? [place.task.sum] : [])),
  );
  return [
    ...kinds.flatMap((kind) =>
      all.filter(({ story, unknown }) => `${story} ${unknown}` === kind).slice(0, 20),
    ),
    ...practice,
  ];
});

const ofDays: Sum = {
  ...{ story: 'more', thing: 'days', of: 'Sky', specimen: null, unit: 'count' },
  ...{ first: { kind: 'word', word: 'rain' }, second: { kind: 'word', word: 'sun' } },
  ...{ start: 5, change: 3, result: 8, unknown: 'change', isPractice: false },
};

/** Everything a child reads in the daily review, but the questions about graphs and rulers. */
export const reviewSaid: readonly unknown[] = [
  ...[
    reviewWords,
    reviewWords.place(2, 6),
    reviewWords.measure.go('Bean'),
    takeWords(8),
    takenWords(8),
  ],
  ...[sumHelpWords, otherSumWords, blockWords, paperChildWords],
  jumpsText({ isBack: false, landings: [8, 10, null], sizes: [2, 3] }),
  [...sums, ofDays, { ...ofDays, unknown: 'result' as const }].map(storyOf),
];
