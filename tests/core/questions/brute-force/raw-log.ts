import type { Entry } from '#core/journal';
import { knownOnce } from './known-once';
import { minutesOf, numberOfDay, weekdayOfNumber } from './plain-days';

/**
 * What a family wrote, out of the entries alone, by plain loops. Nothing here comes from the
 * program's own logs, tables or graphs: only what an entry is.
 */
export interface RawMeasure {
  readonly exact: number;
  readonly unit: string;
  readonly mark: string;
}

export interface RawNumbers {
  readonly day: string;
  readonly time: string | null;
  readonly reads: readonly RawMeasure[];
  /** The middle one of the reads by size, the lower of two in the middle. */
  readonly counted: RawMeasure;
  readonly spanDays: number;
}

export interface RawReading extends RawNumbers {
  readonly id: string;
  readonly at: string;
  readonly author: string | null;
  readonly specimen: string;
  readonly weather: string | null;
  readonly leaves: number | null;
  /** What stood before each correction, with when it was crossed out. */
  readonly crossedOut: readonly (RawNumbers & { readonly until: string })[];
  readonly otherSide: RawMeasure | null;
  /** Answers to doubts, in order of time. */
  readonly answers: readonly { readonly at: string; readonly answer: string }[];
}

export interface RawMark {
  readonly specimen: string;
  readonly day: string;
  readonly time: string | null;
  readonly state: string;
  readonly why: string | null;
}

export interface RawSpecimen {
  readonly id: string;
  readonly name: string;
  readonly startedOn: string;
  readonly endedOn: string | null;
  readonly stand: RawMeasure | null;
}

export interface RawLog {
  readonly quantity: string;
  readonly kinds: readonly string[];
  readonly weekdays: readonly number[];
  readonly where: string;
  readonly specimens: readonly RawSpecimen[];
  readonly readings: readonly RawReading[];
  /** The last mark of each time of a day, in the order they were written. */
  readonly marks: readonly RawMark[];
  readonly words: readonly { readonly specimen: string; readonly day: string; word: string }[];
  readonly looks: readonly { readonly specimen: string; day: string; parts: readonly string[] }[];
  /** Every line that stands on the page, also with a line through it. */
  readonly lines: readonly { readonly specimen: string; readonly day: string }[];
  readonly plans: readonly RawPlan[];
  readonly differences: readonly { readonly day: string; readonly what: string }[];
  readonly spans: readonly { readonly name: string; readonly measured: RawMeasure }[];
}

export interface RawPlan {
  readonly at: string;
  readonly different: string;
  readonly same: readonly string[];
  readonly second: readonly string[];
}

export const rawLogOf = (entries: readonly Entry[]): RawLog => {
  const standing = standingOf(entries);
  let begun: Extract<Entry, { kind: 'investigation-begun' }> | undefined;
  const specimens: RawSpecimen[] = [];
  const ends = new Map<string, string>();
  const readings: RawReading[] = [];
  const marks: RawMark[] = [];
  const words: { specimen: string; day: string; word: string }[] = [];
  const looks: { specimen: string; day: string; parts: string[] }[] = [];
  const plans: RawPlan[] = [];
  const differences: { day: string; what: string }[] = [];
  const people = new Map<string, { name: string; role: string }>();
  const spanOf = new Map<string, RawMeasure>();
  for (const entry of standing) {
    if (entry.kind === 'specimen-ended') ends.set(entry.specimen, entry.day);
  }
  for (const entry of standing) {
    switch (entry.kind) {
      case 'investigation-begun':
        begun = entry;
        break;
      case 'specimen-added':
        specimens.push({
          ...{ id: entry.specimen, name: entry.name, startedOn: entry.startedOn },
          ...{ endedOn: ends.get(entry.specimen) ?? null, stand: entry.standHeight ?? null },
        });
        break;
      case 'reading-taken':
        readings.push(readingOf(entry, standing));
        break;
      case 'day-marked': {
        const time = entry.time ?? null;
        const same = marks.findIndex(
          (each) =>
            each.specimen === entry.specimen && each.day === entry.day && each.time === time,
        );
        if (same >= 0) marks.splice(same, 1);
        const { specimen, day, state, why = null } = entry;
        marks.push({ specimen, day, time, state, why });
        break;
      }
      case 'kind-noted':
        words.push(entry);
        break;
      case 'looks-noted': {
        const parts = (['colour', 'stands'] as const).filter((part) => entry[part] !== undefined);
        looks.push({ specimen: entry.specimen, day: entry.day, parts });
        break;
      }
      case 'fair-test-planned':
        plans.push(entry);
        break;
      case 'difference-noticed':
        differences.push(entry);
        break;
      case 'person-added':
        people.set(entry.person, entry);
        break;
      case 'helper-length-measured':
        if (entry.helper === 'hand-span') spanOf.set(entry.person, entry.measured);
    }
  }
  if (!begun) throw new Error('Nothing was begun');
  const { quantity, kinds, weekdays, where } = begun;
  const spans = [...spanOf].flatMap(([person, measured]) => {
    const found = people.get(person);
    return found?.role === 'child' ? [{ name: found.name, measured }] : [];
  });
  const lines = entries.flatMap((entry): RawLog['lines'] => {
    if (entry.kind === 'reading-taken') return [readingOf(entry, standing)];
    return entry.kind === 'day-marked' || entry.kind === 'kind-noted' ? [entry] : [];
  });
  return {
    ...{ quantity, kinds, weekdays, where, specimens, readings, marks, words, looks, lines },
    ...{ plans, differences, spans },
  };
};

