import { knownOnce } from './known-once';
import { sizeOfUnit } from './journal-writer';
import { minutesOf, numberOfDay } from './plain-days';
import { middleOf, readingsOn, type RawLog, type RawReading } from './raw-log';

const cm = sizeOfUnit.cm;
const inch = sizeOfUnit.in;
const isInches = (unit: string): boolean => unit === 'in' || unit === 'ft' || unit === 'yd';

/**
 * Whether a reading is open to doubt beyond any argument, said in a few words of the trade: so far
 * above or below the days before that no window of plausible heights holds it; more rain than 100 mm
 * (4 in) in a day, rain under a dry sky, as much as the day before; a shadow of nothing, of more
 * than six sticks, or longer at midday than in the morning. Somebody said "yes, I read that" settles
 * it, until the number changes. Milder doubts are not looked for here: this is a lower bound.
 */
export const isSurelyDoubted = (log: RawLog, reading: RawReading): boolean =>
  doubtedIn(log).has(reading.id);

const doubtedIn = knownOnce(
  (log: RawLog): ReadonlySet<string> =>
    new Set(
      log.readings.filter((each) => !isSettled(each) && isDoubtful(log, each)).map(({ id }) => id),
    ),
);

const isSettled = ({ crossedOut, counted, answers }: RawReading): boolean => {
  let changedAt = '';
  crossedOut.forEach((was, index) => {
    const next = crossedOut[index + 1]?.counted ?? counted;
    const isSame = was.counted.exact === next.exact && was.counted.unit === next.unit;
    if (!isSame) changedAt = was.until;
  });
  return answers.some(({ at, answer }) => answer === 'read-so' && at > changedAt);
};

const isDoubtful = (log: RawLog, reading: RawReading): boolean => {
  if (reading.counted.unit === 'count') return false;
  if (log.quantity === 'plant-height') return isHeightDoubtful(log, reading);
  if (log.quantity === 'rain') return isRainDoubtful(log, reading);
  return log.quantity === 'shadow' && isShadowDoubtful(log, reading);
};

/** Against the four days with a number before it, all read within three days of it. */
const isHeightDoubtful = (log: RawLog, { specimen, day, counted }: RawReading): boolean => {
  const days = daysBefore(log, specimen, day).slice(-4);
  if (days.length < 4 || numberOfDay(day) - numberOfDay(days[2]!) > 3) return false;
  if (isCoarse(log, specimen, [...days, day])) return false;
  const before = days.map((each) => middleOf(lengthsOn(log, specimen, each)).exact);
  const [most, least] = [Math.max(...before), Math.min(...before)];
  if (counted.exact > 7 * most + 12 * cm) return true;
  return counted.exact < least - 2.1 * inch;
};

/** Marks of a foot and more forgive more; nobody reads a bean so. */
const isCoarse = (log: RawLog, specimen: string, days: readonly string[]): boolean =>
  days.some((day) =>
    readingsOn(log, specimen, day).some(({ counted }) => / (ft|yd|m)$/.test(counted.mark)),
  );

const lengthsOn = (log: RawLog, specimen: string, day: string) =>
  readingsOn(log, specimen, day)
    .map(({ counted }) => counted)
    .filter(({ unit }) => unit !== 'count');

const daysBefore = (log: RawLog, specimen: string, day: string): readonly string[] =>
  (daysRead(log).get(specimen) ?? []).filter((each) => each < day);

const daysRead = knownOnce((log: RawLog) => {
  const days = new Map<string, string[]>();
  for (const { specimen, day, counted } of log.readings) {
    const known = days.get(specimen) ?? [];
    if (counted.unit !== 'count' && !known.includes(day))
      days.set(specimen, [...known, day].sort());
  }
  return days;
});

const isRainDoubtful = (log: RawLog, { specimen, day, counted, spanDays, weather }: RawReading) => {
  const cap = isInches(counted.unit) ? 4 * inch : 10 * cm;
  if (counted.exact > cap * spanDays) return true;
  const yesterday = daysBefore(log, specimen, day).at(-1);
  if (!yesterday || numberOfDay(day) - numberOfDay(yesterday) !== 1) return false;
  const before = readingsOn(log, specimen, yesterday);
  const isDry = (word: string | null): boolean => word === 'sun' || word === 'wind';
  const said = before.flatMap((each) => each.weather ?? []);
  if (counted.exact === 0 || spanDays > 1) return false;
  return isDry(weather) && said.length > 0 && said.every(isDry);
};

const isShadowDoubtful = (log: RawLog, reading: RawReading): boolean => {
  const { specimen, day, counted, time } = reading;
  if (counted.exact === 0) return true;
  const stick = log.specimens.find(({ id }) => id === specimen)?.stand;
  if (stick && stick.exact > 0 && counted.exact > 6 * stick.exact) return true;
  if (time === null || minutesOf(time) < 690 || minutesOf(time) > 780) return false;
  return readingsOn(log, specimen, day).some(
    (each) =>
      each.time !== null && minutesOf(each.time) <= 555 && each.counted.exact < counted.exact,
  );
};
