import { failed, ok, type Result } from '#core/base';
import type { Edit, Fault } from './fault';
import type { Token } from './tokens';
import type { LengthUnit } from './unit';
import { unitOfWord } from './unit-word';
import { readNumber, type WrittenNumber } from './written-number';

/** A number with the unit written after it, if one was. */
export interface WrittenPart extends WrittenNumber {
  readonly unit?: LengthUnit;
  readonly unitStart: number;
  readonly unitEnd: number;
}

/** The parts of a text: one of `4 1/2 in`, two of `1 ft 3 in`. Never empty when ok. */
export const readParts = (
  tokens: readonly Token[],
  decimal: '.' | ',',
): Result<readonly WrittenPart[], Fault> => {
  const parts: WrittenPart[] = [];
  let index = 0;
  do {
    const fault = startFault(tokens, index, parts.length > 0);
    if (fault) return failed(fault);
    const number = readNumber(tokens, index, decimal);
    if (!number.ok) return number;
    const part = withUnit(tokens, number.value, parts.at(-1)?.unit);
    if (!part.ok) return part;
    parts.push(part.value);
    index = part.value.unit ? afterJoiner(tokens, part.value.next) : part.value.next;
  } while (index < tokens.length);
  return ok(parts);
};

/** What is wrong with a token where a number should start. */
const startFault = (
  tokens: readonly Token[],
  index: number,
  isLater: boolean,
): Fault | undefined => {
  const token = tokens[index];
  if (token && isNumberStart(token)) return undefined;
  const { start = 0, end = 0 } = token ?? {};
  const after = tokens[index + 1];
  if (isLater) return { kind: 'not-a-number', start, end, expected: 'nothing-more' };
  const isMinus = token?.kind === 'hyphen' || token?.kind === 'minus';
  if (!isMinus || !after || !isNumberStart(after)) {
    return { kind: 'not-a-number', start, end, expected: 'number' };
  }
  return { kind: 'negative', start, end, edits: [{ start, end: after.start, replacement: '' }] };
};

const isNumberStart = ({ kind }: Token): boolean =>
  kind === 'digits' || kind === 'separator' || kind === 'fraction';

const withUnit = (
  tokens: readonly Token[],
  number: WrittenNumber,
  before: LengthUnit | undefined,
): Result<WrittenPart, Fault> => {
  const { start, end } = number;
  const token = tokens[number.next];
  if (!token) {
    if (before) return failed({ ...bareFault(before, end), start, end });
    return ok({ ...number, unitStart: end, unitEnd: end });
  }
  const place = { start: token.start, end: token.end };
  if (token.kind !== 'word') return failed({ kind: 'not-a-number', ...place, expected: 'unit' });
  const unit = unitOfWord(token.word);
  const next = number.next + 1;
  if (unit) return ok({ ...number, next, unit, unitStart: token.start, unitEnd: token.end });
  if (token.joined && tokens[next]?.joined && tokens[next]?.kind === 'digits') {
    return failed({ kind: 'not-a-number', ...place, expected: 'unit' });
  }
  const edits: readonly Edit[] = next === tokens.length ? [{ ...place, replacement: '' }] : [];
  return failed({ kind: 'unknown-unit', ...place, expected: 'unit', edits });
};

/** `5 ft 3` says feet and leaves the reader to think of the inches. */
const bareFault = (before: LengthUnit, end: number): Pick<Fault, 'kind' | 'expected' | 'edits'> => {
  const next = nextSmaller[before];
  const edits = next ? [{ start: end, end, replacement: ` ${next}` }] : [];
  return { kind: 'ambiguous', expected: 'unit', edits };
};

const nextSmaller: Partial<Record<LengthUnit, LengthUnit>> = {
  yd: 'ft',
  ft: 'in',
  m: 'cm',
  cm: 'mm',
};

/** Feet and inches may be joined: `1'-3"`, `1 ft, 3 in`, `1 foot and 3 inches`. */
const afterJoiner = (tokens: readonly Token[], index: number): number => {
  const token = tokens[index];
  const after = tokens[index + 1];
  const joins =
    token?.kind === 'hyphen' ||
    (token?.kind === 'separator' && token.sign === ',' && !after?.joined) ||
    (token?.kind === 'word' && token.word.toLowerCase() === 'and');
  return joins && after && isNumberStart(after) ? index + 1 : index;
};
