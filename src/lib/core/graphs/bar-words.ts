import { isLengthUnit, nanometresByUnit, type LengthUnit } from '#core/measure';
import type { BarScale } from './bar-scale';
import type { Drawing } from './drawing';
import type { BarMistakeId, FoundMistake, LookAt, RightPart } from './found-mistake';
import type { RightGraph } from './right-graph';
import { saysOneOf } from './says-one-of';
import { saysUnit } from './says-unit';
import { unitWords } from './unit-words';

export interface BarWords {
  readonly right: readonly RightPart[];
  readonly otherUnit: readonly FoundMistake[];
  readonly mistakes: readonly FoundMistake[];
}

/**
 * What is written on a bar graph: the label of the number side, the numbers themselves and the
 * title. Words that are there but say little are a soft matter, since spelling and wording are
 * never marked; a label or numbers that name another unit than the table has are B16. A side
 * without any numbers has nothing to be read by: the nearest mistake is B10.
 * Not part of the public door.
 */
export const barWords = (right: RightGraph, drawing: Drawing, scale: BarScale): BarWords => {
  const { title, side } = drawing;
  const { table } = right;
  const unit = table.form === 'values' && isLengthUnit(table.unit) ? table.unit : null;
  const hasLabel = side.label.trim() !== '';
  const hasTitle = title.trim() !== '';
  const saysTitle = saysOneOf(title, right.titleWords);
  const saysLabel = saysOneOf(side.label, right.sideWords);
  const hasUnit = unit !== null && saysUnit(side.label, unitWords(unit));
  const labelsOtherUnit = unit !== null && !hasUnit && namesAnother(side.label, unit);
  const oddTicks = side.ticks.flatMap(({ text }, index) =>
    unit !== null && namesAnother(text, unit) ? [index] : [],
  );
  const isUnnumbered = scale.written === null;
  const label: LookAt = { part: 'side-label' };
  const numbers: LookAt = { part: 'side-ticks', indexes: side.ticks.map((_, index) => index) };
  return {
    right: [
      ...(saysTitle ? (['title'] as const) : []),
      ...(saysLabel ? (['side-label'] as const) : []),
      ...(hasUnit ? (['unit'] as const) : []),
    ],
    otherUnit: [
      ...(labelsOtherUnit ? [found('B16', label)] : []),
      ...(oddTicks.length > 0 ? [found('B16', { part: 'side-ticks', indexes: oddTicks })] : []),
    ],
    mistakes: [
      ...(hasTitle && saysTitle ? [] : [found('B13', { part: 'title' }, hasTitle)]),
      ...(isUnnumbered ? [found('B10', numbers)] : []),
      ...(hasLabel && (saysLabel || labelsOtherUnit) ? [] : [found('B10', label, hasLabel)]),
    ],
  };
};

const found = (id: BarMistakeId, lookAt: LookAt, isSoft = false): FoundMistake => ({
  ...{ id, lookAt, isSoft },
});

/** Only whole words: `in` is a unit after a number and a small word elsewhere. */
const namesAnother = (text: string, unit: LengthUnit): boolean => {
  const said: readonly string[] = text.toLowerCase().match(/\p{L}+|["'\u2032\u2033]/gu) ?? [];
  const isSmallWord = (word: string): boolean => word === 'in' && !/\d\s*in\b/.test(text);
  return (Object.keys(nanometresByUnit) as LengthUnit[])
    .filter((other) => other !== unit)
    .some((other) => unitWords(other).some((word) => said.includes(word) && !isSmallWord(word)));
};
