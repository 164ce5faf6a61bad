import { careHandlers } from './care-handlers';
import type { EntryKind } from './entry-schema';
import type { FoldHandler } from './fold-handler';
import { logOf } from './fold-state';
import { lineOf } from './line';
import { teachingHandlers } from './teaching-handlers';

/**
 * What each kind of entry adds to the notebook. The effect of most kinds vanishes when they are
 * taken back; what a child wrote down (readings, days, words, notes) stays as a crossed-out line.
 */
export const foldHandlers: { readonly [Kind in EntryKind]: FoldHandler<Kind> } = {
  'notebook-begun': (state, entry, takenBack) => {
    if (!takenBack) state.title ??= entry.title;
  },
  'person-added': (state, entry, takenBack) => {
    if (takenBack || state.people.has(entry.person)) return;
    const { person: id, name, shape, colour, role, stage, hand } = entry;
    state.people.set(id, { id, name, shape, colour, role, stage, hand });
  },
  'person-changed': (state, entry, takenBack) => {
    const person = state.people.get(entry.person);
    if (!takenBack && person) state.people.set(person.id, changed(person, entry.to));
  },
  'investigation-begun': (state, entry, takenBack) => {
    if (takenBack || state.investigations.has(entry.investigation)) return;
    const { title, question, quantity, unit, mark, kinds, weekdays, where, tool, when } = entry;
    state.investigations.set(entry.investigation, {
      ...{ title, question, quantity, unit, mark, kinds, weekdays, where, tool, when },
      id: entry.investigation,
      origin: entry.origin,
      begunAt: entry.at,
      ended: null,
    });
  },
  'investigation-changed': (state, entry, takenBack) => {
    const investigation = state.investigations.get(entry.investigation);
    if (takenBack || !investigation) return;
    state.investigations.set(investigation.id, changed(investigation, entry.to));
  },
  'investigation-ended': (state, entry, takenBack) => {
    const investigation = state.investigations.get(entry.investigation);
    if (takenBack || !investigation) return;
    const found = entry.found === undefined ? {} : { found: entry.found };
    const ended = { day: entry.day, ...found };
    state.investigations.set(investigation.id, { ...investigation, ended });
  },
  'investigation-removed': (state, entry, takenBack) => {
    if (takenBack) return;
    const removals = state.removalsByInvestigation.get(entry.investigation);
    if (removals) removals.push(entry);
    else state.removalsByInvestigation.set(entry.investigation, [entry]);
  },
  'specimen-added': (state, entry, takenBack) => {
    if (takenBack || state.specimens.has(entry.specimen)) return;
    const { specimen: id, investigation, name, startedOn, standHeight } = entry;
    const stand = standHeight === undefined ? {} : { standHeight };
    state.specimens.set(id, { id, investigation, name, startedOn, ...stand, ended: null });
  },
  'specimen-ended': (state, entry, takenBack) => {
    const specimen = state.specimens.get(entry.specimen);
    if (takenBack || !specimen) return;
    const why = entry.why === undefined ? {} : { why: entry.why };
    const ended = { day: entry.day, how: entry.how, ...why };
    state.specimens.set(specimen.id, { ...specimen, ended });
  },
  'reading-taken': (state, entry, takenBack) => {
    state.readingsTaken.push({ entry, takenBack });
  },
  'reading-corrected': (state, entry, takenBack) => {
    if (takenBack) return;
    const corrections = state.correctionsByReading.get(entry.reading);
    if (corrections) corrections.push(entry);
    else state.correctionsByReading.set(entry.reading, [entry]);
  },
  'day-marked': (state, entry, takenBack) => {
    const { specimen, state: dayState, time, why } = entry;
    logOf(state, specimen).dayMarks.push({
      ...lineOf(entry, takenBack),
      specimen,
      state: dayState,
      ...(time === undefined ? {} : { time }),
      ...(why === undefined ? {} : { why }),
    });
  },
  'kind-noted': (state, entry, takenBack) => {
    const { specimen, word } = entry;
    logOf(state, specimen).kindNotes.push({ ...lineOf(entry, takenBack), specimen, word });
  },
  'note-written': (state, entry, takenBack) => {
    const { investigation, specimen, text } = entry;
    state.notes.push({
      ...lineOf(entry, takenBack),
      text,
      ...(investigation === undefined ? {} : { investigation }),
      ...(specimen === undefined ? {} : { specimen }),
    });
  },
  'drawing-begun': (state, entry, takenBack) => {
    if (takenBack || state.drawings.has(entry.drawing)) return;
    const { drawing: id, investigation, specimen, graph, choice, stage, level } = entry;
    state.drawings.set(id, {
      ...{ id, investigation, graph, choice, stage, level },
      ...(specimen === undefined ? {} : { specimen }),
      author: entry.author,
      begunAt: entry.at,
      versions: [],
      finishedAt: null,
    });
  },
  'drawing-saved': (state, entry, takenBack) => {
    if (takenBack) return;
    const saved = state.drawingSavedById.get(entry.drawing);
    if (saved) saved.push(entry);
    else state.drawingSavedById.set(entry.drawing, [entry]);
  },
  'drawing-finished': (state, entry, takenBack) => {
    if (!takenBack) state.drawingFinishedById.set(entry.drawing, entry);
  },
  ...careHandlers,
  ...teachingHandlers,
  'entry-taken-back': () => {},
};

/** An earlier state with only the fields named in a change replaced. */
function changed<Whole extends object>(whole: Whole, to: Partial<Whole>): Whole {
  const known = Object.entries(to).filter(([key, value]) => key in whole && value !== undefined);
  return { ...whole, ...(Object.fromEntries(known) as Partial<Whole>) };
}
