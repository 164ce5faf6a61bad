import { failed, ok, type Result } from '#core/base';
import type { Edit, Fault } from './fault';
import { secondNumberFault } from './second-number';
import { readPlainNumber, type PlainNumber } from './plain-number';
import { plus, ratio, type Ratio } from './ratio';
import type { Token } from './tokens';
import { isFractionAt, readFraction, type WrittenFraction } from './written-fraction';

/** A number as it was written, with its exact value in units and the way it was written. */
export interface WrittenNumber {
  readonly value: Ratio;
  readonly writtenAs: 'whole' | 'fraction' | 'decimal';
  readonly start: number;
  readonly end: number;
  /** The index of the token after it. */
  readonly next: number;
}

/** The number that starts at a token: `12`, `12.5`, `1/2`, `4 1/2`, `4-1/2`, `4½`, `4 and 1/2`. */
export const readNumber = (
  tokens: readonly Token[],
  index: number,
  decimal: '.' | ',',
): Result<WrittenNumber, Fault> => {
  if (isFractionAt(tokens, index)) {
    const fraction = readFraction(tokens, index);
    if (!fraction.ok) return fraction;
    const doubt = gluedFault(tokens[index], fraction.value);
    return doubt ? failed(doubt) : ok(asNumber(fraction.value));
  }
  const plain = readPlainNumber(tokens, index, decimal);
  if (!plain.ok) return plain;
  const fractionIndex = fractionAfter(tokens, plain.value.next);
  if (fractionIndex !== undefined) return mixed(tokens, plain.value, fractionIndex);
  const doubt = secondNumberFault(tokens, plain.value, decimal);
  return doubt ? failed(doubt) : ok(plainValue(plain.value));
};

const asNumber = (fraction: WrittenFraction): WrittenNumber => {
  const { over, under, ...place } = fraction;
  return { ...place, value: ratio(over, under), writtenAs: 'fraction' };
};

const plainValue = ({ whole, decimals, start, end, next }: PlainNumber): WrittenNumber => {
  const value = ratio(BigInt(whole + (decimals ?? '')), 10n ** BigInt(decimals?.length ?? 0));
  return { value, writtenAs: decimals === undefined ? 'whole' : 'decimal', start, end, next };
};

/** Where the fraction of a mixed number starts: after a blank, a hyphen, "and" or nothing. */
const fractionAfter = (tokens: readonly Token[], index: number): number | undefined => {
  if (isFractionAt(tokens, index)) return index;
  const token = tokens[index];
  const tight = token?.kind === 'hyphen' && token.joined && tokens[index + 1]?.joined;
  const joins = tight || (token?.kind === 'word' && token.word.toLowerCase() === 'and');
  return joins && isFractionAt(tokens, index + 1) ? index + 1 : undefined;
};

const mixed = (
  tokens: readonly Token[],
  plain: PlainNumber,
  index: number,
): Result<WrittenNumber, Fault> => {
  const fraction = readFraction(tokens, index);
  if (!fraction.ok) return fraction;
  const { over, under, start, end, next } = fraction.value;
  const bad = (edits: readonly Edit[]) =>
    failed<Fault>({ kind: 'bad-fraction', start, end, edits });
  if (plain.decimals !== undefined) return bad([]);
  const whole = BigInt(plain.whole);
  if (over >= under) {
    return bad([{ start: plain.start, end, replacement: mixedText(whole * under + over, under) }]);
  }
  const value = plus(ratio(whole), ratio(over, under));
  return ok({ value, writtenAs: 'fraction', start: plain.start, end, next });
};

const mixedText = (over: bigint, under: bigint): string =>
  over % under === 0n ? `${over / under}` : `${over / under} ${over % under}/${under}`;

/** `41/2` is twenty and a half, or four and a half with its blank forgotten. */
const gluedFault = (first: Token | undefined, fraction: WrittenFraction): Fault | undefined => {
  const { over, under, start, end } = fraction;
  if (first?.kind !== 'digits' || over < under) return undefined;
  const { digits } = first;
  const splits = [...digits.slice(1)]
    .map((_, place) => [digits.slice(0, place + 1), digits.slice(place + 1)] as const)
    .filter(([, right]) => !right.startsWith('0') && BigInt(right) < under)
    .map(([left, right]) => `${left} ${right}/${under}`);
  if (splits.length === 0) return undefined;
  const edits = [...splits, mixedText(over, under)].map((replacement): Edit => {
    return { start, end, replacement };
  });
  return { kind: 'ambiguous', start, end, edits };
};
