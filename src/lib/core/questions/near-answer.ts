import type { CivilDay } from '#core/calendar';
import { markById } from '#core/measure';
import type { AskedQuestion, Told } from './question';
import type { SlipId } from './slip-id';
import { numberSaid, sameTold } from './told';

/**
 * Whether a given answer says the answer, in whatever form it was given: one day as a list of one,
 * a stretch as its two days, an order as days one after the other, a number inside a share with
 * some left over. Not part of the public door.
 */
export const isTheAnswer = (answer: Told, given: Told): boolean => {
  if (sameTold(answer, given)) return true;
  if (answer.kind === 'between') return isWithin(given, answer);
  if (answer.kind === 'order') {
    return given.kind === 'days' && sameTold(answer, orderOf(given.days));
  }
  if (given.kind === 'interval' && answer.kind === 'interval') {
    return hasSameDays(answer, given) && answer.gapDays === given.gapDays;
  }
  return isOfDays(answer) && isOfDays(given) && hasSameDays(answer, given);
};

/**
 * What an answer that is nearly the answer shows: the number without its unit or in another one,
 * finer than the ruler shows, some of the days, or more than were asked for. Null for any other.
 * Not part of the public door.
 */
export const nearAnswer = (
  { answer, level }: Pick<AskedQuestion, 'answer' | 'level'>,
  given: Told,
): SlipId | null => {
  if (level === 'beyond' || level === 'behind') return isTooFine(answer, given) ? 'decimals' : null;
  const number = numberSaid(given);
  if (number !== null && isNumberOf(answer, number)) {
    return given.kind === 'count' ? 'forgot-unit' : 'other-unit';
  }
  if (!isOfDays(answer) || !isOfDays(given)) return null;
  const [asked, named] = [daysOf(answer), daysOf(given)];
  if (answer.kind === 'interval' && given.kind === 'interval' && hasSameDays(answer, given)) {
    return given.gapDays === answer.gapDays + 1 ? 'counted-ends' : null;
  }
  if (asked.every((day) => named.includes(day))) return 'more-than-asked';
  if (!named.every((day) => asked.includes(day)) || named.length === 0) return null;
  return asked.length === 2 ? 'one-day-only' : 'some-left-out';
};

type Span = Extract<Told, { kind: 'between' }>;

const isWithin = (given: Told, { low, high }: Span): boolean => {
  if (given.kind !== 'length' || low.kind !== 'length' || high.kind !== 'length') {
    const [at, from, to] = [given, low, high].map(numberSaid);
    if (given.kind !== low.kind || at == null || from == null || to == null) return false;
    return from <= at && at <= to;
  }
  return low.exact <= given.exact && given.exact <= high.exact;
};

const isNumberOf = (answer: Told, number: number): boolean => {
  if (answer.kind !== 'between') return numberSaid(answer) === number;
  const [low, high] = [answer.low, answer.high].map(numberSaid);
  return low != null && high != null && low <= number && number <= high;
};

const isTooFine = (answer: Told, given: Told): boolean =>
  answer.kind === 'between' &&
  answer.low.kind === 'length' &&
  given.kind === 'length' &&
  given.unit === answer.low.unit &&
  given.exact % markById(answer.low.mark).exact !== 0;

type OfDays = Extract<Told, { kind: 'day' | 'days' | 'interval' }>;

const isOfDays = (told: Told): told is OfDays =>
  told.kind === 'day' || told.kind === 'days' || told.kind === 'interval';

const daysOf = (told: OfDays): readonly CivilDay[] => {
  if (told.kind === 'day') return [told.day];
  return told.kind === 'days' ? told.days : [told.from, told.to];
};

const hasSameDays = (one: OfDays, other: OfDays): boolean => {
  const [all, others] = [new Set(daysOf(one)), new Set(daysOf(other))];
  return all.size === others.size && [...all].every((day) => others.has(day));
};

const orderOf = (days: readonly CivilDay[]): Told => ({
  kind: 'order',
  things: days.map((day) => ({ kind: 'day', day })),
});
