import type { Amount } from '#core/growth';
import { unitCatalogue, type Unit } from '#core/measure';

/** How amounts and units are written: beside a number, in a sentence, and for a voice. */

/** With "about" where something was rounded, or turned from one system into the other. */
export const toldAmount = ({ text, isAbout }: Amount): string => (isAbout ? `about ${text}` : text);

/** ` cm` or ` inches` after a bare number; nothing for a count. */
export const unitWord = (unit: Unit): string => {
  if (unit === 'count') return '';
  return unit === 'in' ? ' inches' : ` ${unit}`;
};

/** Sentences with their units in full, for a voice to read. */
export const spokenWords = (sentences: readonly string[]): string =>
  withUnitsInFull(sentences.join(' '), ['mm', 'cm', 'm', 'ft', 'yd']);

/**
 * An amount inside a sentence: `4 1/2 inches`, for "in" alone would be read as another word. Only
 * ever given an amount, because in "5 in 7 days" the 5 may be a count.
 */
export const amountWords = (amount: string): string => withUnitsInFull(amount, ['in']);

const withUnitsInFull = (text: string, units: readonly Unit[]): string =>
  text.replace(
    new RegExp(`([\\d./]+) (${units.join('|')})\\b`, 'g'),
    (_all, number: string, sign: string, at: number) => {
      const { singular, plural } = unitCatalogue().find(({ unit }) => unit === sign)!;
      const isBareFraction = number.includes('/') && !/\d $/.test(text.slice(0, at));
      return `${number} ${number === '1' || isBareFraction ? singular : plural}`;
    },
  );
