import type { Lesson, LessonBlock } from '#core/lessons';

/** A part of a grown-up's sheets: never cut in two. */
export type GrownUpBlock =
  | { readonly kind: 'text'; readonly block: LessonBlock; readonly minutes: number | null }
  /** From here on another day is good. */
  | { readonly kind: 'second-sitting' }
  | { readonly kind: 'example' }
  | { readonly kind: 'watch-for' }
  | { readonly kind: 'cautions' }
  | { readonly kind: 'questions' }
  /** Its place in the lesson's list. */
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
  const blocks: readonly (GrownUpBlock | null)[] = [
    ...(['materials', 'words'] as const).map(text),
    ...plan.parts.flatMap(({ part, minutes, sitting }, index): readonly GrownUpBlock[] => [
      ...(sitting === 2 && plan.parts[index - 1]?.sitting === 1
        ? [{ kind: 'second-sitting' } as const]
        : []),
      { kind: 'text', block: part, minutes },
      ...(part === 'teach' ? [{ kind: 'example' } as const] : []),
    ]),
    ...(['accept', 'if-stuck', 'stop-when'] as const).map(text),
    { kind: 'watch-for' },
    plan.cautions.length > 0 ? { kind: 'cautions' } : null,
    { kind: 'questions' },
    ...questions.map((_, at) => ({ kind: 'question', at }) as const),
    spare.length > 0 ? { kind: 'spare' } : null,
    withdrawn.length > 0 ? { kind: 'withdrawn' } : null,
    { kind: 'finished' },
  ];
  return blocks.flatMap((each) => (each && !isLeftOut(each, changes.texts) ? each : []));
}

const text = (block: LessonBlock): GrownUpBlock => ({ kind: 'text', block, minutes: null });

const isLeftOut = (block: GrownUpBlock, texts: Lesson['changes']['texts']): boolean => {
  if (block.kind === 'text') return texts[block.block] === '';
  if (block.kind === 'watch-for') return texts['watch-for'] === '';
  return block.kind === 'example' && texts.teach === '';
};

/** A name for a part that no other part has. */
export const nameOf = (block: GrownUpBlock): string => {
  if (block.kind === 'text') return `text ${block.block}`;
  return block.kind === 'question' ? `question ${block.at}` : block.kind;
};
