import { failed, ok, type Result } from '#core/base';
import {
  isLengthUnit,
  isMarkId,
  liesOnMark,
  markFits,
  parseMeasured,
  type MarkId,
  type Measured,
  type Unit,
} from '#core/measure';
import type { Cell } from './import-cell';
import { exactOfDecimal } from './plain-decimal';
import type { Refusal } from './row-content';
import { unitOfText } from './unit-in-words';

export interface OwnReading {
  readonly measured: Measured;
  readonly again?: readonly Measured[];
}

/**
 * A reading out of our own table. The reading's text may have been written with a decimal point
 * or a comma: the exact column beside it says which; where neither gives that length, the two
 * were edited apart, and which is meant is not for us to say.
 */
export function readOwnReading(cell: Cell): Result<OwnReading, Refusal> {
  const unit = unitOfText(cell('unit'));
  if (unit === null) return failed({ kind: 'unit', read: cell('unit') });
  const mark = cell('mark');
  if (!isMarkId(mark) || !markFits(mark, unit)) return failed({ kind: 'mark', read: mark });
  const read = cell('number');
  const exactly = isLengthUnit(unit) ? cell('cm') : cell('value');
  const exact = exactOfDecimal(exactly, isLengthUnit(unit) ? 'cm' : 'count');
  const measured = exact === null ? null : written(read, unit, mark, exact);
  if (!measured) return failed({ kind: 'disagrees', read, exactly });
  const list = cell('all-readings');
  if (list === '') return ok({ measured });
  const all = readList(list);
  const first = all?.findIndex((each) => isSame(each, measured)) ?? -1;
  if (!all || first < 0) return failed({ kind: 'all-readings', read: list });
  return ok({ measured: all[0]!, again: all.slice(1) });
}

/** What a text means, with a decimal point or else with a comma, if it means this length. */
function written(text: string, unit: Unit, mark: MarkId, exact?: number): Measured | null {
  for (const decimal of ['point', 'comma'] as const) {
    const parsed = parseMeasured(text, { unit, mark, decimal });
    if (!parsed.ok || parsed.value.unit !== unit || !liesOnMark(parsed.value.exact, mark)) continue;
    if (exact === undefined || parsed.value.exact === exact) return { ...parsed.value, text, mark };
  }
  return null;
}

/** `8 cm to 1 mm; 9 cm to 1 mm`, or null where any part is something else. */
function readList(list: string): readonly Measured[] | null {
  const all = list.split('; ').map((part) => {
    const [, text, unitText, mark] = /^(.+) (\S+) to (\S+(?: \S+)?)$/.exec(part) ?? [];
    const unit = unitOfText(unitText ?? '');
    if (text === undefined || unit === null || mark === undefined || !isMarkId(mark)) return null;
    return written(text, unit, mark);
  });
  return all.every((each) => each !== null) ? all : null;
}

const isSame = (one: Measured, other: Measured): boolean =>
  one.exact === other.exact && one.unit === other.unit && one.text === other.text;
