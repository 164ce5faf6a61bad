import type { WordId } from '#core/lessons';
import type { WordPictureOf } from './word-pictures';

/** Pictures of the words that come with a purpose of their own kind. */
export const purposeWordPictures: Readonly<Partial<Record<WordId, WordPictureOf>>> = {
  jump: {
    parts: [
      { path: 'M3 40H57M9 37V43M23 37V43M37 37V43M51 37V43', look: 'light' },
      { path: 'M9 36C18 12 42 12 51 35M51 35l-6 -2.5M51 35l0.5 -6.5', look: 'strong' },
    ],
    letters: [
      { x: 9, y: 49, text: '4', size: 6 },
      { x: 51, y: 49, text: '7', size: 6 },
      { x: 30, y: 14, text: '+ 3', size: 8 },
    ],
  },
  difference: {
    parts: [
      { path: 'M5 46H56M12 46V26H24V46M34 46V8H46V46', look: 'light' },
      { path: 'M24 26H52', look: 'dashed' },
      { path: 'M34 8H46V26H34Z', look: 'filled' },
    ],
    letters: [],
  },
  inch: {
    parts: [
      { path: 'M2 16H58V34H2Z', look: 'light' },
      { path: 'M6 16V26M46 16V26M26 16V22M16 16V20M36 16V20', look: 'strong' },
      { path: 'M6 11H46M6 9V13M46 9V13', look: 'strong' },
    ],
    letters: [{ x: 26, y: 7, text: '1 inch', size: 7 }],
  },
  centimetre: {
    parts: [
      { path: 'M2 16H58V34H2Z', look: 'light' },
      { path: 'M6 16V24M22 16V24M38 16V24M54 16V24', look: 'strong' },
      { path: 'M6 11H22M6 9V13M22 9V13', look: 'strong' },
    ],
    letters: [{ x: 14, y: 7, text: '1 cm', size: 7 }],
  },
  guess: {
    parts: [
      { path: 'M5 46H56M34 46V14H48V46', look: 'light' },
      { path: 'M10 46V8H24V46', look: 'dashed' },
    ],
    letters: [{ x: 17, y: 31, text: '?', size: 14 }],
  },
  about: {
    parts: [
      { path: 'M3 32H57M12 29V35M30 29V35M48 29V35', look: 'strong' },
      { path: 'M20 26H40', look: 'dashed' },
      { path: 'M33 26V15', look: 'strong' },
      { path: 'M33 26l-2.5 -4M33 26l2.5 -4', look: 'strong' },
    ],
    letters: [
      { x: 12, y: 43, text: '4', size: 7 },
      { x: 30, y: 43, text: '5', size: 7 },
      { x: 48, y: 43, text: '6', size: 7 },
    ],
  },
  'fair-test': {
    parts: [
      { path: 'M8 34H24L21 46H11ZM36 34H52L49 46H39Z', look: 'light' },
      { path: 'M16 34V24M16 26l-5 -4M16 26l5 -4M44 34V24M44 26l-5 -4M44 26l5 -4', look: 'light' },
      {
        path: 'M16 7m-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0 -7 0M16 13v2M9 7h-2M25 7h-2',
        look: 'strong',
      },
      { path: 'M39 3H49V12H39Z', look: 'filled' },
    ],
    letters: [],
  },
  change: {
    parts: [
      { path: 'M5 46H56M10 46V30H20V46M40 46V12H50V46', look: 'light' },
      { path: 'M22 27L37 14M37 14l-5.5 1M37 14l-1.5 5.5', look: 'strong' },
    ],
    letters: [],
  },
};
