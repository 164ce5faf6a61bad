import type { MarkId } from '#core/measure';
import { amiss, numberOn, plotOf, systemOf, type Answerer } from './answers-read';
import { sizeOfMark, sizeOfUnit } from './journal-writer';
import { dayOfNumber, minutesOf, numberOfDay, timeOf, weekdayOfNumber } from './plain-days';
import type { RawAsking } from './raw-asking';
import { isSurelyDoubted } from './raw-doubts';
import { isPlanned, markOn, middleOf, readingsOn, type RawLog, type RawMeasure } from './raw-log';
import { amountOn, countedOf, kindsShown } from './raw-tables';
import * as say from './reckoned';

const grows = (log: RawLog): boolean =>
  log.quantity === 'plant-height' || log.quantity === 'length';

/** All days with a length until a day, with the middle one of each. */
const lengthsUntil = (log: RawLog, specimen: string, until: string) => {
  const days = [
    ...new Set(log.readings.filter((each) => each.specimen === specimen).map(({ day }) => day)),
  ];
  return days
    .filter((day) => day <= until)
    .sort()
    .flatMap((day) => {
      const reads = readingsOn(log, specimen, day)
        .map(({ counted }) => counted)
        .filter(({ unit }) => unit !== 'count');
      return reads.length > 0 ? [{ day, amount: middleOf(reads) }] : [];
    });
};

/**
 * How tall it may be on a day to come: the last number, and for each day since up to twice the
 * middle one of the last three growths per day. With what forbids to ask.
 */
const bandOf = (asking: RawAsking, specimen: string, day: string) => {
  const { log, today } = asking;
  const numbers = lengthsUntil(log, specimen, today);
  const last = numbers.at(-1);
  if (!last) return null;
  const rates = numbers.slice(1).map((to, index) => {
    const from = numbers[index]!;
    const days = numberOfDay(to.day) - numberOfDay(from.day);
    return (to.amount.exact - from.amount.exact) / days;
  });
  const late = rates.slice(-3).sort((one, other) => one - other);
  const gap = numberOfDay(day) - numberOfDay(last.day);
  const ahead = numberOfDay(day) - numberOfDay(today);
  const most = last.amount.exact + Math.max(0, Math.round(2 * gap * (late[1] ?? 0)));
  const mark = sizeOfMark(last.amount.mark as MarkId);
  const span = numberOfDay(last.day) - numberOfDay(numbers[0]!.day);
  const used = numbers.slice(-4);
  const isDoubted = used.some((each) =>
    readingsOn(log, specimen, each.day).some((reading) => isSurelyDoubted(log, reading)),
  );
  const planned = [1, 2, 3]
    .map((more) => numberOfDay(today) + more)
    .filter((each) => each - numberOfDay(last.day) <= 3)
    .find((each) => log.weekdays.includes(weekdayOfNumber(each)));
  const isOver = log.specimens.find(({ id }) => id === specimen)?.endedOn != null;
  const isLost = log.marks.some(
    (each) =>
      each.specimen === specimen &&
      each.state === 'lost' &&
      each.day >= last.day &&
      each.day <= today,
  );
  const wrong = amiss([
    ...(grows(log) ? [] : ['nothing that grows']),
    ...(numbers.length >= 5 && span >= 7 ? [] : ['too few days']),
    ...(ahead >= 1 && ahead <= 3 && gap <= 3 ? [] : ['too far ahead, or not']),
    ...(planned === undefined || planned === numberOfDay(day) ? [] : ['not the next planned day']),
    ...(isOver || isLost ? ['it has ended'] : []),
    ...(isDoubted ? ['one of the last numbers is doubted'] : []),
    ...(used.every(({ amount }) => amount.unit === last.amount.unit) ? [] : ['units mixed']),
  ]);
  return { last: last.amount, low: last.amount.exact, high: Math.ceil(most / mark) * mark, wrong };
};

const named = (asking: RawAsking, question: Parameters<Answerer>[1]): string => {
  const name = say.wordIn(question, 'specimen');
  return asking.log.specimens.find((each) => each.name === name)?.id ?? '';
};

const unknown = { wrong: ['no log'], sums: [] };

const Y1: Answerer = (asking, question) => {
  const band = bandOf(asking, named(asking, question), say.dayIn(question, 'day'));
  if (!band) return unknown;
  const { low, high, last } = band;
  const text = [low, high].map((each) => say.lengthSaid(each, last.unit)).join(' to ');
  const numbers = [low, high].map((exact) => say.inUnitsOf({ ...last, exact }));
  return say.findings(
    [say.read(...numbers)],
    [high > low, 'no range'],
    say.isAnswer(question, text),
    ...band.wrong,
  );
};

