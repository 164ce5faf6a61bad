import type { Lesson, LessonPartId, LessonQuestion } from '#core/lessons';

/** One screen of a lesson that is being given. */
export type RunStep =
  | { readonly kind: 'ready'; readonly key: string }
  | {
      readonly kind: 'part';
      readonly key: string;
      readonly part: LessonPartId;
      readonly minutes: number;
      /** Whether another day is good before this part. */
      readonly beginsSitting: boolean;
    }
  | {
      readonly kind: 'question';
      readonly key: string;
      readonly question: LessonQuestion;
      readonly number: number;
      readonly count: number;
    }
  | { readonly kind: 'end'; readonly key: string };

/**
 * The screens of a lesson, in order: what to lay ready, each part that was not left out, the
 * questions one by one after the talk begins, and the end. Without the talk no question is asked.
 */
export const runSteps = ({ plan, changes, questions }: Lesson): readonly RunStep[] => {
  const parts = plan.parts.filter(({ part }) => changes.texts[part] !== '');
  return [
    { kind: 'ready', key: 'ready' },
    ...parts.flatMap(({ part, minutes, sitting }, index): readonly RunStep[] => [
      {
        ...{ kind: 'part', key: part, part, minutes },
        beginsSitting: sitting === 2 && parts[index - 1]?.sitting === 1,
      },
      ...(part === 'talk'
        ? questions.map((question, at) => ({
            ...{ kind: 'question' as const, key: `question-${at + 1}`, question },
            ...{ number: at + 1, count: questions.length },
          }))
        : []),
    ]),
    { kind: 'end', key: 'end' },
  ];
};

/** Where a kept place lies now: at its own screen, or at the start where that is gone. */
export const indexOfStep = (steps: readonly RunStep[], key: string | null): number =>
  Math.max(
    0,
    steps.findIndex((step) => step.key === key),
  );
