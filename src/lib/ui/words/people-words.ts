import type { Ending, Hand, Role } from '#core/journal';

export const roleWords: Readonly<Record<Role, string>> = {
  child: 'A child',
  'grown-up': 'A grown-up',
};

export const handWords: Readonly<Record<Hand, string>> = {
  right: 'The right hand',
  left: 'The left hand',
};

export const endingWords: Readonly<Record<Ending, string>> = {
  lost: 'lost',
  finished: 'finished',
};
