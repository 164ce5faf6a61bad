import { marks, type LengthUnit, type MarkId } from '#core/measure';
import units from '../../reference/units.json';

/** One row of tests/reference/units.json, whose values were worked out in rational arithmetic. */
export interface UnitRow {
  readonly value: string;
  readonly from: LengthUnit;
  readonly to: LengthUnit;
  readonly exact_fraction: string;
  readonly double: number;
}

export const unitRows = [
  ...units.in_to_mm,
  ...units.in_to_cm,
  ...units.cm_to_in,
  ...units.mm_to_in,
  ...units.ft_yd,
  ...units.rain_in_to_mm,
  ...units.rain_mm_to_in,
] as readonly UnitRow[];

/** `4 1/2` or `2.54` as the double nearest to it; the fractions used are binary, so exact. */
export const asDouble = (value: string): number =>
  value
    .split(' ')
    .map((part) => {
      const [over = '', under = '1'] = part.split('/');
      return Number(over) / Number(under);
    })
    .reduce((sum, part) => sum + part, 0);

/** A mark as the reference files name it: `1/1 in`, `1/10 in`, `1/2 cm`. */
export const markNamed = (name: string): MarkId => {
  const ours: Readonly<Record<string, MarkId>> = {
    '1/1 in': '1 in',
    '1/10 in': '0.1 in',
    '1/100 in': '0.01 in',
    '1/2 cm': '0.5 cm',
  };
  const id = ours[name] ?? marks.find((mark) => mark.id === name)?.id;
  if (!id) throw new Error(`No mark is called ${name}`);
  return id;
};
