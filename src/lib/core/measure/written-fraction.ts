import { failed, ok, type Result } from '#core/base';
import type { Edit, Fault } from './fault';
import type { Token } from './tokens';

/** A fraction as it was written, improper or not, and not reduced. */
export interface WrittenFraction {
  readonly over: bigint;
  readonly under: bigint;
  readonly start: number;
  readonly end: number;
  /** The index of the token after it. */
  readonly next: number;
}

/** Whether a fraction starts at a token: `½`, or digits and then a slash. */
export const isFractionAt = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.kind === 'fraction' ||
  (tokens[index]?.kind === 'digits' && tokens[index + 1]?.kind === 'slash');

/** The fraction that starts at a token; isFractionAt must have said that one does. */
export const readFraction = (
  tokens: readonly Token[],
  index: number,
): Result<WrittenFraction, Fault> => {
  const first = tokens[index];
  if (first?.kind === 'fraction') {
    const over = BigInt(first.numerator);
    const under = BigInt(first.denominator);
    return alone(tokens, { over, under, start: first.start, end: first.end, next: index + 1 });
  }
  const slash = tokens[index + 1];
  if (first?.kind !== 'digits' || !slash) throw new Error('No fraction starts here');
  const over = BigInt(first.digits);
  const below = tokens[index + 2];
  if (below?.kind !== 'digits') {
    const [start, end] = below ? [below.start, below.end] : [slash.end, slash.end];
    const place = { start: slash.end, end: slash.end, customaryOnly: true };
    const edits = denominators
      .filter((under) => BigInt(under) > over)
      .map((replacement): Edit => ({ ...place, replacement }));
    return failed({ kind: 'bad-fraction', start, end, expected: 'denominator', edits });
  }
  const under = BigInt(below.digits);
  if (under === 0n) {
    const { start, end } = below;
    return failed({ kind: 'bad-fraction', start, end, expected: 'denominator' });
  }
  return alone(tokens, { over, under, start: first.start, end: below.end, next: index + 3 });
};

/** The parts that rulers are divided into. */
export const denominators: readonly string[] = ['2', '4', '8', '16'];

/** A fraction with a further slash or decimals hanging on (`1/2/3`, `1/2.5`) is none. */
const alone = (
  tokens: readonly Token[],
  fraction: WrittenFraction,
): Result<WrittenFraction, Fault> => {
  const after = tokens[fraction.next];
  const hangsOn = after?.kind === 'slash' || (after?.kind === 'separator' && after.joined);
  if (!hangsOn) return ok(fraction);
  return failed({ kind: 'bad-fraction', start: after.start, end: after.end });
};
