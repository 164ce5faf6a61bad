import { describe, expect, it } from 'vitest';
import type { Notebook } from '#core/journal';
import { factsOf, ofTemplate, type Asking } from './facts-of-lines';
import {
  said,
  bean,
  bars,
  kindBars,
  kindPictures,
  rain,
  rainBars,
  rainPlot,
  shadow,
  shadowBars,
  skies,
  piles,
} from './hand-logs';

const asked: Readonly<Record<string, readonly [Notebook, Asking, readonly string[]]>> = {
  R1: [
    bean([5, null, 9]),
    bars,
    [
      'Find Monday 2 March. How tall was Bean? 5 cm',
      'Find Wednesday 4 March. How tall was Bean? 9 cm',
    ],
  ],
  R2: [
    skies,
    kindBars,
    [
      'How many sunny days are there? 7 days',
      'How many cloudy days are there? 3 days',
      'How many rainy days are there? 2 days',
    ],
  ],
  R3: [bean([5, 9, 9]), bars, ['Bean was 5 cm one day. Which day? Monday 2 March']],
  R4: [skies, kindPictures, ['What does each picture stand for? 1 day']],
  R5: [piles, rainPlot, ['What does each X mean? The rain of one day.']],
  // At 3 mm there are 2, at 5 mm 1, at 6 mm 2; at 2 mm there are 3.
  R6: [
    piles,
    rainPlot,
    [2, 3, 5, 6].map(
      (value, index) =>
        `How many times was there ${value} mm of rain? ${['3 times', '2 times', '1 time', '2 times'][index]}`,
    ),
  ],
  R7: [skies, kindBars, ['The numbers on the side go up. By how much each time? 1 day']],
  R8: [
    bean([5, 'missed', 9, null, 11]),
    bars,
    ['Which days have no number for Bean? How can you tell? Tuesday 3 March and Thursday 5 March'],
  ],
  R9: [
    rain([0, null, 4]),
    rainBars,
    [
      'Find a dry day. Find a day with no number. How are they not the same? The dry day had no rain. The other day we do not know.',
    ],
  ],
  R10: [
    shadow,
    shadowBars,
    [
      'How long was the shadow at 9 o’clock? Say it in cm. 60 cm',
      'How long was the shadow at 12 o’clock? Say it in cm. 25 cm',
      'How long was the shadow at 3 o’clock? Say it in cm. 48 cm',
    ],
  ],
};

describe('each template to read', () => {
  it.each(Object.entries(asked))(
    '%s asks what a hand works out',
    (id, [notebook, asking, texts]) => {
      expect(said(ofTemplate(factsOf(notebook, asking), id))).toEqual(texts);
    },
  );
});
