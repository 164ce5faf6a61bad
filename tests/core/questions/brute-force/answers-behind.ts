import { isMissed, isWeather } from './answers-beyond';
import type { Answerer } from './answers-read';
import { sizeOfMark } from './journal-writer';
import { numberOfDay } from './plain-days';
import { isSurelyDoubted } from './raw-doubts';
import { markOn, middleOf, readingsOn, type RawLog, type RawReading } from './raw-log';
import * as say from './reckoned';

type Question = Parameters<Answerer>[1];

const named = ({ specimens }: RawLog, question: Question): string =>
  specimens.find(({ name }) => name === say.wordIn(question, 'specimen'))?.id ?? '';

const H1: Answerer = ({ log }, question) =>
  say.findings(
    [],
    [log.quantity === 'plant-height' && log.where.includes('soil'), 'no soil in the plan'],
    say.isAnswer(question, 'idea soil-line'),
  );

const H2: Answerer = ({ log, from, to, today }, question) => {
  const specimen = named(log, question);
  const day = say.dayIn(question, 'day');
  const why = markOn(log, specimen, day)?.why;
  const begun = log.readings.some((each) => each.specimen === specimen && each.day < day);
  return say.findings(
    [],
    [isMissed(log, specimen, day), 'not a missed day'],
    [day >= from && day <= to && day < today, 'not shown, or not over'],
    [begun, 'before the first number'],
    say.isAnswer(question, why ? `idea we-missed-it < ${why}` : 'idea we-missed-it'),
  );
};

/** The last reading of each person in this unit; each that nobody signed is a person's own. */
const ofEachPerson = (readings: readonly RawReading[], unit: string): readonly RawReading[] => {
  const found: RawReading[] = [];
  for (const reading of readings.filter(({ counted }) => counted.unit === unit)) {
    const same = found.findIndex(({ author }) => author !== null && author === reading.author);
    if (same < 0) found.push(reading);
    else if (found[same]!.at < reading.at) found[same] = reading;
  }
  return found;
};

const H3: Answerer = ({ log, specimens, from, to }, question) => {
  const day = say.dayIn(question, 'day');
  const [one, other] = [say.lengthIn(question, 'one'), say.lengthIn(question, 'other')];
  const isSo = specimens.some((specimen) => {
    const read = ofEachPerson(readingsOn(log, specimen, day), one.unit);
    const exacts = read.map(({ counted }) => counted.exact);
    const isDoubted = read.some((each) => isSurelyDoubted(log, each));
    const isBetween = Math.min(...exacts) === one.exact && Math.max(...exacts) === other.exact;
    return read.length >= 2 && isBetween && !isDoubted;
  });
  return say.findings(
    [say.read(...[one, other].map(say.inUnitsOf))],
    [isSo, 'nobody read those, or somebody doubts them'],
    [log.quantity !== 'rain' && log.quantity !== 'shadow', 'it changes by itself'],
    [other.exact - one.exact === sizeOfMark(one.mark), 'not one mark apart'],
    [day >= from && day <= to, 'not shown'],
    say.isAnswer(question, 'idea both-careful'),
  );
};

const H4: Answerer = ({ log, from, to }, question) => {
  const specimen = named(log, question);
  const inches = say.lengthIn(question, 'inches');
  const [first, last] = [say.dayIn(question, 'from'), say.dayIn(question, 'to')];
  const isRead = (day: string, metric: say.Length): boolean =>
    readingsOn(log, specimen, day).some(({ counted, otherSide, ...reading }) => {
      const sides = otherSide ? [counted, otherSide] : [];
      const isDoubted = isSurelyDoubted(log, { counted, otherSide, ...reading });
      return (
        !isDoubted &&
        sides.some(({ unit, exact }) => unit === inches.unit && exact === inches.exact) &&
        sides.some(({ unit, exact }) => unit === metric.unit && exact === metric.exact)
      );
    });
  const [before, after] = [say.lengthIn(question, 'before'), say.lengthIn(question, 'after')];
  const gap = numberOfDay(last) - numberOfDay(first);
  return say.findings(
    [say.read(...[inches, before, after].map(say.inUnitsOf))],
    [isRead(first, before) && isRead(last, after), 'nobody read those'],
    [after.exact > before.exact, 'it did not grow'],
    [before.unit === after.unit, 'units mixed'],
    [gap >= 1 && gap <= 7 && first >= from && last <= to, 'too far apart, or not shown'],
    say.isAnswer(question, 'idea smaller-unit'),
  );
};

