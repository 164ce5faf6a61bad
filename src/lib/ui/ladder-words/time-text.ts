import { minutesIntoDay, type ClockTime } from '#core/calendar';

/** A time as a child reads it off a clock face: 9 o’clock, half past 9, 9:20. */
export const timeText = (time: ClockTime): string => {
  const minutes = minutesIntoDay(time);
  const hour = Math.floor(minutes / 60) % 12 || 12;
  const past = minutes % 60;
  if (past === 0) return `${hour} o’clock`;
  return past === 30 ? `half past ${hour}` : `${hour}:${`${past}`.padStart(2, '0')}`;
};
