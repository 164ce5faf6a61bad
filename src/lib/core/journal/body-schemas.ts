import * as v from 'valibot';
import { careBodies } from './care-bodies';
import {
  day,
  drawingId,
  entryId,
  investigationId,
  mark,
  measured,
  name,
  personId,
  prose,
  sentence,
  sheet,
  spanDays,
  specimenId,
  time,
  unit,
  why,
} from './field-schemas';
import { teachingBodies } from './teaching-bodies';
import * as words from './vocabulary';

const person = {
  name,
  shape: v.picklist(words.shapes),
  colour: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(7)),
  role: v.picklist(words.roles),
  stage: v.picklist(words.stages),
  hand: v.picklist(words.hands),
};

const plan = {
  title: name,
  question: sentence,
  quantity: v.picklist(words.quantities),
  unit,
  mark,
  /** The words to choose from each day, when the quantity is a daily kind. */
  kinds: v.pipe(v.array(name), v.maxLength(12)),
  /** The days of the week a reading is planned for: 1 is Monday, 7 is Sunday. */
  weekdays: v.array(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(7))),
  /** The protocol card: where from, with what, and when each day. */
  where: sentence,
  tool: sentence,
  when: sentence,
  origin: v.picklist(words.origins),
};

const takenReading = {
  day,
  time: v.optional(time),
  measured,
  /** Further readings of the same moment; the middle one of all of them counts. */
  again: v.optional(v.pipe(v.array(measured), v.maxLength(8))),
  /** How many days a rain total was gathered over, when more than one. */
  spanDays,
};

const partial = <Fields extends v.ObjectEntries>(fields: Fields) => v.partial(v.object(fields));

/** What each kind of entry holds, beside the envelope that all entries share. */
export const bodySchemas = {
  'notebook-begun': { title: name },
  'person-added': { person: personId, ...person },
  'person-changed': { person: personId, to: partial(person) },
  'investigation-begun': { investigation: investigationId, ...plan },
  'investigation-changed': { investigation: investigationId, to: partial(plan) },
  'investigation-ended': { investigation: investigationId, day, found: v.optional(prose) },
  'investigation-removed': { investigation: investigationId },
  'specimen-added': {
    specimen: specimenId,
    investigation: investigationId,
    name,
    /** The day the seed was sown, the gauge set up, the stick planted. */
    startedOn: day,
    /** The pot's height, or the stick's: a help in understanding a strange number. */
    standHeight: v.optional(measured),
  },
  'specimen-ended': { specimen: specimenId, day, how: v.picklist(words.endings), why },
  'reading-taken': {
    specimen: specimenId,
    ...takenReading,
    leaves: v.optional(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(999))),
    weather: v.optional(v.picklist(words.weatherWords)),
    note: v.optional(prose),
  },
  'reading-corrected': { reading: entryId, to: v.object(takenReading), why },
  'day-marked': {
    specimen: specimenId,
    day,
    time: v.optional(time),
    state: v.picklist(words.dayStates),
    why,
  },
  'kind-noted': { specimen: specimenId, day, word: name },
  'note-written': {
    investigation: v.optional(investigationId),
    specimen: v.optional(specimenId),
    day,
    text: prose,
  },
  'drawing-begun': {
    drawing: drawingId,
    investigation: investigationId,
    specimen: v.optional(specimenId),
    /** Which graph, and which table it is drawn from: see graphs. */
    graph: name,
    choice: sheet,
    stage: v.picklist(words.stages),
    level: name,
  },
  /** The whole drawing as it stands: each saving is a version that can be shown again. */
  'drawing-saved': {
    drawing: drawingId,
    paper: sheet,
    /** Rows of the table that the child ticked off. */
    ticked: v.array(v.pipe(v.number(), v.integer(), v.minValue(0))),
  },
  'drawing-finished': { drawing: drawingId },
  ...careBodies,
  ...teachingBodies,
  'entry-taken-back': { entry: entryId, why },
} as const;
