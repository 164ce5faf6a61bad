import { amountIn } from '#core/growth';
import { markById } from '#core/measure';
import type { StartAtOne } from '#core/series';
import { amountWords, toldAmount } from './amount-words';

/** What readings of both sides of the ruler tell about where counting begins. */

export const pairsAbout =
  'One height read on both sides of one ruler gives two numbers, both true. Together they show what one side alone cannot: whether counting begins at 1 in place of 0.';

export function startAtOneWords(signal: StartAtOne): readonly string[] {
  if (signal.kind === 'too-few') {
    return [
      `${signal.have === 1 ? '1 reading has' : `${signal.have} readings have`} both sides so far; it takes ${signal.need} to tell.`,
    ];
  }
  const amount = amountIn(Math.abs(Math.round(signal.meanExact)), ['1 mm'], 'cm');
  const size = amountWords(toldAmount(amount));
  const pairs = `In the last ${signal.pairs.length} pairs the centimetres come out`;
  if (signal.kind === 'fine') {
    const side = signal.meanExact < 0 ? 'shorter' : 'longer';
    const off =
      Math.abs(signal.meanExact) < markById('1 mm').exact / 2
        ? 'as long as the inches'
        : `${size} ${side} than the inches`;
    return [`${pairs} ${off}, taken together. Counting seems to begin at 0.`];
  }
  return [
    `${pairs} ${size} shorter than the inches, taken together. Counted from 1 on both sides, they would be about 1.5 cm shorter.`,
    'No number is mended for that. The ruler lesson “Count the spaces” shows a child why the ruler begins at 0.',
  ];
}

/** A ruler with a gap before its zero shifts both sides alike. */
export const deadZoneUnseen =
  'A gap before the ruler’s zero does not show here: both sides are short by the same. Stand the ruler on a table and look.';
