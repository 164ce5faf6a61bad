import { civilDay, daysBetween, type CivilDay } from '#core/calendar';

/** The first seed of a day: a lesson begins with another task each day, and the same on reloading. */
export const firstSeedOf = (day: CivilDay): number => daysBetween(firstDay, day) * seedsOfADay;

const firstDay = civilDay('2026-01-01');
/** Far enough apart that one day’s tasks do not begin the next day’s. */
const seedsOfADay = 1000;
