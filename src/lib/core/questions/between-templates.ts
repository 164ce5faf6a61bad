import { howManyMoreOfKind } from './how-many-more-of-kind';
import { howMuchTaller } from './how-much-taller';
import { howManyTogether } from './how-many-together';
import { howManyInAll } from './how-many-in-all';
import { whichDaysApart } from './which-days-apart';
import { putInOrder } from './put-in-order';
import { whenGrewMost } from './when-grew-most';
import { howMuchEachDay } from './how-much-each-day';
import { whichCameMostOften } from './which-came-most-often';
import { howFarApart } from './how-far-apart';
import { howManyOrMore } from './how-many-or-more';
import { howManyToReach } from './how-many-to-reach';
import { whoLeads } from './who-leads';
import { howManyByKey } from './how-many-by-key';
import type { QuestionTemplate } from './question';

/** The templates of this level, in order of their ids. Not part of the public door. */
export const betweenTemplates: readonly QuestionTemplate[] = [
  howManyMoreOfKind,
  howMuchTaller,
  howManyTogether,
  howManyInAll,
  whichDaysApart,
  putInOrder,
  whenGrewMost,
  howMuchEachDay,
  whichCameMostOften,
  howFarApart,
  howManyOrMore,
  howManyToReach,
  whoLeads,
  howManyByKey,
];
