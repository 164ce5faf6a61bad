import type { MaterialId } from '#core/lessons';

/** A thing to lay ready, from around the house. */
export const materialText = (material: MaterialId): string => materials[material];

const materials: Readonly<Record<MaterialId, string>> = {
  'squared-paper': 'Squared paper, or the printed frame of this lesson',
  pencil: 'A pencil for each of you',
  ruler: 'A ruler whose zero you can find',
  'own-table': 'Our own table: printed, or copied from the log',
  counters: 'Things to count with, one for each in the table: buttons, coins, or dry beans',
  strips: 'Strips of paper or string, and scissors: an old envelope will do',
  'number-line': 'A number line from 0: masking tape on the table, with a mark for each number',
  'two-sided-ruler':
    'A ruler with centimetres on one side and inches on the other, whose zeros you can find',
  'two-colours': 'Two pencils of different colours',
  'sticky-notes': 'Scraps of paper to write numbers on, and a cup to hide them under',
};
