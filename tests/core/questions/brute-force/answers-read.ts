import type { AskedQuestion } from '#core/questions';
import { knownOnce } from './known-once';
import type { RawAsking } from './raw-asking';
import { specimenNamed } from './raw-asking';
import { isSurelyDoubted } from './raw-doubts';
import { lastDayOf, markOn, middleOf, readingsOn, type RawMeasure } from './raw-log';
import { amountOn, crossesOf, daysFromTo, kindsShown, numbersOf } from './raw-tables';
import * as say from './reckoned';
import type { Reckoned } from './reckoned';

/** Each template of the first level, answered anew from the entries. */
export type Answerer = (asking: RawAsking, question: AskedQuestion) => Reckoned;

/** A number of one day, with what forbids asking about it. */
export const numberOn = (
  { log, from, to, told }: RawAsking,
  specimen: string | null,
  day: string,
): { readonly amount: RawMeasure | null; readonly wrong: readonly string[] } => {
  const amount = specimen === null ? null : amountOn(log, specimen, day);
  const wrong: string[] = [];
  if (!specimen || !amount) return { amount: null, wrong: [`no number on ${day}`] };
  if (day < from || day > to) wrong.push(`${day} is not shown`);
  const readings = readingsOn(log, specimen, day);
  if (readings.some((each) => isSurelyDoubted(log, each))) wrong.push(`${day} is doubted`);
  if (systemOf(amount.unit) !== systemOf(told?.unit ?? '')) wrong.push(`${day}: another unit`);
  return { amount, wrong };
};

export const systemOf = (unit: string): string =>
  unit === 'in' || unit === 'ft' || unit === 'yd' ? 'inches' : unit === 'count' ? 'count' : 'cm';

export const amiss = (wrong: readonly string[]): readonly (readonly [boolean, string])[] =>
  wrong.map((text) => [false, text] as const);

/** The one number of a time of the day that is shown. */
export const numberAt = (
  { log, specimens, from, told }: RawAsking,
  time: string,
): { readonly amount: RawMeasure | null; readonly wrong: readonly string[] } => {
  const readings = readingsOn(log, specimens[0] ?? '', from).filter(
    (each) => each.time === time && each.spanDays === 1,
  );
  if (readings.length === 0) return { amount: null, wrong: [`no number at ${time}`] };
  const amount = middleOf(readings.map(({ counted }) => counted));
  const wrong: string[] = [];
  if (readings.some((each) => isSurelyDoubted(log, each))) wrong.push(`${time} is doubted`);
  if (systemOf(amount.unit) !== systemOf(told?.unit ?? '')) wrong.push(`${time}: another unit`);
  return { amount, wrong };
};

/** The crosses of a plot, with what forbids asking about any of them, or all. */
export const plotOf = knownOnce((asking: RawAsking) => {
  const { log, from, to, specimens, told } = asking;
  const crosses = crossesOf(asking);
  const shown = log.readings.filter(
    ({ specimen, day }) => specimens.includes(specimen) && day >= from && day <= to,
  );
  const doubted = shown.filter((each) => isSurelyDoubted(log, each));
  const exacts = crosses.map(({ exact }) => exact).sort((one, other) => one - other);
  const isOneUnit = crosses.every(({ unit }) => systemOf(unit) === systemOf(told?.unit ?? ''));
  return { exacts, doubted, isOneUnit, inUnits: (exact: number) => inTold(asking, exact) };
});

export const inTold = ({ told }: RawAsking, exact: number): number =>
  say.inUnitsOf({ exact, unit: told?.unit ?? 'count' });

/** Whether a cross at this number may hang on a doubted reading. */
export const isDoubtedAt = (asking: RawAsking, exact: number): boolean => {
  const { doubted } = plotOf(asking);
  if (asking.source === 'growth-amounts') return doubted.length > 0;
  return doubted.some((reading) => {
    const day = amountOn(asking.log, reading.specimen, reading.day);
    const isReads = asking.source === 'reads-of-one';
    return isReads ? reading.reads.some((each) => each.exact === exact) : day?.exact === exact;
  });
};

