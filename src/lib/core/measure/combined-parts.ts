import { failed, ok, type Result } from '#core/base';
import type { Edit, Fault } from './fault';
import { plus, ratio, times, type Ratio } from './ratio';
import { exactPerUnit, systemOf, type LengthUnit, type Unit } from './unit';
import type { WrittenPart } from './written-parts';

/** What the parts of a reading come to: exact steps (nanometres or things) and the unit. */
export interface CombinedParts {
  readonly value: Ratio;
  readonly unit: Unit;
  readonly writtenAs: WrittenPart['writtenAs'];
}

/** The first part names the unit; the later ones must be smaller pieces of it. */
export const combineParts = (
  parts: readonly WrittenPart[],
  chosen: Unit,
): Result<CombinedParts, Fault> => {
  const unit = parts[0]?.unit ?? chosen;
  if (chosen === 'count' && parts[0]?.unit) {
    const { unitStart: start, unitEnd: end } = parts[0];
    const edits = parts.length === 1 ? [{ start, end, replacement: '' }] : [];
    return failed({ kind: 'unit-mismatch', start, end, expected: 'nothing-more', edits });
  }
  for (const [index, part] of parts.entries()) {
    const before = parts[index - 1];
    const fault = before && pairFault(before, part, parts);
    if (fault) return failed(fault);
  }
  const value = parts.map((part) => exactOf(part, unit)).reduce(plus, ratio(0n));
  return ok({ value, unit, writtenAs: writtenAsOf(parts) });
};

const exactOf = (part: WrittenPart, unit: Unit): Ratio =>
  times(part.value, exactPerUnit(part.unit ?? unit));

const writtenAsOf = (parts: readonly WrittenPart[]): WrittenPart['writtenAs'] =>
  parts.find(({ writtenAs }) => writtenAs !== 'whole')?.writtenAs ?? 'whole';

const pairFault = (
  before: WrittenPart,
  part: WrittenPart,
  parts: readonly WrittenPart[],
): Fault | undefined => {
  if (!before.unit || !part.unit) return undefined;
  const { unitStart, unitEnd, start, end } = part;
  if (systemOf(before.unit) !== systemOf(part.unit) || !isSmaller(part.unit, before.unit)) {
    const edits = parts.length === 2 ? swapped(before, part) : [];
    return { kind: 'unit-mismatch', start: unitStart, end: unitEnd, edits };
  }
  if (before.writtenAs !== 'whole') {
    return { kind: 'bad-part', start: before.start, end: before.end };
  }
  const { over, under } = exactOf(part, part.unit);
  const whole = exactPerUnit(before.unit);
  if (over < BigInt(whole) * under) return undefined;
  const edits = part.writtenAs === 'whole' && parts.length === 2 ? [carried(before, part)] : [];
  return { kind: 'bad-part', start, end, edits };
};

const isSmaller = (one: LengthUnit, other: LengthUnit): boolean =>
  exactPerUnit(one) < exactPerUnit(other);

/** `3 in 2 ft` the other way round. */
const swapped = (before: WrittenPart, part: WrittenPart): readonly Edit[] => {
  if (before.writtenAs !== 'whole' || part.writtenAs !== 'whole') return [];
  const replacement = `${part.value.over} ${part.unit} ${before.value.over} ${before.unit}`;
  return [{ start: before.start, end: part.unitEnd, replacement }];
};

/** `1 ft 15 in` with the twelve inches carried: 2 ft 3 in. */
const carried = (before: WrittenPart, part: WrittenPart): Edit => {
  const perWhole = BigInt(
    exactPerUnit(before.unit ?? 'count') / exactPerUnit(part.unit ?? 'count'),
  );
  const total = before.value.over * perWhole + part.value.over;
  const replacement = `${total / perWhole} ${before.unit} ${total % perWhole} ${part.unit}`;
  return { start: before.start, end: part.unitEnd, replacement };
};
