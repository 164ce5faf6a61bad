export { chanceOfSoFewRuns } from './chance-of-runs';
export {
  changesBetween,
  growthBetween,
  growthPerDay,
  perDayIn,
  type Change,
  type GrowthBetweenError,
  type PerDay,
} from './change';
export { fairShare, type FairShare, type FairShareError } from './fair-share';
export {
  fastestStretch,
  fastestWindow,
  type FastestStretch,
  type FastestStretchError,
  type TooFewStretches,
} from './fastest-stretch';
export { middleOfDay, onePointPerDay, type GrowthPoint } from './growth-point';
export { leastSquares, rSquaredOf } from './least-squares';
export { lineAt, residualsOf, type Line } from './line';
export { median } from './median';
export { medianOfSlopes } from './median-of-slopes';
export { minimumGapDays } from './minimum-gap-days';
export { shapeOf, type Shape } from './shape';
export { trendNeeds, trendOf, type Trend, type TrendError, type TrendLine } from './trend';
export type { UndefinedStatistic } from './undefined-statistic';
