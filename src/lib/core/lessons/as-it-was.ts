import type { Notebook, SpecimenLog, Stamp } from '#core/journal';

/**
 * The logs as they stood at a moment, with what was put right since: lines written later are left
 * out, while corrections and lines taken back count, whenever that was. So what was measured after
 * a lesson was printed does not change its questions, and a number put right does. Not part of the
 * public door.
 */
export const asItWas = (notebook: Notebook, moment: Stamp): Notebook => ({
  ...notebook,
  logBySpecimen: new Map(
    [...notebook.logBySpecimen].map(([id, log]) => [id, logUntil(log, moment)]),
  ),
});

const logUntil = (log: SpecimenLog, moment: Stamp): SpecimenLog => ({
  readings: until(log.readings, moment),
  dayMarks: until(log.dayMarks, moment),
  kindNotes: until(log.kindNotes, moment),
});

const until = <Each extends { readonly at: Stamp }>(
  lines: readonly Each[],
  moment: Stamp,
): readonly Each[] => lines.filter(({ at }) => at <= moment);
