import * as v from 'valibot';
import { isCivilDay, isClockTime, type CivilDay, type ClockTime } from '#core/calendar';
import { isMarkId, type MarkId, type Unit } from '#core/measure';
import { isId, type AnyId, type DeviceId, type EntryId } from './id';
import type { DrawingId, InvestigationId, LessonId, PersonId, SpecimenId } from './id';
import { isStamp, type Stamp } from './stamp';

/** The fields that entries are made of, each with the limits it is checked against at a door. */
const id = <Id extends AnyId>() =>
  v.pipe(
    v.string(),
    v.check(isId, 'not an id'),
    v.transform((text) => text as Id),
  );
export const entryId = id<EntryId>();
export const deviceId = id<DeviceId>();
export const personId = id<PersonId>();
export const investigationId = id<InvestigationId>();
export const specimenId = id<SpecimenId>();
export const drawingId = id<DrawingId>();
export const lessonId = id<LessonId>();

/** Data whose form belongs to a higher part of core, which decodes it when it is used. */
export const sheet = v.record(v.string(), v.unknown());

export const stamp = v.pipe(
  v.string(),
  v.check(isStamp, 'not a stamp'),
  v.transform((text) => text as Stamp),
);
export const day = v.pipe(
  v.string(),
  v.check(isCivilDay, 'not a day'),
  v.transform((text) => text as CivilDay),
);
export const time = v.pipe(
  v.string(),
  v.check(isClockTime, 'not a time'),
  v.transform((text) => text as ClockTime),
);

export const name = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
export const sentence = v.pipe(v.string(), v.maxLength(500));
export const prose = v.pipe(v.string(), v.maxLength(4000));
export const why = v.optional(sentence);
export const spanDays = v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(60)));

export const unit = v.picklist(['in', 'ft', 'yd', 'mm', 'cm', 'm', 'count'] satisfies Unit[]);
export const mark = v.pipe(
  v.string(),
  v.check(isMarkId, 'not a mark'),
  v.transform((text) => text as MarkId),
);
export const measured = v.object({
  text: v.pipe(v.string(), v.maxLength(200)),
  unit,
  mark,
  exact: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
});
