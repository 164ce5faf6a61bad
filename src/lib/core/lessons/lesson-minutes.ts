import type { LessonMinutes } from '#core/journal';

export const lessonParts = [
  'opener',
  'look-and-wonder',
  'teach',
  'draw',
  'talk',
  'sentence',
] as const;
export type LessonPartId = (typeof lessonParts)[number];

/**
 * How long each part of a lesson takes. Twenty minutes: a reading, one feature, a half-drawn graph
 * finished, two questions, one sentence; there is no time to wonder. (Common practice, no source;
 * twenty minutes as there, thirty and forty within its ranges.)
 * @example
 * minutesOf(20).map(({ minutes }) => minutes) // => [3, 4, 8, 4, 1]
 */
export const minutesOf = (
  minutes: LessonMinutes,
): readonly { readonly part: LessonPartId; readonly minutes: number }[] =>
  lessonParts
    .map((part, index) => ({ part, minutes: minutesByPart[minutes][index]! }))
    .filter((part) => part.minutes > 0);

const minutesByPart: Readonly<Record<LessonMinutes, readonly number[]>> = {
  20: [3, 0, 4, 8, 4, 1],
  30: [4, 4, 5, 10, 5, 2],
  40: [5, 5, 5, 15, 8, 2],
};
