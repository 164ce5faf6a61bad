import { lessonBlocks, type Lesson } from '#core/lessons';
import type { AskedQuestion } from '#core/questions';
import { answerText, easierText, questionText, slipText, stretchText } from '#ui/ladder-words';
import { blockHeading, blockText, lessonTitle, purposeText, standardText } from '#ui/lesson-words';
import type { StandardCode } from '#core/graphs';

/** A lesson as a page that a person can read: what the golden files hold. */
export const planAsText = (lesson: Lesson, standards: readonly StandardCode[]): string => {
  const { plan, record } = lesson;
  const partOf = (block: string) => plan.parts.find(({ part }) => part === block);
  const blocks = lessonBlocks.flatMap((block) => {
    const part = partOf(block);
    const lines = blockText(lesson, block);
    if (lines.length === 0) return [];
    const minutes = part
      ? ` (${part.minutes} ${part.minutes === 1 ? 'minute' : 'minutes'}${part.sitting === 2 ? ', second sitting' : ''})`
      : '';
    return [
      [`## ${blockHeading(block)}${minutes}`, ...lines.map((line) => `- ${line}`)].join('\n'),
    ];
  });
  return [
    `# ${lessonTitle(lesson)}`,
    `${purposeText(plan.purpose)}. ${record.minutes} minutes, ${record.stage}.`,
    standards.map((code) => `${code} ${standardText(code)}`).join('\n'),
    ...blocks,
    [
      '## Questions',
      ...lesson.questions.flatMap((each) =>
        each.kind === 'asked' ? [asked(each.question)] : [`own ${each.text} = ${each.answer}`],
      ),
    ].join('\n'),
    ['## More questions', ...lesson.spare.map(asked)].join('\n'),
    `cautions: ${plan.cautions.join(', ') || 'none'}`,
    `missing: ${JSON.stringify(plan.questions.missing)}`,
  ].join('\n\n');
};

const asked = (question: AskedQuestion): string =>
  [
    `${question.template} ${question.level}: ${questionText(question)}`,
    `  = ${answerText(question.answer)}`,
    ...question.slips.map(({ told, shows }) => `  ~ ${answerText(told)}: ${slipText(shows)}`),
    `  easier: ${easierText(question)}`,
    `  further: ${stretchText(question)}`,
  ].join('\n');
