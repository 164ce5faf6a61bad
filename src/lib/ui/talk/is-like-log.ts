import { lookAtDrawing, type Drawing } from '#core/graphs';
import type { LessonFacts } from '#core/questions';

/** Whether a child's drawing shows what the log has; matters of taste are its own. */
export const isLikeLog = ({ right }: LessonFacts, drawing: Drawing): boolean =>
  lookAtDrawing(right, drawing).mistakes.every(({ isSoft }) => isSoft);
