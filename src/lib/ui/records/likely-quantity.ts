import type { ImportMapping, SpecimenName } from '#core/exchange';
import type { Quantity } from '#core/journal';

/** What a table most likely measures, by its headings and names: a first choice to look over. */
export function likelyQuantity(
  { columnByField }: Pick<ImportMapping, 'columnByField'>,
  headings: readonly string[],
  name: SpecimenName | null,
): Quantity {
  if (columnByField.number === undefined && columnByField.word !== undefined) return 'daily-kind';
  const words = [...headings, name?.investigation, name?.specimen].join(' ').toLowerCase();
  return quantityByWord.find(({ form }) => form.test(words))?.quantity ?? 'length';
}

const quantityByWord: readonly { readonly form: RegExp; readonly quantity: Quantity }[] = [
  { form: /rain|precip|prcp|gauge/, quantity: 'rain' },
  { form: /shadow/, quantity: 'shadow' },
  { form: /height|tall|plant|seed|sprout|bean|stem|flower/, quantity: 'plant-height' },
];
