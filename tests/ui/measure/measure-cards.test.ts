import { expect, test } from 'vitest';
import type { Quantity } from '#core/journal';
import { cardsFor, measureCards } from '../../../src/lib/ui/measure/measure-cards';

test.each<[Quantity, readonly string[]]>([
  ['plant-height', measureCards],
  ['length', ['ruler', 'both-sides', 'together', 'ahead']],
  ['shadow', ['ruler', 'both-sides']],
  ['rain', ['ruler']],
  ['daily-kind', ['ruler']],
])('only what suits %s is offered', (quantity, cards) => {
  expect(cardsFor(quantity)).toEqual(cards);
});
