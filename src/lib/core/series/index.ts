export { questionsAboutCorrection } from './correction-questions';
export { questionsAboutEntry, rulerExactFor, type EntryQuestion } from './entry-questions';
export { notesOfSeries } from './extra-lines';
export { logMonths, type LogMonth } from './log-months';
export type * from './log-row';
export { foldedOverDays, logRows, openedUpToDays } from './log-rows';
export { inOtherSystem } from './other-system';
export { quietDays, seriesOf } from './series';
export type { Series, SeriesDay, SeriesPoint } from './series';
