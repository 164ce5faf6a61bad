import { failed, type Result } from '#core/base';
import { isMarkId, markFits, parseMeasured, type Measured, type Unit } from '#core/measure';
import type { Cell } from './import-cell';
import type { ImportMapping } from './import-mapping';
import type { Refusal } from './row-content';
import { unitOfText } from './unit-in-words';

/** Reads the number of one row after the other; the same text is worked out only once. */
export function measuredReader(
  mapping: ImportMapping,
): (read: string, cell: Cell) => Result<Measured, Refusal> {
  const known = new Map<string, Result<Measured, Refusal>>();
  return (read, cell) => {
    const unitText = cell('unit');
    const markText = cell('mark');
    const key = `${unitText}\n${markText}\n${read}`;
    const before = known.get(key);
    if (before) return before;
    const result = readMeasured(read, unitText, markText, mapping);
    if (known.size < mostKnown) known.set(key, result);
    return result;
  };
}

const mostKnown = 20_000;

function readMeasured(
  read: string,
  unitText: string,
  markText: string,
  mapping: ImportMapping,
): Result<Measured, Refusal> {
  const unit: Unit | null = unitText === '' ? mapping.unit : unitOfText(unitText);
  if (unit === null) {
    return failed(unitText === '' ? { kind: 'no-unit' } : { kind: 'unit', read: unitText });
  }
  if (markText !== '' && (!isMarkId(markText) || !markFits(markText, unit))) {
    return failed({ kind: 'mark', read: markText });
  }
  const mark = isMarkId(markText) ? markText : mapping.mark;
  const { decimal } = mapping;
  const measured = parseMeasured(read, { unit, decimal, ...(mark ? { mark } : {}) });
  return measured.ok ? measured : failed({ kind: 'number', read, error: measured.error });
}
