import * as v from 'valibot';
import {
  day,
  entryId,
  investigationId,
  measured,
  name,
  personId,
  sentence,
  specimenId,
  time,
  why,
} from './field-schemas';
import * as words from './vocabulary';

/** Entries of careful measuring: guesses, second looks, plans, and what was noticed beside numbers. */
export const careBodies = {
  /** How long somebody thought it was, said before it was measured. */
  'estimate-made': {
    specimen: specimenId,
    day,
    time: v.optional(time),
    measured,
    /** The helper length that was thought of. */
    helper: v.optional(v.picklist(words.helperLengths)),
  },
  'helper-length-measured': {
    person: personId,
    helper: v.picklist(words.helperLengths),
    measured,
  },
  /** The other side of the ruler, read for the same height at the same moment. */
  'other-side-read': { reading: entryId, measured },
  /** What was said when a reading was asked about. The question is named by series. */
  'doubt-answered': { reading: entryId, doubt: name, answer: v.picklist(words.doubtAnswers) },
  /** What somebody thinks it will be on a day to come; not shown before that day. */
  'prediction-sealed': {
    specimen: specimenId,
    day,
    forDay: day,
    measured,
    because: sentence,
  },
  'fair-test-planned': {
    investigation: investigationId,
    /** The one thing that differs. */
    different: name,
    same: v.pipe(v.array(name), v.maxLength(12)),
    /** What is looked at beside the height: taller may not be healthier. */
    second: v.pipe(v.array(v.picklist(words.secondMeasures)), v.maxLength(3)),
    expect: v.optional(sentence),
  },
  /** A second thing that came to differ after the readings began. */
  'difference-noticed': {
    investigation: investigationId,
    specimen: v.optional(specimenId),
    day,
    what: sentence,
  },
  'looks-noted': {
    specimen: specimenId,
    day,
    colour: v.optional(v.picklist(words.leafColours)),
    stands: v.optional(v.picklist(words.stemStands)),
  },
  /** Whether zero touches the table when the ruler stands on it. */
  'ruler-checked': { day, zeroAtEdge: v.boolean(), why },
  'caution-put-away': { caution: name, day },
} as const;
