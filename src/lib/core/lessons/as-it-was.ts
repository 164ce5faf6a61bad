import type { CivilDay } from '#core/calendar';
import type { Notebook, SpecimenLog, Stamp } from '#core/journal';

/**
 * The logs as they stood at a moment, with what was put right since: lines written later are left
 * out, while corrections, lines taken back and doubts answered count, whenever that was. So what
 * was measured or guessed after a lesson was printed does not change its questions, and a number
 * put right does. What ended on a later day had not ended. A difference noticed in a fair test
 * counts, because it was there before. Not part of the public door.
 */
export const asItWas = (notebook: Notebook, moment: Stamp, day: CivilDay): Notebook => ({
  ...notebook,
  investigations: mapped(notebook.investigations, (each) => notEndedAfter(each, day)),
  specimens: mapped(notebook.specimens, (each) => notEndedAfter(each, day)),
  logBySpecimen: mapped(notebook.logBySpecimen, (log) => logUntil(log, moment)),
  estimates: mapped(notebook.estimates, (lines) => until(lines, moment)),
  looks: mapped(notebook.looks, (lines) => until(lines, moment)),
  otherSides: new Map([...notebook.otherSides].filter(([, { at }]) => at <= moment)),
});

const mapped = <Key, Value>(
  map: ReadonlyMap<Key, Value>,
  change: (value: Value) => Value,
): ReadonlyMap<Key, Value> => new Map([...map].map(([key, value]) => [key, change(value)]));

const notEndedAfter = <Each extends { readonly ended: { readonly day: CivilDay } | null }>(
  each: Each,
  day: CivilDay,
): Each => (each.ended && each.ended.day > day ? { ...each, ended: null } : each);

const logUntil = (log: SpecimenLog, moment: Stamp): SpecimenLog => ({
  readings: until(log.readings, moment),
  dayMarks: until(log.dayMarks, moment),
  kindNotes: until(log.kindNotes, moment),
});

const until = <Each extends { readonly at: Stamp }>(
  lines: readonly Each[],
  moment: Stamp,
): readonly Each[] => lines.filter(({ at }) => at <= moment);
