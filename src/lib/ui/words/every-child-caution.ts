import type { Caution } from '#core/lessons';
import { readingCautionWords } from './child-cautions';

/**
 * A sentence for a child on each caution. Those that stand at readings are said the same here;
 * the others live apart, so that the page of today's reading does not carry them.
 */
export const everyChildCaution: Readonly<Record<Caution, string>> = {
  beans: 'Do not eat raw beans.',
  water: 'Pour the water out when you are done.',
  'treated-seed': 'Do not touch seeds with bright paint.',
  'small-parts': 'Keep seeds out of your nose, ears and mouth.',
  allergy: 'Tell a grown-up if your skin itches.',
  soil: 'Wash your hands when you are done.',
  'unknown-plants': 'Do not taste the leaves.',
  'heat-lamp': 'Do not touch the lamp. It is hot.',
  glass: 'If glass breaks, step back. Call a grown-up.',
  'sharp-tools': 'Let a grown-up cut.',
  outdoors: 'Stay where a grown-up can see you.',
  ...readingCautionWords,
};
