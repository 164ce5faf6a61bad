import type { GraphTable } from './graph-table';
import type { TableSource } from './table-choice';

/** The form of the table each source makes. Not part of the public door. */
export const formBySource: Readonly<Record<TableSource, GraphTable['form']>> = {
  'kind-days': 'counts',
  'weather-days': 'counts',
  'wet-days': 'counts',
  'growth-days': 'counts',
  'state-days': 'counts',
  'specimen-readings': 'counts',
  'day-values': 'values',
  'values-side-by-side': 'values',
  'week-values': 'values',
  'hour-values': 'values',
  'each-specimen': 'measures',
  'reads-of-one': 'measures',
  'growth-amounts': 'measures',
  'rain-amounts': 'measures',
  'days-in-order': 'times',
  'hours-in-order': 'times',
};
