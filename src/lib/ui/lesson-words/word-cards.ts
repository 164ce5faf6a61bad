import type { WordId } from '#core/lessons';

/** A word of the day, and what it means in a child's words. */
export interface WordCard {
  readonly word: string;
  readonly says: string;
}

export const wordText = (id: WordId): WordCard => cards[id];

const cards: Readonly<Record<WordId, WordCard>> = {
  row: { word: 'row', says: 'Things in one line, side by side.' },
  key: { word: 'key', says: 'It tells what each mark stands for.' },
  scale: { word: 'scale', says: 'The numbers on the side. Each jump is the same.' },
  bar: { word: 'bar', says: 'A strip. It goes from 0 up to its number.' },
  category: { word: 'category', says: 'One kind of thing. Sun is one kind. Rain is one.' },
  'number-line': { word: 'number line', says: 'A line with numbers. It looks like a ruler.' },
  unit: { word: 'unit', says: 'What we measure with. Each one is the same size.' },
  point: { word: 'point', says: 'A dot. It shows one number at one time.' },
  gap: { word: 'gap', says: 'An empty place. We did not measure then.' },
  join: { word: 'join', says: 'A line from one point to the next.' },
  jump: { word: 'jump', says: 'How far it is from one number to the next.' },
  difference: { word: 'difference', says: 'How much more one is than the other.' },
  inch: { word: 'inch', says: 'A unit on the ruler. It is the big one.' },
  centimetre: { word: 'centimetre', says: 'A unit on the ruler. It is the small one.' },
  guess: { word: 'guess', says: 'What we think it is before we measure.' },
  about: { word: 'about', says: 'Close to a number. It may be a bit off.' },
  'fair-test': { word: 'fair test', says: 'We change one thing. We keep the rest the same.' },
  change: { word: 'change', says: 'It is more now, or it is less.' },
};
