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
export { lessonPurposes, purposeIds, type LessonPurpose, type PurposeId } from './lesson-purpose';
export { practiceExample, type PracticeExample } from './practice-example';
export { purposesReady, type PurposeOffer } from './purposes-ready';
export {
  featureIds,
  teachingOf,
  type FeatureId,
  type MaterialId,
  type WordId,
} from './teaching-of';