/** What was not taken back; a taking back that was itself taken back takes nothing back. */
const standingOf = (entries: readonly Entry[]): readonly Entry[] => {
  const back = new Set<string>();
  for (const entry of [...entries].reverse()) {
    if (entry.kind === 'entry-taken-back' && !back.has(entry.id)) back.add(entry.entry);
  }
  return entries.filter(({ id }) => !back.has(id));
};

type Taken = Extract<Entry, { kind: 'reading-taken' }>;

const readingOf = (entry: Taken, standing: readonly Entry[]): RawReading => {
  const crossedOut: (RawNumbers & { until: string })[] = [];
  let now = numbersOf(entry);
  let otherSide: RawMeasure | null = null;
  const answers: { at: string; answer: string }[] = [];
  for (const later of standing) {
    if (!('reading' in later) || later.reading !== entry.id) continue;
    if (later.kind === 'reading-corrected') {
      crossedOut.push({ ...now, until: later.at });
      now = numbersOf(later.to);
    }
    if (later.kind === 'other-side-read') otherSide = later.measured;
    if (later.kind === 'doubt-answered') answers.push({ at: later.at, answer: later.answer });
  }
  return {
    ...now,
    ...{ id: entry.id, at: entry.at, author: entry.author, specimen: entry.specimen },
    ...{ weather: entry.weather ?? null, leaves: entry.leaves ?? null },
    ...{ crossedOut, otherSide, answers },
  };
};

const numbersOf = (body: Pick<Taken, 'day' | 'time' | 'measured' | 'again' | 'spanDays'>) => {
  const reads: readonly RawMeasure[] = [body.measured, ...(body.again ?? [])];
  const { day, time = null, spanDays = 1 } = body;
  return { day, time, reads, counted: middleOf(reads), spanDays };
};

/** The middle one by size; the lower one of two. Equal ones in the order they were read. */
export const middleOf = <Read extends { readonly exact: number }>(reads: readonly Read[]): Read => {
  const left = [...reads];
  const wanted = Math.floor((left.length - 1) / 2);
  for (let taken = 0; taken < wanted; taken += 1) {
    let least = 0;
    for (let index = 1; index < left.length; index += 1) {
      if (left[index]!.exact < left[least]!.exact) least = index;
    }
    left.splice(least, 1);
  }
  return left.reduce((least, each) => (each.exact < least.exact ? each : least));
};

/** By the time of day, those without a time last; else as they were written. */
export const readingsOn = (log: RawLog, specimen: string, day: string): readonly RawReading[] =>
  readingsByDay(log).get(`${specimen} ${day}`) ?? [];

const readingsByDay = knownOnce(({ readings }: RawLog) => {
  const byDay = new Map<string, RawReading[]>();
  for (const each of readings) {
    const key = `${each.specimen} ${each.day}`;
    byDay.set(key, [...(byDay.get(key) ?? []), each]);
  }
  const minutes = (each: RawReading): number => (each.time ? minutesOf(each.time) : 9999);
  for (const ofDay of byDay.values()) {
    ofDay.sort((one, other) => minutes(one) - minutes(other));
  }
  return byDay;
});

export const isPlanned = ({ weekdays }: RawLog, day: string): boolean =>
  weekdays.includes(weekdayOfNumber(numberOfDay(day)));

/** What was written for a day without a number: the last mark, or nothing. */
export const markOn = (log: RawLog, specimen: string, day: string): RawMark | null =>
  log.marks.filter((each) => each.specimen === specimen && each.day === day).at(-1) ?? null;

/**
 * The last day a log is looked at: its last line, or today while that is no more than two weeks
 * later. Beyond, nobody kept it, and a day without a number is no blank.
 */
export const lastDayOf = (log: RawLog, specimen: string, today: string): string => {
  const lines = log.lines.filter((each) => each.specimen === specimen);
  const found = log.specimens.find(({ id }) => id === specimen);
  const last = lines.reduce(
    (latest, { day }) => (day > latest ? day : latest),
    found?.startedOn ?? '',
  );
  if (found?.endedOn != null) return found.endedOn > last ? found.endedOn : last;
  return today > last && numberOfDay(today) - numberOfDay(last) <= 14 ? today : last;
};
