import type { DecimalSign } from '#core/measure';
import type { Separator } from './separator';

export interface DecimalGuess {
  readonly decimal: DecimalSign;
  /** Whether the numbers leave it open, and it should be asked. */
  readonly isOpen: boolean;
}

/**
 * Whether numbers are written with a decimal point or a decimal comma. `1,234` alone does not
 * tell: a comma before three digits may mark the thousand. Where nothing tells, semicolons
 * between the fields speak for commas in the numbers. (Common practice, no source.)
 * @example
 * guessDecimal(['12,5', '7'], ';') // => { decimal: 'comma', isOpen: false }
 * guessDecimal(['1,234'], ',') // => { decimal: 'point', isOpen: true }
 */
export function guessDecimal(numbers: readonly string[], separator: Separator): DecimalGuess {
  let hasPoint = false;
  let hasComma = false;
  let hasUnclear = false;
  for (const number of numbers) {
    const [, sign, digits] = /^\D*\d*([.,])(\d+)\D*$/.exec(number) ?? [];
    if (digits === undefined) continue;
    if (digits.length === 3 && sign === ',') hasUnclear = true;
    else if (sign === ',') hasComma = true;
    else hasPoint = true;
  }
  const byHabit = separator === ';' && !hasPoint ? 'comma' : 'point';
  if (hasPoint && hasComma) return { decimal: byHabit, isOpen: true };
  if (hasPoint) return { decimal: 'point', isOpen: false };
  if (hasComma) return { decimal: 'comma', isOpen: false };
  return { decimal: byHabit, isOpen: hasUnclear };
}