/** No graph of counts that hangs on numbers has a doubted one. */
export const isCountSure = ({ log, source, specimens, from, to }: RawAsking): boolean =>
  (source !== 'wet-days' && source !== 'growth-days') ||
  !log.readings.some(
    (each) =>
      specimens.includes(each.specimen) &&
      each.day >= from &&
      each.day <= to &&
      isSurelyDoubted(log, each),
  );

export const countOf = (asking: RawAsking, label: string): number | null =>
  kindsShown(asking).find((kind) => kind.label === label)?.things.size ?? null;

const R1: Answerer = (asking, question) => {
  const specimen = specimenNamed(asking, say.wordIn(question, 'plant'));
  const { amount, wrong } = numberOn(asking, specimen, say.dayIn(question, 'day'));
  if (!amount) return { wrong, sums: [] };
  const unit = asking.told?.unit ?? '';
  return say.findings(
    [say.read(inTold(asking, amount.exact))],
    say.isAnswer(question, say.lengthSaid(amount.exact, unit)),
    ...amiss(wrong),
  );
};

const R2: Answerer = (asking, question) => {
  const count = countOf(asking, say.wordIn(question, 'kind'));
  return say.findings(
    [say.read(count ?? 0)],
    [count !== null, 'no such kind'],
    [isCountSure(asking), 'a doubted number'],
    say.isAnswer(question, `${count} things`),
  );
};

const R3: Answerer = (asking, question) => {
  const specimen = specimenNamed(asking, say.wordIn(question, 'plant')) ?? '';
  const { exact } = say.lengthIn(question, 'value');
  const days = numbersOf(asking, specimen).filter(({ amount }) => amount.exact === exact);
  return say.findings(
    [say.read(inTold(asking, exact))],
    [days.length === 1, `the number came ${days.length} times`],
    say.isAnswer(question, days[0]?.day ?? 'no day'),
    ...amiss(numberOn(asking, specimen, days[0]?.day ?? '').wrong),
  );
};

const R4: Answerer = (asking, question) => {
  const { key, stage } = asking;
  const counts = kindsShown(asking).map(({ things }) => things.size);
  return say.findings(
    [say.read(key ?? 0)],
    [asking.graph === 'picture-graph', 'no picture graph'],
    [key !== null && isKeyRight(key, counts), 'the key shows not all counts'],
    [stage === 'grade-3' || key === 1, 'a key of more than one'],
    say.isAnswer(question, `${key} things`),
  );
};

/** Whole pictures, and halves only of an even number. */
export const isKeyRight = (key: number, counts: readonly number[]): boolean =>
  [1, 2, 5, 10].includes(key) &&
  counts.every((count) => count % key === 0 || (key % 2 === 0 && count % (key / 2) === 0));

const R5: Answerer = (asking, question) =>
  say.findings(
    [],
    [asking.graph === 'line-plot' && crossesOf(asking).length > 0, 'no crosses'],
    say.isAnswer(question, `idea ${crossIdeas[asking.source]}`),
  );

const crossIdeas: Readonly<Partial<Record<RawAsking['source'], string>>> = {
  ...{ 'each-specimen': 'cross-is-one-thing', 'reads-of-one': 'cross-is-one-read' },
  ...{ 'growth-amounts': 'cross-is-one-growth', 'rain-amounts': 'cross-is-one-day-of-rain' },
};

const R6: Answerer = (asking, question) => {
  const { exact } = say.lengthIn(question, 'value');
  const plot = plotOf(asking);
  const count = plot.exacts.filter((each) => each === exact).length;
  return say.findings(
    [say.read(plot.inUnits(exact), count)],
    [count >= 1 && count <= 9, `${count} crosses`],
    [plot.isOneUnit, 'units mixed'],
    [!isDoubtedAt(asking, exact), 'a doubted cross'],
    say.isAnswer(question, `${count} things`),
  );
};

