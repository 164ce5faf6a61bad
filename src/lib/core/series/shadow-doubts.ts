import { daysBetween, minutesIntoDay, type ClockTime } from '#core/calendar';
import { markById, type Measured } from '#core/measure';
import type { PastTheCap, ShadowDoubt } from './doubt';
import type { DoubtCandidate } from './doubt-candidate';
import { daysBefore, numbersOn, type NumberHistory } from './number-history';
import type { Series, SeriesPoint } from './series';

/** The doubts about the length of a shadow. Not part of the public door. */
export const shadowDoubts = (
  candidate: DoubtCandidate,
  { standHeight }: Series['specimen'],
  history: NumberHistory,
): readonly (ShadowDoubt | PastTheCap)[] =>
  candidate.measured.exact === 0
    ? [{ kind: 'shadow-zero' }]
    : [
        ...pastTheStick(candidate.measured, standHeight),
        ...middayLonger(candidate, history),
        ...notAsBefore(candidate, history),
      ];

/** Six times the stick: the sun would stand below ten degrees. */
function pastTheStick({ exact }: Measured, stick: Measured | undefined): readonly PastTheCap[] {
  if (!stick || stick.exact === 0) return [];
  const capExact = 6 * stick.exact;
  return exact > capExact ? [{ kind: 'past-the-cap', capExact }] : [];
}

/** A shadow is shorter at midday than in the morning: is the time right? */
function middayLonger(
  { day, time, measured, reading }: DoubtCandidate,
  history: NumberHistory,
): readonly ShadowDoubt[] {
  if (time === undefined || !isBetween(time, midday)) return [];
  const mornings = numbersOn(history, day).filter(
    (point) => point.reading !== reading && point.time !== undefined && point.time <= morningEnds,
  );
  const morning = mornings.filter((point) => point.exact < measured.exact).at(-1);
  return morning ? [{ kind: 'midday-longer', morning }] : [];
}

/** Apart enough for a place at either edge of its time zone, by summer time or not. */
const morningEnds = '09:15';
const midday = { from: '11:30', to: '13:00' } as const;

/** At the same time some days later a shadow is nearly as long: same stick, same place? */
function notAsBefore(
  { day, time, measured }: DoubtCandidate,
  history: NumberHistory,
): readonly ShadowDoubt[] {
  const dayBefore = daysBefore(history, day).at(-1);
  if (time === undefined || !dayBefore) return [];
  if (daysBetween(dayBefore.day, day) > nextDaysMost) return [];
  const before = dayBefore.points.find((point) => isSameTime(point, time));
  if (!before || before.exact === 0) return [];
  const differs = Math.abs(measured.exact - before.exact);
  const shareOff = differs / before.exact;
  const leastExact = 2 * Math.max(markById(measured.mark).exact, markById(before.mark).exact);
  return shareOff > shareOffAsked && differs >= leastExact
    ? [{ kind: 'shadow-not-as-before', before, shareOff }]
    : [];
}

/** From Friday to Monday a shadow changes by less than this, if it is read to five minutes. */
const nextDaysMost = 3;
const sameTimeMinutes = 5;
const shareOffAsked = 0.15;

const isSameTime = (point: SeriesPoint, time: ClockTime): boolean =>
  point.time !== undefined &&
  Math.abs(minutesIntoDay(point.time) - minutesIntoDay(time)) <= sameTimeMinutes;

const isBetween = (time: ClockTime, range: { readonly from: string; readonly to: string }) =>
  time >= range.from && time <= range.to;
