import type { TableSource } from '#core/graphs';
import type { Lesson, PurposeId } from '#core/lessons';
import type { Quantity } from '#core/journal';

/** What a lesson is called: the grown-up's own name for it, or what it is about and of whom. */
export const lessonTitle = ({ changes, purpose, facts }: Lesson): string => {
  if (changes.title) return changes.title;
  const { choice, graph, series, notebook } = facts;
  const investigation = notebook.investigations.get(choice.investigation);
  const quantity = investigation?.quantity ?? 'length';
  const names = series.map(({ specimen }) => specimen.name);
  const whose = names.length === 1 && !ofAll.has(choice.source) ? names[0] : investigation?.title;
  const about =
    aboutByPurpose[purpose.id] ?? `${graphs[graph]} of ${aboutTable(choice.source, quantity)}`;
  return whose ? `${about}: ${whose}` : about;
};

const ofAll: ReadonlySet<TableSource> = new Set([
  ...(['weather-days', 'specimen-readings', 'each-specimen', 'kind-days'] as const),
]);

const graphs = {
  'picture-graph': 'Picture graph',
  'bar-graph': 'Bar graph',
  'line-plot': 'Line plot',
  'line-graph': 'Line graph',
} as const;

const aboutByPurpose: Readonly<Partial<Record<PurposeId, string>>> = {
  'how-much-taller': 'How much taller',
  'two-units-of-one-thing': 'One length, two units',
  'guess-before-measuring': 'Guess, then measure',
  'fair-test-of-two': 'Our fair test',
};

const measured: Readonly<Record<Quantity, string>> = {
  'plant-height': 'height',
  rain: 'rain',
  shadow: 'shadow',
  length: 'length',
  'daily-kind': 'kind',
};

const aboutTable = (source: TableSource, quantity: Quantity): string => {
  switch (source) {
    case 'kind-days':
      return 'the kinds of days';
    case 'weather-days':
      return 'the weather';
    case 'wet-days':
      return 'wet days and dry days';
    case 'growth-days':
      return 'the days it grew';
    case 'state-days':
      return 'the days we measured';
    case 'specimen-readings':
      return 'how often we measured each';
    case 'day-values':
      return `each day’s ${measured[quantity]}`;
    case 'values-side-by-side':
      return 'two plants, day by day';
    case 'week-values':
      return 'each week’s rain';
    case 'hour-values':
      return 'the shadow by the hour';
    case 'each-specimen':
      return `the ${measured[quantity]} of each`;
    case 'reads-of-one':
      return 'one thing measured many times';
    case 'growth-amounts':
      return 'how much it grew in a day';
    case 'rain-amounts':
      return 'how much it rained in a day';
    case 'days-in-order':
      return `${measured[quantity]} through the days`;
    case 'hours-in-order':
      return 'the shadow through the day';
  }
};
