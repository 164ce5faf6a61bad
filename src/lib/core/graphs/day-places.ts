import type { Drawing } from './drawing';
import { middleOf, spreadOf } from './spread';

/** The names along the bottom of a line graph, as far as they can be told. */
export interface DayPlaces {
  /** Names that stand for a place of the table, from left to right. */
  readonly named: readonly NamedPlace[];
  /** As far apart on the paper as on the calendar, within a fifth. */
  readonly isFair: boolean;
  /** The names that stand too near to the one before, or too far from it, as they are drawn. */
  readonly uneven: readonly number[];
  /** The usual room of one day, in squares. */
  readonly space: number;
  /** Where a place of the table lies; null where days were left out, so that nobody can say. */
  readonly atOf: (place: number) => number | null;
}

export interface NamedPlace {
  readonly at: number;
  /** Its place among the names of the drawing. */
  readonly index: number;
  /** Its place in the table. */
  readonly place: number;
}

/**
 * Reads the names of days or hours that a child wrote along the bottom. A name stands for the
 * place whose words it has ("Mon", "16" and "Mon 16" for Mon 16), the next such place to the
 * right; where hardly any name does, for the place with its number, or for the places in order.
 * Null where nothing is named. Not part of the public door.
 */
export const readDays = (
  places: Drawing['places'],
  labels: readonly string[],
  measuredPlaces: readonly number[],
): DayPlaces | null => {
  const written = places
    .map(({ at, text }, index) => ({ at, index, words: wordsOf(text) }))
    .filter(({ words }) => words.length > 0)
    .sort((one, other) => one.at - other.at);
  if (written.length === 0) return null;
  const known = byWords(written, labels);
  const named =
    known.length * 2 > written.length ? known : byNumber(written, labels, measuredPlaces);
  if (named.length === 0) return null;
  const pairs = named.slice(1).map((to, index) => {
    const from = named[index] as NamedPlace;
    const [apart, days] = [to.at - from.at, to.place - from.place];
    return { to, days, rate: days > 0 ? apart / days : -1 };
  });
  const isRising = pairs.every(({ days }) => days > 0);
  const rates = pairs.map(({ rate }) => rate).filter((rate) => rate > 0);
  const space = rates.length === 0 ? 1 : middleOf(rates);
  const isFair = isRising && spreadOf(rates) <= wobble + 1e-9;
  const off = pairs.filter(({ rate }) => Math.abs(rate - space) > (wobble / 2) * space);
  return {
    ...{ named, isFair, space },
    uneven: off.map(({ to }) => to.index),
    atOf: (place) =>
      named.find((each) => each.place === place)?.at ??
      (isFair ? betweenNames(named, place, space) : null),
  };
};

/** Common practice: distances that differ by up to a fifth are a wobble of the hand. */
const wobble = 0.2;

interface WrittenName {
  readonly at: number;
  readonly index: number;
  readonly words: readonly string[];
}

const byWords = (
  written: readonly WrittenName[],
  labels: readonly string[],
): readonly NamedPlace[] => {
  const labelWords = labels.map(wordsOf);
  const named: NamedPlace[] = [];
  for (const { at, index, words } of written) {
    const has = (label: readonly string[]): boolean =>
      words.every((word) => label.includes(word)) || label.every((word) => words.includes(word));
    const fitting = labelWords.flatMap((label, place) => (has(label) ? [place] : []));
    const last = named.at(-1)?.place ?? -1;
    const place = fitting.find((each) => each > last) ?? fitting[0];
    const isTaken = named.some((each) => each.place === place);
    if (place !== undefined && !isTaken) named.push({ at, index, place });
  }
  return named;
};

/** Day 1, day 2; else one name for each place, or for each place with a reading. */
const byNumber = (
  written: readonly WrittenName[],
  labels: readonly string[],
  measuredPlaces: readonly number[],
): readonly NamedPlace[] => {
  const numbers = written.map(({ words }) => Number(words.find((word) => /^\d+$/.test(word))));
  const areDays = numbers.every((number) => number >= 1 && number <= labels.length);
  const inOrder =
    written.length === labels.length
      ? labels.map((_, place) => place)
      : written.length === measuredPlaces.length
        ? measuredPlaces
        : [];
  return written.flatMap(({ at, index }, order) => {
    const place = areDays ? (numbers[order] as number) - 1 : inOrder[order];
    return place === undefined ? [] : [{ at, index, place }];
  });
};

const betweenNames = (named: readonly NamedPlace[], place: number, space: number): number => {
  const above = named.findIndex((each) => each.place > place);
  const [low, high] = [named[above - 1], named[above]];
  if (low && high) {
    return low.at + ((place - low.place) / (high.place - low.place)) * (high.at - low.at);
  }
  const end = above === 0 ? named[0] : named.at(-1);
  return (end?.at ?? 0) + (place - (end?.place ?? 0)) * space;
};

const wordsOf = (text: string): readonly string[] =>
  text.toLowerCase().match(/[\p{L}\p{N}:]+/gu) ?? [];
