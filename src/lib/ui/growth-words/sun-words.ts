import { formatDay, type CivilDay } from '#core/calendar';
import {
  amountIn,
  decimalText,
  type NoonShadow,
  type NoonShadowError,
  type ShadowCheck,
} from '#core/growth';
import { formatMeasured, type Measured, type Unit } from '#core/measure';
import type { SeriesPoint } from '#core/series';
import { amountWords, toldAmount } from './amount-words';
import { readingWords } from './graph-words';

/** The shortest shadow of a day beside what the sun makes of a stick: for the grown-up. */

export const sunWords = {
  title: 'A check on the stick and the ruler',
  about:
    'The sun’s height at midday depends on the day and on how far north or south you are. From that, the shortest shadow can be worked out. It is a check on the stick and the ruler, not on the child.',
  childFirst: 'The child finds the shortest shadow with the stick; this is not for the child.',
  label: 'Latitude in degrees',
  hint: 'A whole degree is enough; look on a map. It is used for this one calculation and leaves nothing behind.',
  keep: 'Keep it on this device',
  keepHint:
    'In this browser only: not in the notebook, not in a backup, never sent. It says roughly how far north or south you are.',
  kept: 'Kept on this device.',
  forget: 'Forget it',
  forgotten: 'Forgotten.',
  check: 'Work it out',
  unreadable: 'That is not a number from 0 to 90.',
  noDays:
    'No day has a shortest shadow yet: that takes three readings with their times on one day.',
  noStick:
    'The height of the stick is not known. It is asked for when a stick is set up; a stick set up anew under “Set-up” can have one.',
} as const;

/** What the day's shortest shadow should about have been, and how it was. */
export function sunDayWords(
  { day, shortest }: { readonly day: CivilDay; readonly shortest: SeriesPoint },
  { expected, check }: { readonly expected: NoonShadow; readonly check: ShadowCheck | null },
  stick: Measured,
  unit: Unit,
): readonly string[] {
  const told = (exact: number): string =>
    amountWords(toldAmount(amountIn(exact, [shortest.mark], unit)).replace(/^about /, ''));
  const [low, high] = [told(expected.lowExact), told(expected.highExact)];
  return [
    `${formatDay(day, 'long')}: at its highest the sun stood ${decimalText(expected.sunHeightDegrees, 0)} degrees high. A stick of ${amountWords(formatMeasured(stick))} then has a shadow of about ${told(expected.exact)} (${low} to ${high}).`,
    `The shortest you measured was ${amountWords(readingWords(shortest))}${shortest.time ? ` at ${shortest.time}` : ''}. ${check ? checkWords[check.kind] : ''}`.trim(),
  ];
}

const checkWords: Readonly<Record<ShadowCheck['kind'], string>> = {
  fits: 'It fits.',
  longer:
    'That is more than a tenth longer. The sun may have been highest between two readings, the ground may fall away, or the stick may lean away from the sun.',
  shorter:
    'That is more than a tenth shorter. The stick may be shorter than written, or lean toward the sun; the ground may rise; or the tape may not have begun at its foot.',
};

/** Why nothing can be held against it. */
export function noSunWords(error: NoonShadowError, day: CivilDay): string {
  const when = formatDay(day, 'long');
  switch (error.kind) {
    case 'latitude-out-of-range':
      return sunWords.unreadable;
    case 'no-stick':
      return sunWords.noStick;
    case 'sun-does-not-rise':
      return `${when}: the sun does not rise there on that day. A shadow was measured, so the latitude, or north and south, may be another.`;
    case 'sun-too-low':
      return `${when}: the sun stays so low there that a shadow is more than eleven sticks long. A hill or a house decides, not the stick: nothing to check.`;
    case 'sun-nearly-overhead':
      return `${when}: the sun is nearly overhead there. The shadow is so short that a lean nobody sees decides: nothing to check.`;
  }
}
