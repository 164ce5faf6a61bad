import {
  amiss,
  countOf,
  inTold,
  isCountSure,
  isDoubtedAt,
  isKeyRight,
  numberAt,
  numberOn,
  plotOf,
  systemOf,
  type Answerer,
} from './answers-read';
import { sizeOfMark, sizeOfUnit } from './journal-writer';
import type { MarkId } from '#core/measure';
import { numberOfDay } from './plain-days';
import { specimenNamed, type RawAsking } from './raw-asking';
import { kindsShown, numbersOf } from './raw-tables';
import * as say from './reckoned';

const gapOf = (from: string, to: string): number => numberOfDay(to) - numberOfDay(from);

/** Days that are of both kinds: put together they are counted once only. */
const isNoneTwice = (asking: RawAsking): boolean => {
  const things = kindsShown(asking).flatMap((kind) => [...kind.things]);
  return new Set(things).size === things.length;
};

const C1: Answerer = (asking, question) => {
  const most = countOf(asking, say.wordIn(question, 'more')) ?? 0;
  const fewer = countOf(asking, say.wordIn(question, 'fewer')) ?? 0;
  return say.findings(
    [say.less(most, fewer)],
    [most > fewer && fewer > 0, `${most} and ${fewer}`],
    [isCountSure(asking), 'a doubted number'],
    say.isAnswer(question, `${most - fewer} things`),
  );
};

const C2: Answerer = (asking, question) => {
  const isOfTimes = question.blanks['more']?.kind === 'time';
  const isRain = asking.log.quantity === 'rain';
  if (isOfTimes) {
    const larger = numberAt(asking, say.timeIn(question, 'more'));
    const smaller = numberAt(asking, say.timeIn(question, 'less'));
    return difference(asking, question, larger, smaller);
  }
  const specimen = specimenNamed(asking, say.wordIn(question, 'plant'));
  const [to, from] = [say.dayIn(question, 'more'), say.dayIn(question, 'less')];
  const larger = numberOn(asking, specimen, to);
  const reckoned = difference(asking, question, larger, numberOn(asking, specimen, from));
  if (isRain) return reckoned;
  const gap = gapOf(from, to);
  const smaller = numberOn(asking, specimen, from);
  const isInch = [larger, smaller].some(
    ({ amount }) => sizeOfMark((amount?.mark ?? '1 cm') as MarkId) > sizeOfUnit.cm * 2,
  );
  const checked = say.findings(
    [say.read(gap)],
    [question.blanks['gap']?.kind === 'count', 'the gap is not said'],
    [say.countIn(question, 'gap') === gap, `the gap is ${gap}`],
    [larger.amount?.unit === 'count' || gap >= (isInch ? 5 : 3), `only ${gap} days`],
  );
  return {
    wrong: [...reckoned.wrong, ...checked.wrong],
    sums: [...reckoned.sums, ...checked.sums],
  };
};

const difference = (
  asking: RawAsking,
  question: Parameters<Answerer>[1],
  larger: ReturnType<typeof numberOn>,
  smaller: ReturnType<typeof numberOn>,
): ReturnType<Answerer> => {
  const wrong = [...larger.wrong, ...smaller.wrong];
  if (!larger.amount || !smaller.amount) return { wrong, sums: [] };
  const [most, least] = [larger.amount, smaller.amount];
  return say.findings(
    [say.less(inTold(asking, most.exact), inTold(asking, least.exact))],
    [most.exact > least.exact, 'not more'],
    [systemOf(most.unit) === systemOf(least.unit), 'units mixed'],
    say.isAnswer(question, say.lengthSaid(most.exact - least.exact, asking.told?.unit ?? '')),
    ...amiss(wrong),
  );
};

const C3: Answerer = (asking, question) => {
  const one = countOf(asking, say.wordIn(question, 'one')) ?? 0;
  const other = countOf(asking, say.wordIn(question, 'other')) ?? 0;
  return say.findings(
    [say.more(one, other)],
    [one > 0 && other > 0, 'one never came'],
    [isNoneTwice(asking), 'a day of two kinds'],
    [isCountSure(asking), 'a doubted number'],
    say.isAnswer(question, `${one + other} things`),
  );
};

const C4: Answerer = (asking, question) => {
  const counts = kindsShown(asking).map(({ things }) => things.size);
  const all = new Set(kindsShown(asking).flatMap(({ things }) => [...things]));
  return say.findings(
    [say.more(...counts)],
    [isNoneTwice(asking), 'a day of two kinds'],
    [isCountSure(asking), 'a doubted number'],
    [question.wholeSet, 'not about all'],
    say.isAnswer(question, `${all.size} things`),
  );
};

