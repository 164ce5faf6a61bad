export { amountIn, type Amount } from './amount-in';
export { lengthAsThisWeek, thisWeekDays } from './as-this-week';
export {
  betweenNeighbours,
  type BetweenNeighbours,
  type BetweenNeighboursError,
  type Neighbour,
} from './between-neighbours';
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
export { comparablePoints } from './comparable-points';
export { fairShare, type FairShare, type FairShareError } from './fair-share';
export {
  fastestStretch,
  fastestWindow,
  type FastestStretch,
  type FastestStretchError,
  type TooFewStretches,
} from './fastest-stretch';
export { furthestReading, type FurthestReading } from './furthest-reading';
export { middleOfDay, onePointPerDay, type GrowthPoint } from './growth-point';
export {
  guessesForChild,
  guessesGettingCloser,
  guessesNeeded,
  type GuessesCloser,
} from './guesses-getting-closer';
export { latestChange, longEnoughChanges, type LatestChangeError } from './latest-change';
export { largestLead, leadTable, type LeadRow } from './lead-table';
export { leastSquares, rSquaredOf } from './least-squares';
export { lineAt, residualsOf, type Line } from './line';
export { median } from './median';
export { medianOfSlopes } from './median-of-slopes';
export { minimumGapDays } from './minimum-gap-days';
export { decimalText, perDayText } from './per-day-text';
export { predictionBand, type PredictionBand, type PredictionBandError } from './prediction-band';
export {
  longestLookAheadDays,
  predictableQuantities,
  predictionOffer,
  type PredictionDay,
  type PredictionOfferError,
  type TooLittleToPredict,
} from './prediction-offer';
export {
  predictionsOf,
  sealsOf,
  type OpenPrediction,
  type Prediction,
  type PredictionUnderSeal,
  type Seal,
} from './predictions-of';
export { rainTotals, type RainPeriod, type RainTotal } from './rain-totals';
export { shadowDays, type ShadowDay } from './shadow-days';
export { shapeOf, type Shape } from './shape';
export {
  checkShadow,
  noonShadow,
  type NoonShadow,
  type NoonShadowError,
  type ShadowCheck,
} from './sun-check';
export { toldUnits, unitReadIn } from './told-units';
export { trendNeeds, trendOf, type Trend, type TrendError, type TrendLine } from './trend';
export {
  trendWithAndWithout,
  type TrendTwice,
  type TrendTwiceError,
} from './trend-with-and-without';
export type { UndefinedStatistic } from './undefined-statistic';
export { wetDays, type WetDays } from './wet-days';
