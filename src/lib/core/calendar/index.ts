export {
  civilDay,
  isCivilDay,
  parseCivilDay,
  type CivilDay,
  type CivilDayError,
} from './civil-day';
export { civilDayAt } from './civil-day-at';
export {
  isClockTime,
  minutesIntoDay,
  parseClockTime,
  type ClockTime,
  type ClockTimeError,
} from './clock-time';
export { clockTimeAt } from './clock-time-at';
export { likelyDayOrder } from './day-order';
export { readDayText, type DayOrder, type DayTextError } from './day-text';
export { addDays, compareDays, daysBetween, daysFrom } from './days-between';
export { formatDay } from './format-day';
export { monthOf, yearOf } from './month';
export { mondayOf, weekdayName, weekdayOf, type Weekday } from './weekday';