const C5: Answerer = (asking, question) => {
  const specimen = specimenNamed(asking, say.wordIn(question, 'plant')) ?? '';
  const { exact } = say.lengthIn(question, 'apart');
  const numbers = numbersOf(asking, specimen);
  const pairs = numbers.flatMap((to) => {
    const from = numbers.find(({ day }) => gapOf(day, to.day) === 1);
    const isSo = from && Math.abs(to.amount.exact - from.amount.exact) === exact;
    return isSo ? [[from, to] as const] : [];
  });
  const [from, to] = pairs[0] ?? [];
  if (!from || !to) return { wrong: ['no such pair'], sums: [] };
  const sizes = [from, to].map(({ amount }) => inTold(asking, amount.exact));
  return say.findings(
    [say.less(Math.max(...sizes), Math.min(...sizes))],
    [pairs.length === 1, `${pairs.length} pairs`],
    say.isAnswer(question, `${from.day} and ${to.day}`),
    ...amiss([from, to].flatMap(({ day }) => numberOn(asking, specimen, day).wrong)),
  );
};

const C6: Answerer = (asking, question) => {
  const things = question.blanks['things'];
  const named = things?.kind === 'order' ? things.things.map(say.said) : [];
  const isOfTimes = named.some((each) => each.includes(':'));
  const found = named.map((each) => {
    const { amount, wrong } = isOfTimes
      ? numberAt(asking, each)
      : numberOn(asking, asking.specimens[0] ?? '', each);
    return { each, exact: amount?.exact ?? -1, wrong };
  });
  const inOrder = [...found].sort((one, other) => one.exact - other.exact);
  return say.findings(
    [say.read(...found.map(({ exact }) => inTold(asking, exact)))],
    [asking.log.quantity !== 'plant-height', 'heights'],
    [found.length >= 3 && found.length <= 5, `${found.length} things`],
    [new Set(found.map(({ exact }) => exact)).size === found.length, 'a tie'],
    say.isAnswer(question, inOrder.map(({ each }) => each).join(' < ')),
    ...amiss(found.flatMap(({ wrong }) => wrong)),
  );
};

const C7: Answerer = (asking, question) => {
  const specimen = specimenNamed(asking, say.wordIn(question, 'plant')) ?? '';
  const numbers = numbersOf(asking, specimen);
  const steps = numbers.slice(1).map((to, index) => {
    const from = numbers[index]!;
    const gap = gapOf(from.day, to.day);
    return { gap, grown: to.amount.exact - from.amount.exact, from: from.day, to: to.day };
  });
  const grown = steps.map((step) => step.grown).sort((one, other) => other - one);
  const best = steps.find((step) => step.grown === grown[0]);
  const unit = Math.max(
    sizeOfUnit[asking.told?.unit ?? 'cm'],
    ...numbers.map(({ amount }) => sizeOfMark(amount.mark as MarkId)),
  );
  return say.findings(
    [say.read(...numbers.map(({ amount }) => inTold(asking, amount.exact)))],
    [asking.log.quantity !== 'rain', 'rain'],
    [new Set(steps.map(({ gap }) => gap)).size === 1, 'gaps that differ'],
    [grown.length > 1 && grown[0]! - grown[1]! >= 2 * unit, 'no lead of two units'],
    [question.wholeSet, 'not about all'],
    say.isAnswer(question, `${best?.from} to ${best?.to}, ${best?.gap} days`),
    ...amiss(numbers.flatMap(({ day }) => numberOn(asking, specimen, day).wrong)),
  );
};

const C8: Answerer = (asking, question) => {
  const specimen = specimenNamed(asking, say.wordIn(question, 'plant'));
  const [from, to] = [say.dayIn(question, 'from'), say.dayIn(question, 'to')];
  const [was, is] = [numberOn(asking, specimen, from), numberOn(asking, specimen, to)];
  if (!was.amount || !is.amount) return { wrong: [...was.wrong, ...is.wrong], sums: [] };
  const unit = asking.told?.unit ?? '';
  const gap = gapOf(from, to);
  const jump = inTold(asking, is.amount.exact) - inTold(asking, was.amount.exact);
  const each = jump / gap;
  const size = sizeOfUnit[unit as keyof typeof sizeOfUnit];
  const length = (number: number): string => say.lengthSaid(Math.round(number * size), unit);
  const expected = Number.isInteger(each)
    ? length(each)
    : `${length(Math.floor(each))} to ${length(Math.ceil(each))}`;
  return say.findings(
    [
      say.less(inTold(asking, is.amount.exact), inTold(asking, was.amount.exact)),
      { kind: 'share', numbers: [jump, gap] },
      say.read(gap),
    ],
    [gap >= 2 && gap <= 5, `${gap} days`],
    [say.countIn(question, 'gap') === gap, `the gap is ${gap}`],
    [jump >= gap, 'less than one each day'],
    [Number.isInteger(each) || asking.stage === 'grade-3', 'left-overs before grade 3'],
    [systemOf(was.amount.unit) === systemOf(is.amount.unit), 'units mixed'],
    say.isAnswer(question, expected),
    ...amiss([...was.wrong, ...is.wrong]),
  );
};

const C9: Answerer = (asking, question) => {
  const plot = plotOf(asking);
  const piles = new Map<number, number>();
  for (const exact of plot.exacts) piles.set(exact, (piles.get(exact) ?? 0) + 1);
  const most = Math.max(...piles.values());
  const tallest = [...piles].filter(([, count]) => count === most).map(([exact]) => exact);
  return say.findings(
    [say.read(...plot.exacts.map(plot.inUnits))],
    [plot.exacts.length >= 8, 'fewer than 8'],
    [tallest.length === 1, 'a tie'],
    [plot.isOneUnit && plot.doubted.length === 0, 'doubted, or units mixed'],
    say.isAnswer(question, say.lengthSaid(tallest[0] ?? -1, asking.told?.unit ?? '')),
  );
};

