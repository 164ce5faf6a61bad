import type { Stage } from '#core/journal';
import { parseMeasured, systemOf, type MarkId, type ParseError, type Unit } from '#core/measure';
import { failed, ok, type Result } from '#core/base';
import { answerWayOf, type AskedQuestion, type Told } from '#core/questions';

/** How a number is given: which keys, and which units stand to choose from. */
export interface NumberWay {
  readonly unit: Unit;
  readonly mark: MarkId;
  /** What is counted; empty for a length. */
  readonly of: string;
  /** The units to choose from, none chosen yet; empty where the unit is not asked for. */
  readonly units: readonly NumberUnit[];
}

export type NumberUnit = Unit | 'days';

/**
 * How the number of a question is given. A length is said with its unit, which the child chooses;
 * up to grade 2 in whole units, in grade 3 as finely as the ruler shows, and then its unit is
 * given, because the keys hang on it.
 */
export function numberWay(question: AskedQuestion, stage: Stage): NumberWay {
  const { answer } = question;
  const told = answer.kind === 'between' ? answer.low : answer;
  if (told.kind !== 'length' || told.unit === 'count') {
    return { unit: 'count', mark: '1', of: told.kind === 'count' ? told.of : '', units: [] };
  }
  const whole = wholeMarks[told.unit];
  const isFiner = stage === 'grade-3' && told.mark !== whole;
  const { isHeard } = answerWayOf(question);
  const units: readonly NumberUnit[] =
    systemOf(told.unit) === 'metric' ? [told.unit, 'in', 'days'] : [told.unit, 'cm', 'days'];
  return {
    ...{ unit: told.unit, mark: isFiner ? told.mark : whole, of: '' },
    units: isFiner || isHeard ? [] : units,
  };
}

/**
 * What was said with a number: without a chosen unit it is a bare number.
 *
 * Errors: those of `parseMeasured`.
 */
export function numberTold(
  text: string,
  way: NumberWay,
  chosen: NumberUnit | null,
): Result<Told, ParseError> {
  const unit = way.units.length === 0 ? way.unit : chosen;
  if (unit === null || unit === 'days' || unit === 'count') {
    const read = parseMeasured(text, { unit: 'count', mark: '1' });
    if (!read.ok) return failed(read.error);
    const of = unit === null ? '' : unit === 'days' ? 'days' : way.of;
    return ok({ kind: 'count', count: read.value.exact, of });
  }
  const mark = unit === way.unit ? way.mark : wholeMarks[unit];
  const read = parseMeasured(text, { unit, mark });
  if (!read.ok) return failed(read.error);
  const { exact, mark: readTo } = read.value;
  return ok({ kind: 'length', exact, unit: read.value.unit, mark: readTo });
}

const wholeMarks: Readonly<Record<Unit, MarkId>> = {
  ...{ mm: '1 mm', cm: '1 cm', m: '1 m', in: '1 in', ft: '1 ft', yd: '1 yd', count: '1' },
};
