import { howTallOnDay } from './how-tall-on-day';
import { howManyOfKind } from './how-many-of-kind';
import { whichDayMeasured } from './which-day-measured';
import { whatPictureMeans } from './what-picture-means';
import { whatCrossMeans } from './what-cross-means';
import { howOftenCame } from './how-often-came';
import { whatStepOnSide } from './what-step-on-side';
import { whichDaysMissing } from './which-days-missing';
import { zeroOrBlank } from './zero-or-blank';
import { howLongAtTime } from './how-long-at-time';
import type { QuestionTemplate } from './question';

/** The templates of this level, in order of their ids. Not part of the public door. */
export const readTemplates: readonly QuestionTemplate[] = [
  howTallOnDay,
  howManyOfKind,
  whichDayMeasured,
  whatPictureMeans,
  whatCrossMeans,
  howOftenCame,
  whatStepOnSide,
  whichDaysMissing,
  zeroOrBlank,
  howLongAtTime,
];
