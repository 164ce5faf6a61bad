import { civilDay } from '#core/calendar';
import type { Entry, EntryId, HelperLength, PersonId, SecondMeasure } from '#core/journal';
import type { Measured, MarkId, Unit } from '#core/measure';
import { anId, bean, heights, read, written } from '../journal/entries';

type Where = Parameters<typeof written>[2];

/** A guess of so many centimetres. */
export const guessed = (number: number, day: string, value: number, where?: Where): Entry =>
  written(
    number,
    { kind: 'estimate-made', specimen: bean, day: civilDay(day), measured: read(value) },
    where,
  );

/** A reading of the bean in any unit. */
export const tookIn = (
  number: number,
  day: string,
  measured: Measured,
  more: { leaves?: number; where?: Where } = {},
): Entry =>
  written(
    number,
    {
      ...{ kind: 'reading-taken', specimen: bean, day: civilDay(day), measured },
      ...(more.leaves === undefined ? {} : { leaves: more.leaves }),
    },
    more.where,
  );

export const planned = (
  number: number,
  different: string,
  second: readonly SecondMeasure[] = [],
): Entry =>
  written(number, {
    kind: 'fair-test-planned',
    ...{ investigation: heights, different, same: ['water', 'soil'], second: [...second] },
  });

export const looked = (
  number: number,
  day: string,
  look: { colour?: 'green' | 'pale-green'; stands?: 'by-itself' | 'leans' },
): Entry => written(number, { kind: 'looks-noted', specimen: bean, day: civilDay(day), ...look });

export const sealed = (
  number: number,
  day: string,
  forDay: string,
  measured: Measured,
  because = 'it grew this week',
  where?: Where,
): Entry =>
  written(
    number,
    {
      kind: 'prediction-sealed',
      ...{ specimen: bean, day: civilDay(day), forDay: civilDay(forDay), measured, because },
    },
    where,
  );

export const idOf = (number: number): EntryId => anId<EntryId>(number);
export const other = anId<PersonId>(702);

export const helpers = (
  ...each: readonly (readonly [HelperLength, number, Unit?, MarkId?])[]
): ReadonlyMap<HelperLength, Measured> =>
  new Map(each.map(([name, value, unit = 'cm', mark = '1 mm']) => [name, read(value, unit, mark)]));
