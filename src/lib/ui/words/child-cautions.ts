import type { Caution } from '#core/lessons';

export const localAdvice = 'Local advice comes first: follow the rules of where you live.';

/** The one sentence a child sees beside the picture, where the work can hurt at that moment. */
export const childCautionWords: Readonly<Partial<Record<Caution, string>>> = {
  sun: 'Do not look at the sun.',
  thunder: 'If you hear thunder, go inside.',
};
