import { anotherSeedOfPacket } from './another-seed-of-packet';
import { asTallAsBy } from './as-tall-as-by';
import { couldItGrowAsMuchAgain } from './could-it-grow-as-much-again';
import { howTallNextTime } from './how-tall-next-time';
import { likelyKindTomorrow } from './likely-kind-tomorrow';
import { measuredAgainNow } from './measured-again-now';
import type { QuestionTemplate } from './question';
import { sameGraphNextMonth } from './same-graph-next-month';
import { whatWasItOnMissedDay } from './what-was-it-on-missed-day';
import { whenIsNextLeaf } from './when-is-next-leaf';
import { whereWillShadowBe } from './where-will-shadow-be';

/** The templates of this level, in order of their ids. Not part of the public door. */
export const beyondTemplates: readonly QuestionTemplate[] = [
  ...[howTallNextTime, whatWasItOnMissedDay, asTallAsBy, sameGraphNextMonth],
  ...[couldItGrowAsMuchAgain, anotherSeedOfPacket, measuredAgainNow, likelyKindTomorrow],
  ...[whereWillShadowBe, whenIsNextLeaf],
];
