import type { careBodies } from './care-bodies';
import type { FoldHandler } from './fold-handler';
import { lineOf } from './line';

type CareKind = keyof typeof careBodies;

/** What each kind of careful measuring adds: see `foldHandlers` for the rules they share. */
export const careHandlers: { readonly [Kind in CareKind]: FoldHandler<Kind> } = {
  'estimate-made': ({ care }, entry, takenBack) => {
    const { specimen, time, measured, helper } = entry;
    listAt(care.estimates, specimen).push({
      ...{ ...lineOf(entry, takenBack), specimen, measured },
      ...(time === undefined ? {} : { time }),
      ...(helper === undefined ? {} : { helper }),
    });
  },
  'helper-length-measured': ({ care }, entry, takenBack) => {
    if (takenBack) return;
    const own = care.helperLengths.get(entry.person) ?? new Map();
    care.helperLengths.set(entry.person, own.set(entry.helper, entry.measured));
  },
  'other-side-read': ({ care }, entry, takenBack) => {
    const { id, at, author, measured } = entry;
    if (!takenBack) care.otherSides.set(entry.reading, { id, at, author, measured });
  },
  'doubt-answered': ({ care }, entry, takenBack) => {
    const { at, author, doubt, answer } = entry;
    if (!takenBack) listAt(care.doubtAnswers, entry.reading).push({ at, author, doubt, answer });
  },
  'prediction-sealed': ({ care }, entry, takenBack) => {
    const { specimen, forDay, measured, because } = entry;
    const line = lineOf(entry, takenBack);
    listAt(care.predictions, specimen).push({ ...line, specimen, forDay, measured, because });
  },
  'fair-test-planned': ({ care }, entry, takenBack) => {
    if (takenBack) return;
    const { id, at, author, different, same, second, expect } = entry;
    listAt(care.fairTests, entry.investigation).push({
      ...{ id, at, author, different, same, second },
      ...(expect === undefined ? {} : { expect }),
    });
  },
  'difference-noticed': ({ care }, entry, takenBack) => {
    const { investigation, specimen, what } = entry;
    care.differences.push({
      ...{ ...lineOf(entry, takenBack), investigation, what },
      ...(specimen === undefined ? {} : { specimen }),
    });
  },
  'looks-noted': ({ care }, entry, takenBack) => {
    const { specimen, colour, stands } = entry;
    listAt(care.looks, specimen).push({
      ...{ ...lineOf(entry, takenBack), specimen },
      ...(colour === undefined ? {} : { colour }),
      ...(stands === undefined ? {} : { stands }),
    });
  },
  'ruler-checked': ({ care }, entry, takenBack) => {
    const { zeroAtEdge, why } = entry;
    care.rulerChecks.push({
      ...{ ...lineOf(entry, takenBack), zeroAtEdge },
      ...(why === undefined ? {} : { why }),
    });
  },
  'caution-put-away': ({ care }, entry, takenBack) => {
    if (takenBack) return;
    const before = care.cautionsPutAway.get(entry.caution);
    if (before === undefined || before < entry.day)
      care.cautionsPutAway.set(entry.caution, entry.day);
  },
};

/** The list kept under a key, begun when it is first asked for. */
function listAt<Key, Item>(lists: Map<Key, Item[]>, key: Key): Item[] {
  const known = lists.get(key);
  if (known) return known;
  const fresh: Item[] = [];
  lists.set(key, fresh);
  return fresh;
}
