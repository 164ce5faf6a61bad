import { describe, expect, it } from 'vitest';
import type { Notebook } from '#core/journal';
import { daily, factsOf, kinds, notebookOf, ofTemplate, type Asking } from './facts-of-lines';
import {
  said,
  bean,
  bars,
  kindBars,
  kindPictures,
  rain,
  rainBars,
  rainPlot,
  skies,
  piles,
} from './hand-logs';

const asked: Readonly<Record<string, readonly [Notebook, Asking, readonly string[]]>> = {
  C1: [
    skies,
    kindBars,
    [
      'Count the sunny days. Count the cloudy days. How many more sunny days are there? 4 days',
      'Count the sunny days. Count the rainy days. How many more sunny days are there? 5 days',
      'Count the cloudy days. Count the rainy days. How many more cloudy days are there? 1 day',
    ],
  ],
  // Three days apart at least: from 2 to 5 March 11 - 4 = 7.
  C2: [
    bean([4, 6, 8, 11]),
    bars,
    [
      'Look at Monday 2 March and Thursday 5 March. That is 3 days. How much taller did Bean get? 7 cm',
    ],
  ],
  C3: [
    skies,
    kindBars,
    [
      'Count the sunny days. Count the cloudy days. How many is that together? 10 days',
      'Count the sunny days. Count the rainy days. How many is that together? 9 days',
      'Count the cloudy days. Count the rainy days. How many is that together? 5 days',
    ],
  ],
  C4: [skies, kindBars, ['How many days did we mark in all? 12 days']],
  // The steps are 2, 1, 2: only that of 1 cm comes once.
  C5: [
    bean([4, 6, 7, 9]),
    bars,
    [
      'Look at Bean. Two days in a row are 1 cm apart. Which days are they? Tuesday 3 March and Wednesday 4 March',
    ],
  ],
  C6: [
    rain([6, 2, 9]),
    rainBars,
    [
      'Look at the rain on these days. Monday 2 March. Tuesday 3 March. Wednesday 4 March. Put them in order. The least rain comes first. Tuesday 3 March, Monday 2 March, Wednesday 4 March',
    ],
  ],
  // The steps are 1, 4, 1: 4 leads by 3.
  C7: [
    bean([4, 5, 9, 10]),
    bars,
    [
      'When did Bean grow the most? Name the two days. How many days was that? Tuesday 3 March to Wednesday 4 March, 1 day',
    ],
  ],
  // 6 cm in 2 days is 3 each day.
  C8: [
    bean([4, 7, 10]),
    bars,
    [
      'Look from Monday 2 March to Wednesday 4 March. That is 2 days. About how much did Bean grow each day? 3 cm',
    ],
  ],
  C9: [piles, rainPlot, ['How much rain came most often? 2 mm']],
  C10: [piles, rainPlot, ['Find the smallest X. Find the largest X. How far apart are they? 4 mm']],
  // 5 are at 3 mm or more, 3 at 5 or more, 2 at 6.
  C11: [
    piles,
    rainPlot,
    [
      'Find each X at 3 mm or more. How many? 5 X marks',
      'Find each X at 5 mm or more. How many? 3 X marks',
      'Find each X at 6 mm or more. How many? 2 X marks',
    ],
  ],
  // 7 + 3 + 2 = 12: to 15 it takes 3, and to 20 it takes 8. Where 3 is said, 3 is not asked.
  C12: [
    skies,
    { ...kindBars, stage: 'grade-3' },
    [
      'We count 3 cloudy days. We count 2 rainy days. Find the sunny days too. How many more sunny days make 20 in all? 8 days',
      'We count 7 sunny days. We count 2 rainy days. Find the cloudy days too. How many more cloudy days make 15 in all? 3 days',
      'We count 7 sunny days. We count 2 rainy days. Find the cloudy days too. How many more cloudy days make 20 in all? 8 days',
      'We count 7 sunny days. We count 3 cloudy days. Find the rainy days too. How many more rainy days make 20 in all? 8 days',
    ],
  ],
  // Leads of 3, 5 and 1 cm; on 3 March the 3 would not be told away, for the lead is 5.
  C13: [
    notebookOf({ Bean: daily([5, 9, 9]), Pea: daily([2, 4, 8]) }),
    { source: 'days-in-order', graph: 'line-graph' },
    [
      'Find Monday 2 March. How far was Bean ahead of Pea? 3 cm',
      'Find Tuesday 3 March. How far was Bean ahead of Pea? 5 cm',
      'Find Wednesday 4 March. How far was Bean ahead of Pea? 1 cm',
      'When was Bean the most ahead of Pea? Name the day. Tuesday 3 March',
    ],
  ],
  C14: [
    kinds({ sun: 17, cloud: 6 }),
    { ...kindPictures, stage: 'grade-3' },
    [
      'Each picture means 2 days. Half a picture counts too. How many sunny days are there? 17 days',
      'Each picture means 2 days. Half a picture counts too. How many cloudy days are there? 6 days',
    ],
  ],
};

describe('each template between', () => {
  it.each(Object.entries(asked))(
    '%s asks what a hand works out',
    (id, [notebook, asking, texts]) => {
      expect(said(ofTemplate(factsOf(notebook, asking), id))).toEqual(texts);
    },
  );
});
