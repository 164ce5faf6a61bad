import type { Caution } from '#core/lessons';

export const localAdvice = 'Local advice comes first: follow the rules of where you live.';

/** The sentences of the cautions that stand where a reading is taken. */
export const readingCautionWords = {
  sun: 'Do not look at the sun.',
  thunder: 'If you hear thunder, go inside.',
} as const satisfies Readonly<Partial<Record<Caution, string>>>;

/** The one sentence a child sees beside the picture, where a reading is taken. */
export const childCautionWords: Readonly<Partial<Record<Caution, string>>> = readingCautionWords;
