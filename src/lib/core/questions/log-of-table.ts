import type { TableSource } from '#core/graphs';
import { weatherWords } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';
import type { Series, SeriesDay } from '#core/series';
import type { LessonFacts } from './lesson-facts';
import { aWord } from './told';

/** The days of a log that the table is of. Not part of the public door. */
export const daysInTable = ({ choice }: LessonFacts, { days }: Series): readonly SeriesDay[] =>
  days.filter(({ day }) => day >= choice.from && day <= choice.to);

/** Whether the table is of heights or lengths day by day. Not part of the public door. */
export const isOfHeights = ({ choice }: LessonFacts): boolean => heights.has(choice.source);

/** Whether each number of the table is one day's. Not part of the public door. */
export const isOfSingleDays = ({ choice }: LessonFacts): boolean =>
  heights.has(choice.source) || amountsOfDays.has(choice.source);

/** Whether the table is of the weather, or of rain. Not part of the public door. */
export const isOfWeather = ({ choice, series }: LessonFacts): boolean => {
  const { source } = choice;
  if (source === 'weather-days' || source === 'wet-days') return true;
  const investigation = series[0]?.investigation;
  if (source === 'kind-days') {
    return weatherWords.some((each) => investigation?.kinds.includes(each));
  }
  return investigation?.quantity === 'rain' && source !== 'state-days';
};

/**
 * Every number of the four newest days with one until today, where nobody doubts any: the three
 * growths of late hang on them. Not part of the public door.
 */
export const newestSure = ({ doubted, today }: LessonFacts, { points }: Series) => {
  const known = points.filter(({ day }) => day <= today);
  const days = [...new Set(known.map(({ day }) => day))].slice(-4);
  const newest = known.filter(({ day }) => days.includes(day));
  return newest.some(({ reading }) => doubted.has(reading)) ? null : newest;
};

/** Whether all were read in one unit, to one mark. Not part of the public door. */
export const areAlike = (all: readonly { readonly unit: Unit; readonly mark: MarkId }[]): boolean =>
  new Set(all.map(({ unit, mark }) => `${unit} ${mark}`)).size === 1;

/** The blanks that say which log: its name, and whether it is tall or long. Not in the door. */
export const ofLog = ({ specimen, investigation }: Series) => ({
  specimen: aWord(specimen.name),
  measured: aWord(investigation.quantity === 'plant-height' ? 'height' : 'length'),
});

/** Amounts of single days that are no heights: a graph of growth does not show how tall it was. */
const amountsOfDays: ReadonlySet<TableSource> = new Set([
  ...(['growth-amounts', 'rain-amounts', 'state-days'] as const),
]);

const heights: ReadonlySet<TableSource> = new Set([
  'day-values',
  'values-side-by-side',
  'days-in-order',
]);
