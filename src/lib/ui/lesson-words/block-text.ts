import type { Lesson, LessonBlock, LessonPlan } from '#core/lessons';
import { drawText } from './draw-part-words';
import { materialText } from './material-words';
import { openerText } from './opener-words';
import { acceptText, planLine, stuckIdea } from './plan-lines';
import { teachText } from './teach-words';
import { watchForText } from './watch-words';
import { wordText } from './word-cards';

/**
 * What a part of a plan says, line by line: the grown-up's own words where there are some, else the
 * plan's. Nothing for a part that was left out, or that a short lesson does not have.
 */
export const blockText = (lesson: Lesson, block: LessonBlock): readonly string[] => {
  const own = lesson.changes.texts[block];
  if (own !== undefined) {
    return own
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => line !== '');
  }
  return planned(lesson, block);
};

const planned = (lesson: Lesson, block: LessonBlock): readonly string[] => {
  const { plan, facts } = lesson;
  switch (block) {
    case 'materials':
      return plan.materials.map(materialText);
    case 'words':
      return plan.words.map((id) => `${wordText(id).word}: ${wordText(id).says}`);
    case 'accept':
      return plan.accept.flatMap((idea) =>
        idea === `accept-${plan.graph}` ? [acceptText[plan.graph]] : planLine(idea),
      );
    case 'if-stuck':
      return plan.ifStuck.flatMap((idea) =>
        idea === 'stuck-idea' ? [ideaLine(plan)] : planLine(idea),
      );
    case 'stop-when':
      return plan.stopWhen.flatMap(planLine);
    case 'watch-for':
      return plan.watchFor.map(watchForText);
    case 'teach':
      return hasPart(plan, 'teach') ? teachText(plan) : [];
    default: {
      const quantity = facts.series[0]?.investigation.quantity ?? 'length';
      return ideasOf(plan, block).flatMap((idea) => {
        if (block === 'opener') return openerText(idea, quantity);
        return block === 'draw' ? drawText(idea, lesson) : planLine(idea);
      });
    }
  }
};

const ideaLine = ({ feature }: LessonPlan): string =>
  `Then name the idea as a question, never the number: “${stuckIdea[feature]}”`;

const ideasOf = ({ parts }: LessonPlan, block: LessonBlock): readonly string[] =>
  parts.find(({ part }) => part === block)?.ideas ?? [];

const hasPart = ({ parts }: LessonPlan, block: LessonBlock): boolean =>
  parts.some(({ part }) => part === block);
