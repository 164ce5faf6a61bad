import {
  exactPerUnit,
  markById,
  markFits,
  type DecimalSign,
  type MarkId,
  type Unit,
} from '#core/measure';

/** The keys a mark calls for besides the figures. */
export interface FinerKeys {
  /** Fractions of one unit, smallest first, written as they will be: 1/4, 1/2, 3/4. */
  readonly fractions: readonly string[];
  /** A key for the decimal sign, where readings go below one unit in tenths. */
  readonly decimal: boolean;
}

/**
 * Which keys a reading to this mark needs besides the figures. Whole units need none; a mark that
 * belongs to another system than the unit (the child has just changed the unit) gets none. Feet
 * and yards are read in parts (1 ft 3 in), which are typed in full.
 * @example
 * finerKeys('in', '1/4 in').fractions // => ['1/4', '1/2', '3/4']
 */
export const finerKeys = (unit: Unit, mark: MarkId): FinerKeys => {
  const { exact, writtenAs } = markById(mark);
  if (unit === 'ft' || unit === 'yd') return none;
  if (!markFits(mark, unit) || exact >= exactPerUnit(unit)) return none;
  if (writtenAs === 'decimal') return { fractions: [], decimal: true };
  const parts = exactPerUnit(unit) / exact;
  const numerators = Array.from({ length: parts - 1 }, (_, index) => index + 1);
  return { fractions: numerators.map((top) => lowest(top, parts)), decimal: false };
};

/** One press on the pad. */
export type PadKey =
  | { readonly kind: 'figure'; readonly figure: string }
  | { readonly kind: 'fraction'; readonly fraction: string }
  | { readonly kind: 'decimal'; readonly sign: DecimalSign }
  | { readonly kind: 'take-back' }
  | { readonly kind: 'clear' };

/**
 * What stands on the pad's line after one press. A fraction is put after the whole number, in
 * place of another; a figure goes before a fraction that is already there; a fraction is taken
 * back in one piece. A press that cannot mean anything changes nothing.
 * @example
 * pressKey('4', { kind: 'fraction', fraction: '1/2' }) // => '4 1/2'
 */
export const pressKey = (text: string, key: PadKey): string => {
  const { whole, fraction } = splitFraction(text);
  switch (key.kind) {
    case 'figure':
      return wholeFigures(whole) >= mostFigures ? text : join(whole + key.figure, fraction);
    case 'fraction':
      return join(whole.replace(/[.,].*$/, ''), key.fraction);
    case 'decimal':
      if (fraction || /[.,]/.test(whole)) return text;
      return `${whole === '' ? '0' : whole}${key.sign === 'comma' ? ',' : '.'}`;
    case 'take-back':
      return fraction ? whole : text.slice(0, -1).trimEnd();
    case 'clear':
      return '';
  }
};

const mostFigures = 6;
const none: FinerKeys = { fractions: [], decimal: false };

const wholeFigures = (whole: string): number => whole.replace(/\D/g, '').length;

const splitFraction = (text: string): { whole: string; fraction: string } => {
  const found = /^(.*?)\s*(\d+\/\d+)$/.exec(text.trim());
  if (!found) return { whole: text.trim(), fraction: '' };
  return { whole: found[1] ?? '', fraction: found[2] ?? '' };
};

const join = (whole: string, fraction: string): string =>
  [whole, fraction].filter(Boolean).join(' ');

const lowest = (top: number, parts: number): string =>
  top % 2 === 0 ? lowest(top / 2, parts / 2) : `${top}/${parts}`;