const R7: Answerer = (asking, question) => {
  const numbers = asking.labels.map(numberWritten);
  const step = (numbers[1] ?? 0) - (numbers[0] ?? 0);
  const isEven = numbers.every((each, index) => Math.abs(each - index * step) < 1e-9);
  const { answer, wholeSet } = question;
  const given =
    answer.kind === 'length' ? say.inUnitsOf(answer) : answer.kind === 'count' ? answer.count : 0;
  const isCount = asking.told === null;
  return say.findings(
    [say.read(step)],
    [asking.graph === 'bar-graph' && !wholeSet, 'no bar graph'],
    [isEven && numbers.length > 2, 'no even scale of two steps or more'],
    [asking.stage === 'grade-3' || asking.isGiven || step === 1, 'a step of more than one'],
    [answer.kind === (isCount ? 'count' : 'length'), 'another kind of answer'],
    [Math.abs(given - step) < 1e-9, `the side goes by ${step}, answered ${given}`],
  );
};

/** "1 1/2" is one and a half. */
const numberWritten = (text: string): number =>
  text.split(' ').reduce((sum, part) => {
    const [top, bottom = '1'] = part.split('/');
    return sum + Number(top) / Number(bottom);
  }, 0);

const R8: Answerer = (asking, question) => {
  const { log } = asking;
  const specimen = specimenNamed(asking, say.wordIn(question, 'plant')) ?? '';
  const numbers = numbersOf(asking, specimen).map(({ day }) => day);
  const [first = '9', last = '0'] = [numbers.at(0), numbers.at(-1)];
  const without = daysFromTo(asking.from, asking.to).filter(
    (day) => day > first && day < last && !numbers.includes(day),
  );
  const isClear = without.every((day) => {
    const isBlank = [undefined, 'missed'].includes(markOn(log, specimen, day)?.state);
    return isBlank && readingsOn(log, specimen, day).length === 0;
  });
  return say.findings(
    [say.read(without.length)],
    [without.length > 0, 'no blank day'],
    [isClear, 'a day that says something else'],
    say.isAnswer(question, without.join(' and ')),
  );
};

const R9: Answerer = (asking, question) => {
  const { log } = asking;
  const specimen = asking.specimens[0] ?? '';
  const dry = numbersOf(asking, specimen).filter(
    ({ amount, day }) =>
      amount.exact === 0 &&
      !readingsOn(log, specimen, day).some((each) => isSurelyDoubted(log, each)),
  );
  const blank = daysFromTo(asking.from, asking.to).filter(
    (day) =>
      day <= lastDayOf(log, specimen, asking.today) &&
      readingsOn(log, specimen, day).length === 0 &&
      [undefined, 'missed'].includes(markOn(log, specimen, day)?.state),
  );
  return say.findings(
    [],
    [log.quantity === 'rain' && asking.graph === 'bar-graph', 'no bars of rain'],
    [dry.length > 0, 'no dry day that was read'],
    [blank.length > 0, 'no blank day'],
    say.isAnswer(question, 'idea dry-is-read-blank-is-not'),
  );
};

const R10: Answerer = (asking, question) => {
  const { amount, wrong } = numberAt(asking, say.timeIn(question, 'time'));
  if (!amount) return { wrong, sums: [] };
  const unit = asking.told?.unit ?? '';
  return say.findings(
    [say.read(inTold(asking, amount.exact))],
    [asking.log.quantity === 'shadow', 'no shadow'],
    [say.wordIn(question, 'unit') === unit, 'asked in another unit'],
    say.isAnswer(question, say.lengthSaid(amount.exact, unit)),
    ...amiss(wrong),
  );
};

export const answersRead = { R1, R2, R3, R4, R5, R6, R7, R8, R9, R10 } as const;
