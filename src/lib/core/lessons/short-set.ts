import type { LessonMinutes } from '#core/journal';
import { levels, type AskedQuestion, type ChosenQuestions, type QuestionId } from '#core/questions';

/**
 * The questions a lesson has time for, and those it offers beside them. In twenty minutes two are
 * talked about: one to read and one between (common practice, no source); the one between is what
 * the lesson is for, or else one of the two is about the whole set where there is such a one. A level the log has no question for gives its place to the
 * next that has. Not part of the public door.
 */
export const shortSet = (
  chosen: ChosenQuestions,
  minutes: LessonMinutes,
  wanted: readonly QuestionId[] = [],
): ShortSet => {
  if (minutes !== 20) return { questions: chosen, spare: [] };
  const first = firstTwo(chosen, wanted);
  const kept = (level: 'read' | 'between' | 'beyond' | 'behind') =>
    chosen[level].filter((question) => first.includes(question));
  return {
    questions: {
      ...{ read: kept('read'), between: kept('between') },
      ...{ beyond: kept('beyond'), behind: kept('behind') },
      missing: chosen.missing
        .filter(({ level }) => chosen[level].length === 0)
        .filter(({ level }) => level === 'read' || level === 'between')
        .map(({ level }) => ({ level, lacks: 1 })),
    },
    spare: levels.flatMap((level) => chosen[level].filter((each) => !first.includes(each))),
  };
};

export interface ShortSet {
  readonly questions: ChosenQuestions;
  readonly spare: readonly AskedQuestion[];
}

const firstTwo = (
  { read, between, beyond, behind }: ChosenQuestions,
  wanted: readonly QuestionId[],
): readonly AskedQuestion[] => {
  const asked = between.find(({ template }) => wanted.includes(template));
  const wholeRead = read.find(({ wholeSet }) => wholeSet);
  const wholeBetween = between.find(({ wholeSet }) => wholeSet);
  const other = asked ?? wholeBetween ?? between[0];
  const one = other?.wholeSet ? read[0] : (wholeRead ?? read[0]);
  const two = [one, other].flatMap((each) => each ?? []);
  const others = [...between, ...read, ...beyond, ...behind].filter((each) => !two.includes(each));
  return [...two, ...others].slice(0, 2);
};
