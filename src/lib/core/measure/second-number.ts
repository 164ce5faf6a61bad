import type { Edit, Fault } from './fault';
import { readPlainNumber, type PlainNumber } from './plain-number';
import type { Token } from './tokens';
import { denominators, isFractionAt } from './written-fraction';

/** What is wrong when a number is followed by another one, or by a stray fraction sign. */
export const secondNumberFault = (
  tokens: readonly Token[],
  first: PlainNumber,
  decimal: '.' | ',',
): Fault | undefined => {
  const token = tokens[first.next];
  if (token?.kind === 'slash') return { kind: 'bad-fraction', start: token.start, end: token.end };
  if (token?.kind === 'digits' || token?.kind === 'separator') {
    const second = readPlainNumber(tokens, first.next, decimal);
    return second.ok ? sideBySide(first, second.value, decimal) : second.error;
  }
  if (token?.kind !== 'hyphen' && token?.kind !== 'minus') return undefined;
  return apart(tokens, first, token, decimal);
};

/** `4 1`: 41, 4.1, or 4 1/2 not finished. `4 12`: 412, or 4 1/2 without its slash. */
const sideBySide = (first: PlainNumber, second: PlainNumber, decimal: '.' | ','): Fault => {
  const { start, end } = second;
  const bothWhole = first.decimals === undefined && second.decimals === undefined;
  const place = { start: first.start, end };
  const fractions = (bothWhole ? fractionsFrom(second.whole) : []).map((fraction): Edit => {
    return { ...place, replacement: `${first.whole} ${fraction}`, customaryOnly: true };
  });
  const numbers = [`${first.whole}${second.whole}`, `${first.whole}${decimal}${second.whole}`];
  const wholes = (bothWhole ? numbers : []).map((replacement): Edit => ({ ...place, replacement }));
  return { kind: 'ambiguous', start, end, edits: [...fractions, ...wholes] };
};

/** Fractions that digits may be part of: `1` of 1/2, 1/4 and so on; `34` of 3/4. */
const fractionsFrom = (digits: string): readonly string[] => {
  const unfinished = denominators
    .filter((under) => Number(digits) < Number(under) && Number(digits) % 2 === 1)
    .map((under) => `${digits}/${under}`);
  const slashless = denominators
    .filter((under) => digits.endsWith(under) && digits.length > under.length)
    .map((under) => [digits.slice(0, -under.length), under] as const)
    .filter(([over, under]) => Number(over) > 0 && Number(over) < Number(under))
    .map(([over, under]) => `${over}/${under}`);
  return [...slashless, ...unfinished];
};

/** `4-5` may be a span or a slip of the finger; `4 - 1/2` may be a sum. */
const apart = (
  tokens: readonly Token[],
  first: PlainNumber,
  sign: Token,
  decimal: '.' | ',',
): Fault | undefined => {
  const after = tokens[first.next + 1];
  const { start, end } = sign;
  if (isFractionAt(tokens, first.next + 1)) {
    const spaced = { start, end: after?.start ?? end, replacement: ' ' };
    return { kind: 'ambiguous', start, end, edits: [spaced] };
  }
  if (after?.kind !== 'digits' && after?.kind !== 'separator') return undefined;
  const second = readPlainNumber(tokens, first.next + 1, decimal);
  if (!second.ok) return second.error;
  const onlyFirst = { start, end: second.value.end, replacement: '' };
  const onlySecond = { start: first.start, end: second.value.start, replacement: '' };
  return { kind: 'ambiguous', start, end, edits: [onlyFirst, onlySecond] };
};
