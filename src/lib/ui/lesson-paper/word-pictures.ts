import type { WordId } from '#core/lessons';
import { purposeWordPictures } from './purpose-word-pictures';

/** A part of a small picture: what the word means is drawn strong, what is around it light. */
export interface PicturePart {
  readonly path: string;
  readonly look: 'light' | 'strong' | 'filled' | 'dashed';
}

export interface WordPictureOf {
  readonly parts: readonly PicturePart[];
  readonly letters: readonly Letter[];
}

/**
 * A picture of a word, 60 wide and 50 high: the graph it belongs to, drawn lightly, with the thing
 * itself drawn strong. Letters stand in it only where the thing is made of them.
 */
export const wordPictures: Readonly<Partial<Record<WordId, WordPictureOf>>> = {
  ...purposeWordPictures,
  row: {
    parts: [
      { path: suns([12, 22, 32, 42], 25), look: 'strong' },
      { path: suns([12, 22], 11) + suns([12, 22, 32], 39), look: 'light' },
      { path: 'M5 2V48', look: 'light' },
      { path: 'M7 18H57V32H7Z', look: 'dashed' },
    ],
    letters: [],
  },
  key: {
    parts: [
      { path: 'M4 14H56V36H4Z', look: 'strong' },
      { path: suns([14], 25), look: 'strong' },
    ],
    letters: [{ x: 39.5, y: 27.5, text: '= 2 days', size: 6.5 }],
  },
  scale: {
    parts: [
      { path: 'M18 4V44', look: 'strong' },
      { path: ticks([4, 14, 24, 34, 44], 14, 18), look: 'strong' },
      { path: 'M18 44H56M24 44V24H32V44M40 44V14H48V44', look: 'light' },
    ],
    letters: [0, 1, 2, 3, 4].map((number) => ({
      ...{ x: 8, y: 46.4 - 10 * number, text: String(number), size: 7 },
    })),
  },
  bar: {
    parts: [
      { path: 'M8 3V46H58', look: 'light' },
      { path: 'M15 46V30H25V46ZM47 46V22H57V46Z', look: 'light' },
      { path: 'M31 46V8H41V46Z', look: 'filled' },
    ],
    letters: [],
  },
  category: {
    parts: [
      { path: 'M6 3V34H58M13 34V14H25V34M37 34V22H49V34', look: 'light' },
      { path: 'M8 37H30V48H8ZM32 37H58V48H32Z', look: 'strong' },
    ],
    letters: [
      { x: 19, y: 44.8, text: 'sun', size: 7 },
      { x: 45, y: 44.8, text: 'cloud', size: 7 },
    ],
  },
  'number-line': {
    parts: [
      { path: 'M2 34H58', look: 'strong' },
      { path: 'M8 31V37M19 31V37M30 31V37M41 31V37M52 31V37', look: 'strong' },
      { path: crosses([19, 30, 30, 41], [25, 25, 15, 25]), look: 'light' },
    ],
    letters: [1, 2, 3, 4, 5].map((number) => ({
      ...{ x: 11 * number - 3, y: 45, text: String(number), size: 7 },
    })),
  },
  unit: {
    parts: [
      { path: 'M4 18H56V34H4Z', look: 'light' },
      { path: 'M17 18V25M43 18V25', look: 'light' },
      { path: 'M17 18H30V34H17Z', look: 'filled' },
      { path: 'M17 12H30M17 10V14M30 10V14', look: 'strong' },
    ],
    letters: [{ x: 23.5, y: 8, text: '1 cm', size: 7 }],
  },
  point: {
    parts: [
      { path: 'M8 3V46H58', look: 'light' },
      { path: 'M30 46V20H8', look: 'dashed' },
      { path: dot(30, 20, 3), look: 'filled' },
      { path: dot(18, 34, 1.4) + dot(44, 12, 1.4), look: 'light' },
    ],
    letters: [],
  },
  gap: {
    parts: [
      { path: 'M6 46H58M14 44V48M24 44V48M34 44V48M44 44V48M54 44V48', look: 'light' },
      { path: 'M9 46V32H19V46ZM19 46V26H29V46ZM49 46V8H59V46Z', look: 'light' },
      { path: 'M31 44V6H47V44', look: 'dashed' },
    ],
    letters: [{ x: 39, y: 30, text: '?', size: 14 }],
  },
  join: {
    parts: [
      { path: 'M6 3V46H58', look: 'light' },
      { path: 'M14 38L26 32L38 16L50 10', look: 'strong' },
      { path: dot(14, 38, 2) + dot(26, 32, 2) + dot(38, 16, 2) + dot(50, 10, 2), look: 'light' },
    ],
    letters: [],
  },
  jump: {
    parts: [
      { path: 'M2 34H58M8 31V37M19 31V37M30 31V37M41 31V37M52 31V37', look: 'light' },
      { path: 'M19 29C22 10 38 10 41 29M41 29l-5 -3M41 29l2 -6', look: 'strong' },
    ],
    letters: [1, 2, 3, 4, 5].map((number) => ({
      ...{ x: 11 * number - 3, y: 45, text: String(number), size: 7 },
    })),
  },
  difference: {
    parts: [
      { path: 'M6 46H58M12 46V30H24V46M32 46V12H44V46', look: 'light' },
      { path: 'M24 30H48', look: 'dashed' },
      { path: 'M47 12H53V30H47', look: 'strong' },
    ],
    letters: [{ x: 57, y: 24, text: '?', size: 9 }],
  },
  inch: {
    parts: [
      { path: 'M3 20H57V36H3Z', look: 'light' },
      { path: 'M5 20H30.4V36H5Z', look: 'filled' },
      { path: 'M5 14H30.4M5 12V16M30.4 12V16', look: 'strong' },
    ],
    letters: [{ x: 17.7, y: 10, text: '1 in', size: 7 }],
  },
  centimetre: {
    parts: [
      { path: 'M3 20H57V36H3Z', look: 'light' },
      { path: 'M15 20V26M25 20V26M35 20V26M45 20V26M55 20V26', look: 'light' },
      { path: 'M5 20H15V36H5Z', look: 'filled' },
      { path: 'M5 14H15M5 12V16M15 12V16', look: 'strong' },
    ],
    letters: [{ x: 12, y: 10, text: '1 cm', size: 7 }],
  },
  guess: {
    parts: [
      { path: 'M8 3V46H58', look: 'light' },
      { path: 'M24 46V22H38V46', look: 'light' },
      { path: 'M18 14H44', look: 'dashed' },
    ],
    letters: [{ x: 50, y: 18, text: '?', size: 14 }],
  },
  about: {
    parts: [
      { path: 'M4 34H56M12 31V37M30 31V37M48 31V37', look: 'light' },
      { path: 'M34 30V14M34 30l-3 -5M34 30l3 -5', look: 'strong' },
    ],
    letters: [6, 7, 8].map((number) => ({
      ...{ x: 18 * number - 96, y: 45, text: String(number), size: 7 },
    })),
  },
  'fair-test': {
    parts: [
      { path: 'M8 36H24L21 48H11ZM36 36H52L49 48H39Z', look: 'light' },
      { path: 'M16 36V20M16 27l6 -4M16 30l-6 -4M44 36V20M44 27l6 -4M44 30l-6 -4', look: 'light' },
      { path: suns([16], 9), look: 'strong' },
      { path: 'M36 4H52V14H36Z', look: 'dashed' },
    ],
    letters: [],
  },
  change: {
    parts: [
      { path: 'M6 46H58', look: 'light' },
      { path: 'M10 46V34H20V46', look: 'light' },
      { path: 'M42 46V10H52V46Z', look: 'filled' },
      { path: 'M24 32L36 20M36 20h-6M36 20v6', look: 'strong' },
    ],
    letters: [],
  },
};

export interface Letter {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
}

function dot(x: number, y: number, radius: number): string {
  return `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0Z`;
}

function suns(xs: readonly number[], y: number): string {
  return xs
    .map(
      (x) =>
        `${dot(x, y, 2.2)}M${x} ${y - 4.6}v1.4M${x} ${y + 3.2}v1.4M${x - 4.6} ${y}h1.4M${x + 3.2} ${y}h1.4`,
    )
    .join('');
}

function ticks(ys: readonly number[], from: number, to: number): string {
  return ys.map((y) => `M${from} ${y}H${to}`).join('');
}

function crosses(xs: readonly number[], ys: readonly number[]): string {
  return xs.map((x, index) => `M${x - 3} ${ys[index]! - 3}l6 6m0 -6l-6 6`).join('');
}