const H5: Answerer = ({ log, today }, question) => {
  const first = log.readings.map(({ at }) => at).sort()[0] ?? '9';
  const plan = log.plans.filter(({ at }) => at < first).at(-1);
  if (!plan) return { wrong: ['no plan from before the readings'], sums: [] };
  const crept = [
    ...log.differences.filter(({ day }) => day <= today).map(({ what }) => what),
    ...log.plans
      .filter(({ at, different }) => at >= first && different !== plan.different)
      .map(({ different }) => different),
  ];
  const { answer } = question;
  const told = answer.kind === 'order' ? answer.things : [];
  const words = told.flatMap((each) => (each.kind === 'word' ? [each.word] : []));
  const all = [plan.different, ...crept, ...plan.same];
  return say.findings(
    [],
    [log.specimens.length >= 2, 'one plant'],
    [words.join(', ') === all.join(', '), `told ${words.join(', ')}, but ${all.join(', ')}`],
  );
};

const flaws: Readonly<Record<string, string>> = {
  ...{ 'picture-graph': 'P3', 'bar-graph': 'B7', 'line-plot': 'L4', 'line-graph': 'T6' },
};

const H6: Answerer = ({ graph }, question) =>
  say.findings(
    [],
    [say.wordIn(question, 'practice') === graph, 'another graph'],
    say.isAnswer(question, `idea flaw-${flaws[graph]}`),
  );

const H7: Answerer = ({ log, today }, question) => {
  const first = log.readings.map(({ at }) => at).sort()[0] ?? '9';
  const plan = log.plans.filter(({ at }) => at < first).at(-1);
  const counting = log.plans.filter((each) => each === plan || each.at >= first);
  const isLight = counting.some(({ different }) => different === 'light');
  const up = log.specimens.filter(({ id }) =>
    log.readings.some((each) => each.specimen === id && each.day <= today),
  );
  const days = log.readings.map(({ day }) => day).filter((day) => day <= today);
  const firstDay = days.sort()[0] ?? today;
  const isLookedAt = up.every(
    ({ id }) =>
      log.looks.some((look) => look.specimen === id && look.day <= today) ||
      log.readings.some((each) => each.specimen === id && each.leaves !== null),
  );
  const shared = [...new Set(days)].filter((day) =>
    up.every(({ id }) => readingsOn(log, id, day).length > 0),
  );
  const lastDay = shared.at(-1) ?? '';
  const heights = up.map(({ id, name }) => {
    const readings = readingsOn(log, id, lastDay);
    const isDoubted = readings.some((each) => isSurelyDoubted(log, each));
    const exact = lastDay ? middleOf(readings.map(({ counted }) => counted)).exact : -1;
    return { name, exact, isDoubted };
  });
  const most = Math.max(...heights.map(({ exact }) => exact));
  const tallest = heights.filter(({ exact }) => exact === most);
  return say.findings(
    [],
    [isLight && up.length >= 2, 'no test of light with two plants'],
    [numberOfDay(today) - numberOfDay(firstDay) >= 21, 'less than three weeks'],
    [isLookedAt, 'nothing looked at beside the height'],
    [tallest.length === 1, 'a tie'],
    [tallest[0]?.name === say.wordIn(question, 'specimen'), 'another is taller'],
    [!heights.some(({ isDoubted }) => isDoubted), 'doubted'],
    say.isAnswer(question, 'idea look-at-leaves-and-colour'),
  );
};

const H8: Answerer = (asking, question) =>
  say.findings(
    [],
    [isWeather(asking), 'no weather'],
    say.isAnswer(
      question,
      `idea our-place-these-dates < ${[asking.from, asking.to].join(' and ')}`,
    ),
  );

/** What no graph tells: why, next year, another home. */
const nobodyKnows = /^idea (ask-why|ask-next-year|ask-other-home)/;

const H9: Answerer = (_, question) => {
  const offered = question.blanks['offered'];
  const things = offered?.kind === 'order' ? offered.things.map(say.said) : [];
  const cannot = things.filter((each) => nobodyKnows.test(each));
  return say.findings(
    [],
    [new Set(things).size === 3 && cannot.length === 1, 'not three with one that cannot be told'],
    say.isAnswer(question, cannot[0] ?? ''),
  );
};

const H10: Answerer = ({ log, from, to }, question) => {
  const specimen = named(log, question);
  const day = say.dayIn(question, 'day');
  const isMended = readingsOn(log, specimen, day).some(
    ({ crossedOut, counted, ...reading }) =>
      crossedOut.some(
        (was) => was.counted.exact !== counted.exact || was.counted.unit !== counted.unit,
      ) && !isSurelyDoubted(log, { crossedOut, counted, ...reading }),
  );
  return say.findings(
    [],
    [isMended, 'no number was crossed out'],
    [day >= from && day <= to, 'not shown'],
    say.isAnswer(question, 'idea honest-record'),
  );
};

export const answersBehind = { H1, H2, H3, H4, H5, H6, H7, H8, H9, H10 } as const;
