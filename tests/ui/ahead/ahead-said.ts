import { civilDay } from '#core/calendar';
import type { OpenPrediction, PredictionOfferError } from '#core/growth';
import type { EntryId, Quantity } from '#core/journal';
import { missOf } from '#core/series';
import {
  aheadWords,
  becauseBeginnings,
  comparedWords,
  daysAheadWords,
  notYetWords,
  opensWords,
} from '../../../src/lib/ui/ahead/ahead-words';
import { anId, read } from '../../core/journal/entries';

export const today = civilDay('2026-03-13');
const quantities: readonly Quantity[] = ['plant-height', 'length'];

/** A guess that has opened, held against what was read in whole centimetres; null: not measured. */
export const openedGuess = (guess: number, was: number | null): OpenPrediction => {
  const reading = was === null ? null : read(was);
  const miss = reading
    ? missOf(read(guess), reading)
    : { missExact: null, direction: null, size: null };
  return {
    ...{ state: 'open', id: anId<EntryId>(1), day: civilDay('2026-03-11'), forDay: today },
    ...{ author: null, measured: read(guess), because: 'it was warm', reading },
    ...miss,
  };
};

export const notYet: readonly PredictionOfferError[] = [
  { kind: 'not-this-quantity', quantity: 'rain' },
  { kind: 'ended' },
  { kind: 'too-few', have: 3, need: 5 },
  { kind: 'too-few', have: 4, need: 5 },
  { kind: 'too-short', days: 5, need: 7 },
  { kind: 'measure-first', lastDay: civilDay('2026-03-02') },
];

/** All that a child can read on the page of guesses for later. */
export const aheadSaid = [
  aheadWords,
  [1, 2, 3].map(daysAheadWords),
  opensWords(today),
  notYet.map((error) => notYetWords(error, today, today)),
  quantities.map(becauseBeginnings),
  quantities.flatMap((quantity) =>
    [13, 14, 12, 16, 20, 5]
      .map((guess) => comparedWords(openedGuess(guess, 13), quantity))
      .concat(comparedWords(openedGuess(13, null), quantity)),
  ),
];
