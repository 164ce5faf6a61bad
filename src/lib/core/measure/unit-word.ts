import type { LengthUnit } from './unit';

/**
 * The unit a written word or sign names, or undefined. Capitals and a closing full stop do not
 * matter: `In.` is inches. `"` and `'` are inches and feet, in any of the shapes that telephones
 * and word processors turn them into.
 */
export const unitOfWord = (word: string): LengthUnit | undefined =>
  unitByWord.get(word.toLowerCase().replace(/\.$/, ''));

export const doubleQuotes = '"\u2033\u201c\u201d\u201e\uff02';
export const singleQuotes = "'\u2032\u2018\u2019\u201b\uff07";

const wordsByUnit: Readonly<Record<LengthUnit, string>> = {
  in: 'in ins inch inches "',
  ft: "ft foot feet '",
  yd: 'yd yds yard yards',
  mm: 'mm mms millimetre millimetres millimeter millimeters \u339c',
  cm: 'cm cms centimetre centimetres centimeter centimeters \u339d',
  m: 'm metre metres meter meters',
};

const unitByWord = new Map(
  Object.entries(wordsByUnit).flatMap(([unit, words]) =>
    words.split(' ').map((word) => [word, unit as LengthUnit] as const),
  ),
);
