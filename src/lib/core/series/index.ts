export { questionsAboutEntry, rulerExactFor, type EntryQuestion } from './entry-questions';
export { quietDays, seriesOf } from './series';
export type { Series, SeriesDay, SeriesPoint } from './series';
