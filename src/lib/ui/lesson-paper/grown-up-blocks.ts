import type { Lesson, LessonBlock } from '#core/lessons';
import { blockText } from '#ui/lesson-words';

/** A part of a grown-up's sheets: never cut in two. */
export type GrownUpBlock =
  /** A line of a part of the plan, by its place; the first has the heading over it. */
  | {
      readonly kind: 'line';
      readonly block: LessonBlock;
      readonly at: number;
      readonly minutes: number | null;
    }
  /** From here on another day is good. */
  | { readonly kind: 'second-sitting' }
  | { readonly kind: 'example' }
  /** By its place; the line that sends to local advice comes after the last. */
  | { readonly kind: 'caution'; readonly at: number }
  | { readonly kind: 'questions' }
  /** By its place in the lesson's list. */
  | { readonly kind: 'question'; readonly at: number }
  /** More, for a child who wants them. */
  | { readonly kind: 'spare' }
  | { readonly kind: 'withdrawn' }
  | { readonly kind: 'finished' };

/**
 * What stands on the grown-up's sheets, in order: what to lay ready, the parts of the lesson, what
 * to accept and when to stop; then the questions with their answers, and the finished graph. What
 * the grown-up left out of the lesson is left out here.
 */
export function grownUpBlocks(lesson: Lesson): readonly GrownUpBlock[] {
  const { plan, changes, questions, spare, withdrawn } = lesson;
  const lines = (block: LessonBlock, minutes: number | null = null): readonly GrownUpBlock[] =>
    linesOf(lesson, block).map((_, at) => ({ kind: 'line', block, at, minutes }));
  return [
    ...lines('materials'),
    ...lines('words'),
    ...plan.parts.flatMap(({ part, minutes, sitting }, index): readonly GrownUpBlock[] => [
      ...(sitting === 2 && plan.parts[index - 1]?.sitting === 1
        ? [{ kind: 'second-sitting' } as const]
        : []),
      ...lines(part, minutes),
      ...(part === 'teach' && changes.texts.teach !== '' ? [{ kind: 'example' } as const] : []),
    ]),
    ...(['accept', 'if-stuck', 'stop-when', 'watch-for'] as const).flatMap((each) => lines(each)),
    ...(plan.cautions.length > 0 ? [...plan.cautions, 'advice'] : []).map(
      (_, at) => ({ kind: 'caution', at }) as const,
    ),
    { kind: 'questions' },
    ...questions.map((_, at) => ({ kind: 'question', at }) as const),
    ...(spare.length > 0 ? [{ kind: 'spare' } as const] : []),
    ...(withdrawn.length > 0 ? [{ kind: 'withdrawn' } as const] : []),
    { kind: 'finished' },
  ];
}

/** The lines of a part of the plan. What is laid ready is short, and stands in one. */
export const linesOf = (lesson: Lesson, block: LessonBlock): readonly string[] => {
  const lines = blockText(lesson, block);
  return block === 'materials' && lines.length > 0 ? [lines.join(' · ')] : lines;
};

/** A name for a part that no other part has. */
export const nameOf = (block: GrownUpBlock): string => {
  if (block.kind === 'line') return `${block.block} ${block.at}`;
  return 'at' in block ? `${block.kind} ${block.at}` : block.kind;
};

/** Whether it goes on from the part before it: then there is no white between them. */
export const goesOn = (block: GrownUpBlock): boolean =>
  (block.kind === 'line' || block.kind === 'caution') && block.at > 0;
