export { betweenMarksTask, wholesAround } from './between-marks-task';
export { cautions, cautionsAtReading, type Caution } from './caution';
export {
  cautionPlaces,
  cautionsAtSetUp,
  cautionsDue,
  mayBePutAway,
  type CautionFacts,
  type CautionPlace,
} from './cautions-due';
export { judgeRulerTask, type RulerJudgement } from './judge-ruler-task';
export { offZeroTask, offZeroTaskOf, type OffZeroError, type OffZeroPlace } from './off-zero-task';
export type { RulerSlip, RulerTask } from './ruler-task';
export { starters, unitAndMark, unitFamilies, type Starter, type UnitFamily } from './starter';
export { zeroCheck, zeroFixes, type ZeroCheck, type ZeroFix } from './zero-check';
export {
  decodeLessonChanges,
  lessonBlocks,
  type LessonBlock,
  type LessonChanges,
  type LessonChangesError,
  type OwnLessonQuestion,
} from './lesson-changes';
export { lessonDrafts, type LessonAbout } from './lesson-drafts';
export { lessonOf, type Lesson, type LessonError, type LessonQuestion } from './lesson-of';
export { otherQuestions } from './other-questions';
export { lessonParts, minutesOf, type LessonPartId } from './lesson-minutes';
export { lessonPlanOf, type LessonPlan, type LessonWish } from './lesson-plan';
export {
  lessonPurposes,
  purposeIds,
  type LessonPurpose,
  type PurposeId,
  type PurposeNeed,
} from './lesson-purpose';
export { practiceExample, type PracticeExample } from './practice-example';
export type { LessonMissing } from './purpose-needs';
export { purposesReady, type PurposeOffer, type PurposeTable } from './purposes-ready';
export { practiceStoryIds, type PracticeStoryId } from './practice-story';
export {
  featureIds,
  materialIds,
  teachingOf,
  wordIds,
  type FeatureId,
  type MaterialId,
  type WordId,
} from './teaching-of';
export {
  seenHow,
  type Evidence,
  type EvidenceOf,
  type EvidencePiece,
  type FoundEvidence,
  type SeenHow,
  type SkillEvidence,
  type UnreadEvidence,
} from './evidence';
export { evidenceDays, type EvidenceDay } from './evidence-days';
export { lessonsShowing, type LessonShowing } from './evidence-lessons';
export { evidenceOf } from './evidence-of';
export { keptSamples, samplesToKeep } from './evidence-samples';
export {
  furtherStandards,
  skillIds,
  skills,
  type DeedId,
  type FurtherStandard,
  type ReviewSign,
  type Skill,
  type SkillId,
  type SkillStandard,
} from './skill';
export { judgeSum, sumSlips, type SumJudged, type SumSlip } from './judge-sum';
export { answeredOn, chosenItem, reviewFor } from './review';
export type { ReviewOptions } from './review-desk';
export {
  schoolDayAfter,
  schoolDayBefore,
  schoolDayNumber,
  schoolWeekdaysOf,
  usualSchoolWeekdays,
} from './review-days';
export { decodeReviewItem, type ReviewItemError } from './review-decode';
export {
  reviewKinds,
  reviewPicks,
  reviewSheet,
  rulerName,
  type ReviewItem,
  type ReviewKind,
  type ReviewPick,
  type ReviewPlace,
  type ReviewTask,
} from './review-item';
export { logSumsOf } from './review-log-sums';
export { practiceSum } from './review-practice-sum';
export {
  isQuestionStanding,
  reviewFactsOf,
  type QuestionAbout,
  type ReviewQuestion,
} from './review-question';
export { reviewSeed } from './review-seed';
export {
  dueReviews,
  nextReviews,
  restSchoolDays,
  type NextReview,
  type ReviewDone,
} from './review-spacing';
export {
  isRegrouped,
  sumAnswer,
  sumName,
  sumRange,
  sumStories,
  sumThings,
  sumTold,
  sumUnknowns,
  type Sum,
  type SumStory,
  type SumThing,
  type SumUnknown,
} from './review-sum';
export {
  addedWithBlocks,
  blocksOf,
  takenFromBlocks,
  valueOfBlocks,
  type BlockDeed,
  type Blocks,
  type BlockStep,
} from './sum-blocks';
export { blockHelp, jumpHelp, takenAway, type JumpHelp } from './sum-help';
export { jumpsBetween, type Jump } from './sum-jumps';
