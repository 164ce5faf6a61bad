import type { Reading } from '#core/journal';
import type { Doubt } from '#core/series';
import type { DoubtDeed } from '#ui/doubt-words';
import { readingInOtherUnit } from './other-unit';

/**
 * The answers to choose from, in order. There is always a way to say that it was read so; a
 * different unit is offered only where one explains the number.
 */
export function deedsFor(doubt: Doubt, reading: Reading): readonly DoubtDeed[] {
  switch (doubt.kind) {
    case 'zero-or-missed':
      return ['no-plant', 'missed', 'read-so'];
    case 'shadow-zero':
      return ['no-sun', 'read-so', 'look-again'];
    case 'other-plant':
      return ['read-so', 'other-plant', 'look-again'];
    default:
      return readingInOtherUnit(reading, doubt)
        ? ['read-so', 'look-again', 'other-unit']
        : ['read-so', 'look-again'];
  }
}
