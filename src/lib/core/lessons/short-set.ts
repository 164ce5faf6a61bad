import type { LessonMinutes } from '#core/journal';
import { levels, type AskedQuestion, type ChosenQuestions } from '#core/questions';

/**
 * The questions a lesson has time for, and those it offers beside them. In twenty minutes two are
 * talked about: one to read and one between, one of them about the whole set where there is such a
 * one (common practice, no source). A level the log has no question for gives its place to the
 * next that has. Not part of the public door.
 */
export const shortSet = (chosen: ChosenQuestions, minutes: LessonMinutes): ShortSet => {
  if (minutes !== 20) return { questions: chosen, spare: [] };
  const first = firstTwo(chosen);
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

const firstTwo = ({ read, between, beyond, behind }: ChosenQuestions): readonly AskedQuestion[] => {
  const wholeRead = read.find(({ wholeSet }) => wholeSet);
  const wholeBetween = between.find(({ wholeSet }) => wholeSet);
  const one = wholeBetween ? read[0] : (wholeRead ?? read[0]);
  const other = wholeBetween ?? between[0];
  const two = [one, other].flatMap((each) => each ?? []);
  const others = [...between, ...read, ...beyond, ...behind].filter((each) => !two.includes(each));
  return [...two, ...others].slice(0, 2);
};
