import type { Unit } from '#core/measure';

/** How each unit is said. */
export const unitWords: Readonly<
  Record<Exclude<Unit, 'count'>, { one: string; many: string; article: 'a' | 'an' }>
> = {
  in: { one: 'inch', many: 'inches', article: 'an' },
  ft: { one: 'foot', many: 'feet', article: 'a' },
  yd: { one: 'yard', many: 'yards', article: 'a' },
  mm: { one: 'millimetre', many: 'millimetres', article: 'a' },
  cm: { one: 'centimetre', many: 'centimetres', article: 'a' },
  m: { one: 'metre', many: 'metres', article: 'a' },
};
