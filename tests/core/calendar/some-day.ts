import fc from 'fast-check';
import { addDays, civilDay, daysBetween } from '#core/calendar';

const first = civilDay('1900-01-01');

/** Any civil day, for properties. */
export const someDay = fc
  .integer({ min: 0, max: daysBetween(first, civilDay('2199-12-31')) })
  .map((days) => addDays(first, days));
