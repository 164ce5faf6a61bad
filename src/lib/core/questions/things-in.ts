import type { AskedQuestion, Told } from './question';

/**
 * The days, times, kinds, plants and numbers that a question names, each by a key of its own; days
 * that are its answer too. What every question of a graph has in common is left out. Not part of the
 * public door.
 */
export const thingsIn = ({
  blanks,
  answer,
}: Pick<AskedQuestion, 'blanks' | 'answer'>): readonly string[] => [
  ...Object.entries(blanks).flatMap(([name, told]) => (inCommon.has(name) ? [] : keysOf(told))),
  ...(daysKinds.has(answer.kind) ? keysOf(answer) : []),
];

/** Blanks that say what the graph is of, and what no child reads. */
export const inCommon: ReadonlySet<string> = new Set([
  ...['counted', 'measured', 'unit', 'gap'],
  ...['practice', 'stage', 'seed'],
]);

const daysKinds: ReadonlySet<Told['kind']> = new Set(['day', 'days', 'interval']);

const keysOf = (told: Told): readonly string[] => {
  switch (told.kind) {
    case 'day':
      return [`day ${told.day}`];
    case 'days':
      return told.days.map((day) => `day ${day}`);
    case 'interval':
      return [`day ${told.from}`, `day ${told.to}`];
    case 'time':
      return [`time ${told.time}`];
    case 'word':
      return [`word ${told.word}`];
    case 'length':
      return [`length ${told.exact}`];
    case 'order':
      return told.things.flatMap(keysOf);
    case 'count':
    case 'between':
    case 'idea':
      return [];
  }
};