/** A day that was missed, or planned and left blank; no state that says something else. */
export const isMissed = (log: RawLog, specimen: string, day: string): boolean => {
  if (readingsOn(log, specimen, day).length > 0) return false;
  const state = markOn(log, specimen, day)?.state;
  return state === 'missed' || (state === undefined && isPlanned(log, day));
};

const Y2: Answerer = (asking, question) => {
  const { log } = asking;
  const specimen = named(asking, question);
  const day = say.dayIn(question, 'day');
  const beside = (steps: readonly number[]): string | undefined =>
    steps
      .map((step) => dayOfNumber(numberOfDay(day) + step))
      .find((each) => readingsOn(log, specimen, each).length > 0);
  const [before, after] = [beside([-1, -2, -3]), beside([1, 2, 3])];
  if (!before || !after) return { wrong: ['no neighbours'], sums: [] };
  const [was, is] = [before, after].map((each) => amountOn(log, specimen, each)) as RawMeasure[];
  if (!was || !is) return unknown;
  const inOrder = was.exact < is.exact ? [was, is] : [is, was];
  const text = inOrder.map(({ exact }) => say.lengthSaid(exact, was.unit)).join(' to ');
  const gap = numberOfDay(after) - numberOfDay(before);
  const anywhere = { ...asking, from: '0', to: '9', told: null };
  const doubts = [before, after].flatMap((each) =>
    numberOn(anywhere, specimen, each).wrong.filter((text) => text.includes('doubted')),
  );
  return say.findings(
    [say.read(...inOrder.map(say.inUnitsOf))],
    [grows(log) && isMissed(log, specimen, day), 'not a missed day'],
    [gap === 2 || gap === 3, `${gap} days between the neighbours`],
    [was.unit === is.unit, 'units mixed'],
    [was.exact !== is.exact, 'no range'],
    say.isAnswer(question, text),
    ...amiss(doubts),
  );
};

const Y3: Answerer = (asking, question) => {
  const { log } = asking;
  const specimen = named(asking, question);
  const band = bandOf(asking, specimen, say.dayIn(question, 'day'));
  if (!band) return unknown;
  const length = say.lengthIn(question, 'length');
  const isPot = say.wordIn(question, 'thing') === 'pot';
  const known = isPot
    ? log.specimens.find(({ id }) => id === specimen)?.stand
    : log.spans.find(({ name }) => name === say.wordIn(question, 'whose'))?.measured;
  const idea = length.exact > band.high ? 'probably-not-yet' : 'might-be-as-tall';
  return say.findings(
    [say.read(say.inUnitsOf(length))],
    [known?.exact === length.exact && known.unit === length.unit, 'no such length is known'],
    [length.exact > band.low, 'taller already'],
    [length.unit === band.last.unit, 'units mixed'],
    say.isAnswer(question, `idea ${idea}`),
    ...band.wrong,
  );
};

const weatherSources: ReadonlySet<string> = new Set(['weather-days', 'wet-days']);
const skies = ['sun', 'cloud', 'rain', 'snow', 'wind', 'fog'];

export const isWeather = ({ log, source }: RawAsking): boolean =>
  weatherSources.has(source) ||
  (source === 'kind-days' && log.kinds.some((kind) => skies.includes(kind))) ||
  (log.quantity === 'rain' && source !== 'state-days');

const Y4: Answerer = (asking, question) => {
  const kinds = kindsShown(asking).filter(({ things }) => things.size > 0);
  const days = new Set(countedOf(asking).map(([, day]) => day));
  return say.findings(
    [],
    [isWeather(asking), 'no weather'],
    [days.size >= 10, `only ${days.size} days`],
    [kinds.length >= 2, 'one kind only'],
    say.isAnswer(question, 'idea seasons-and-chance'),
  );
};