const C10: Answerer = (asking, question) => {
  const plot = plotOf(asking);
  const [smallest = 0, largest = 0] = [plot.exacts[0], plot.exacts.at(-1)];
  const numbers = plot.exacts.map(plot.inUnits);
  const areWhole = numbers.every(Number.isInteger);
  const ends = [plot.inUnits(largest), plot.inUnits(smallest)] as const;
  const shared = [
    [plot.isOneUnit && plot.doubted.length === 0, 'doubted, or units mixed'],
    [plot.exacts.length > 1, 'too few'],
  ] as const;
  if (areWhole) {
    const expected = say.lengthSaid(largest - smallest, asking.told?.unit ?? '');
    return say.findings([say.less(...ends)], ...shared, say.isAnswer(question, expected));
  }
  const step = say.lengthIn(question, 'step').exact;
  const hops = (largest - smallest) / step;
  return say.findings(
    [say.read(hops, ...ends)],
    ...shared,
    [asking.stage === 'grade-3', 'fractions before grade 3'],
    [plot.exacts.every((each) => (each - smallest) % step === 0), 'a cross between steps'],
    say.isAnswer(question, `${hops} things`),
  );
};

const C11: Answerer = (asking, question) => {
  const { exact } = say.lengthIn(question, 'value');
  const plot = plotOf(asking);
  const from = plot.exacts.filter((each) => each >= exact);
  return say.findings(
    [say.read(plot.inUnits(exact), from.length)],
    [from.length >= 2 && from.length <= 8, `${from.length} of them`],
    [plot.isOneUnit, 'units mixed'],
    [!from.some((each) => isDoubtedAt(asking, each)), 'a doubted cross'],
    say.isAnswer(question, `${from.length} things`),
  );
};

const C12: Answerer = (asking, question) => {
  const [one = -1, other = -1, third = -1] = (['one', 'other', 'third'] as const).map((name) =>
    countOf(asking, say.wordIn(question, name)),
  ) as number[];
  const goal = say.countIn(question, 'goal');
  return say.findings(
    [say.more(one, other, third), say.less(goal, one + other + third)],
    [say.countIn(question, 'oneCount') === one, `there are ${one}`],
    [say.countIn(question, 'otherCount') === other, `there are ${other}`],
    [kindsShown(asking).length === 3, 'more kinds than three'],
    [isNoneTwice(asking), 'a day of two kinds'],
    [isCountSure(asking), 'a doubted number'],
    [goal > one + other + third, 'reached already'],
    say.isAnswer(question, `${goal - one - other - third} things`),
  );
};

const C13: Answerer = (asking, question) => {
  const leader = specimenNamed(asking, say.wordIn(question, 'leader')) ?? '';
  const other = specimenNamed(asking, say.wordIn(question, 'other')) ?? '';
  if (question.blanks['day']) {
    const day = say.dayIn(question, 'day');
    return difference(
      ...([asking, question] as const),
      ...([numberOn(asking, leader, day), numberOn(asking, other, day)] as const),
    );
  }
  const shared = numbersOf(asking, leader).flatMap(({ day, amount }) => {
    const theirs = numbersOf(asking, other).find((each) => each.day === day);
    return theirs ? [{ day, lead: amount.exact - theirs.amount.exact }] : [];
  });
  const most = Math.max(...shared.map(({ lead }) => lead));
  const days = shared.filter(({ lead }) => lead === most).map(({ day }) => day);
  const numbers = shared.flatMap(({ day }) => [leader, other].map((each) => ({ day, each })));
  return say.findings(
    [
      say.read(
        ...numbers.map(({ day, each }) =>
          inTold(asking, numberOn(asking, each, day).amount?.exact ?? 0),
        ),
      ),
    ],
    [leader !== other, 'one plant'],
    [days.length === 1 && most > 0, 'a tie, or no lead'],
    [question.wholeSet, 'not about all'],
    say.isAnswer(question, days[0] ?? 'no day'),
    ...amiss(numbers.flatMap(({ day, each }) => numberOn(asking, each, day).wrong)),
  );
};

const C14: Answerer = (asking, question) => {
  const count = countOf(asking, say.wordIn(question, 'kind'));
  const each = say.countIn(question, 'each');
  return say.findings(
    [{ kind: 'times', numbers: [count ?? 0] }],
    [asking.graph === 'picture-graph' && asking.stage === 'grade-3', 'no scaled picture graph'],
    [each === asking.key && each > 1 && isKeyRight(each, [count ?? 0]), 'no such key'],
    [isCountSure(asking), 'a doubted number'],
    say.isAnswer(question, `${count} things`),
  );
};

export const answersBetween = {
  ...{ C1, C2, C3, C4, C5, C6, C7, C8, C9, C10, C11, C12, C13, C14 },
} as const;
