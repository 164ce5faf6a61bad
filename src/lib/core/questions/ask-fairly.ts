import { hasModel, isSayable, reading, type FitsRange } from './fits-range';
import type { LessonFacts } from './lesson-facts';
import {
  numberRanges,
  type AskedQuestion,
  type QuestionTemplate,
  type Slip,
  type Told,
} from './question';
import { numberSaid, numbersWritten, sameTold } from './told';

/**
 * One way to ask a template, or none where asking would not be fair: when the answer is 0 or
 * stands in the question, when its number is written in the question, or when the numbers are in
 * no range of the stage in which the template is asked, or cannot be said in it. Slips that would be the answer, or another
 * slip, or a number that a child of the stage does not say, are dropped. Not part of the public door.
 */
export const askFairly = (
  template: Pick<QuestionTemplate, 'id' | 'level' | 'ranges'>,
  facts: LessonFacts,
  { blanks, answer, slips, fits, wholeSet = false }: ToAsk,
): readonly AskedQuestion[] => {
  const range = numberRanges.find(
    (each) =>
      facts.ranges.includes(each) &&
      template.ranges.includes(each) &&
      (each !== 'G2c' || hasModel(facts)) &&
      [answer, ...Object.values(blanks)].every((told) => isSayable(told, each)) &&
      fits(each),
  );
  const isReckoned = template.level === 'read' || template.level === 'between';
  const ends = answer.kind === 'between' && isReckoned ? [answer.low, answer.high] : [answer];
  if (range === undefined || ends.some((end) => isGivenAway(end, Object.values(blanks)))) return [];
  return [
    {
      ...{ template: template.id, level: template.level, range, blanks, answer, wholeSet },
      slips: distinctSlips(slips.filter(isOfStage(facts)), answer),
    },
  ];
};

export interface ToAsk {
  readonly blanks: AskedQuestion['blanks'];
  readonly answer: Told;
  readonly slips: readonly Slip[];
  readonly fits: FitsRange;
  readonly wholeSet?: boolean;
}

/** Whether an answer is nothing to find out: 0, or told in the question already. */
export const isGivenAway = (answer: Told, blanks: readonly Told[]): boolean => {
  const number = numberSaid(answer);
  if (number === 0) return true;
  if (number !== null && blanks.flatMap(numbersWritten).includes(number)) return true;
  return blanks.some((blank) => sameTold(blank, answer));
};

/** A child says no number beyond the stage, and none that its ranges do not say. */
const isOfStage =
  (facts: LessonFacts) =>
  ({ told }: Slip): boolean => {
    const number = numberSaid(told);
    const ranges = facts.ranges.filter((each) => each !== 'G2c' || hasModel(facts));
    return ranges.some(
      (range) => isSayable(told, range) && (number === null || reading(number)(range)),
    );
  };

/** A number said alone is a slip for the number with its unit only as just that slip. */
const distinctSlips = (slips: readonly Slip[], answer: Told): readonly Slip[] =>
  slips.filter(
    (slip, index) =>
      !soundsLike(slip, answer) &&
      !isInside(slip.told, answer) &&
      !slips.slice(0, index).some((before) => soundsLike(slip, before.told)),
  );

const soundsLike = ({ told, shows }: Slip, other: Told): boolean => {
  if (sameTold(told, other)) return true;
  const number = numberSaid(told);
  return shows !== 'forgot-unit' && number !== null && number === numberSaid(other);
};

/** A number inside the span that is right is no slip. */
const isInside = (told: Told, answer: Told): boolean => {
  if (answer.kind !== 'between') return false;
  const [at, low, high] = [told, answer.low, answer.high].map(numberSaid);
  return at != null && low != null && high != null && low <= at && at <= high;
};