const Y5: Answerer = (asking, question) => {
  const more = say.lengthIn(question, 'more');
  const numbers = lengthsUntil(asking.log, named(asking, question), asking.today);
  const last = numbers.at(-1)?.amount;
  if (!last) return unknown;
  const isCm = systemOf(last.unit) === 'cm';
  const size = isCm ? 30 * sizeOfUnit.cm : 12 * sizeOfUnit.in;
  return say.findings(
    [say.read(say.inUnitsOf(more))],
    [
      asking.log.quantity === 'plant-height' && asking.stage === 'grade-3',
      'no plant, or too early',
    ],
    [numbers.length >= 5, 'too few days'],
    [last.exact <= size, 'tall already'],
    [more.exact === size && systemOf(more.unit) === systemOf(last.unit), 'as much again'],
    say.isAnswer(question, 'idea plants-slow-down'),
  );
};

const Y6: Answerer = (asking, question) =>
  say.findings(
    [],
    [asking.log.quantity === 'plant-height', 'no plant'],
    say.isAnswer(question, 'idea similar-not-same'),
  );

const Y7: Answerer = (asking, question) => {
  const plot = plotOf(asking);
  const ends = [plot.exacts[0] ?? 0, plot.exacts.at(-1) ?? 0];
  const text = ends.map((each) => say.lengthSaid(each, asking.told?.unit ?? '')).join(' to ');
  return say.findings(
    [say.read(...ends.map(plot.inUnits))],
    [asking.source === 'reads-of-one' && plot.exacts.length >= 5, 'too few reads of one thing'],
    [plot.isOneUnit && plot.doubted.length === 0, 'doubted, or units mixed'],
    [ends[0] !== ends[1], 'no range'],
    say.isAnswer(question, text),
  );
};

const Y8: Answerer = (asking, question) => {
  const counts = kindsShown(asking).map(({ label, things }) => ({ label, count: things.size }));
  const inOrder = counts.sort((one, other) => other.count - one.count);
  const [first, second] = inOrder;
  return say.findings(
    [],
    [isWeather(asking), 'no weather'],
    [(first?.count ?? 0) - (second?.count ?? 0) >= 2, 'no lead of two'],
    [first?.label !== 'other', 'no kind of day'],
    say.isAnswer(question, first?.label ?? ''),
  );
};

/** Away from noon the way is known: longer in the afternoon, shorter in the morning. */
const Y9: Answerer = (asking, question) => {
  const [day, time] = [say.dayIn(question, 'day'), say.timeIn(question, 'time')];
  const timed = readingsOn(asking.log, asking.specimens[0] ?? '', day).filter(
    (each) => each.time !== null,
  );
  const [before, last] = timed.slice(-2);
  if (!before || !last) return { wrong: ['fewer than two times'], sums: [] };
  const isLonger = last.counted.exact > before.counted.exact;
  const asked = minutesOf(time);
  return say.findings(
    [],
    [before.time !== last.time, 'one time only'],
    [timeOf(minutesOf(last.time ?? '') + 60) === time, 'not an hour later'],
    [before.counted.unit === last.counted.unit, 'units mixed'],
    [isLonger ? asked >= 13 * 60 : asked <= 12 * 60, 'near noon nobody knows'],
    [last.counted.exact !== before.counted.exact, 'as long as before'],
    [!timed.some((each) => isSurelyDoubted(asking.log, each)), 'doubted'],
    say.isAnswer(question, `idea ${isLonger ? 'longer' : 'shorter'}-and-further-round`),
  );
};

const Y10: Answerer = (asking, question) => {
  const { log, today } = asking;
  const specimen = named(asking, question);
  const counted = log.readings
    .filter((each) => each.specimen === specimen && each.leaves !== null && each.day <= today)
    .sort((one, other) => numberOfDay(one.day) - numberOfDay(other.day));
  const days: number[] = [];
  let most = -1;
  for (const { day } of counted) {
    const onDay = counted.filter((each) => each.day === day).map(({ leaves }) => leaves ?? 0);
    if (Math.max(...onDay) <= most) continue;
    most = Math.max(...onDay);
    days.push(numberOfDay(day));
  }
  const waits = days.slice(1).map((day, index) => day - days[index]!);
  const last = days.at(-1) ?? 0;
  const low = last + Math.max(1, Math.min(...waits) - 1);
  const high = last + Math.max(...waits) + 1;
  return say.findings(
    [],
    [asking.stage === 'grade-3' && grows(log), 'too early'],
    [waits.length >= 2, `${waits.length} times that new leaves came`],
    [low > numberOfDay(today), 'the span has begun'],
    say.isAnswer(question, `${dayOfNumber(low)} to ${dayOfNumber(high)}`),
  );
};

export const answersBeyond = { Y1, Y2, Y3, Y4, Y5, Y6, Y7, Y8, Y9, Y10 } as const;
