import type { SkillId } from '#core/lessons';

/** A skill for a grown-up: its name, one plain sentence, and where else than in a lesson it shows. */
export interface SkillWords {
  readonly name: string;
  readonly says: string;
  readonly ways: readonly SkillWay[];
}

export interface SkillWay {
  readonly path: string;
  readonly name: string;
}

const today: SkillWay = { path: '/today', name: 'Today' };
const rulerLessons: SkillWay = { path: '/measure/ruler', name: 'Ruler lessons' };
const review: SkillWay = { path: '/review', name: 'Daily review' };
const draw: SkillWay = { path: '/draw', name: 'Draw' };
const talk: SkillWay = { path: '/talk', name: 'Talk' };

export const skillWords: Readonly<Record<SkillId, SkillWords>> = {
  'measures-from-zero': {
    name: 'Measures from zero',
    says: 'Begins at the 0 of the ruler, and copes when a thing does not.',
    ways: [rulerLessons, review],
  },
  'reads-between-marks': {
    name: 'Reads to the mark',
    says: 'Reads to the nearest whole unit, or to the halves, quarters or millimetres of the ruler.',
    ways: [rulerLessons, review],
  },
  'keeps-a-log': {
    name: 'Keeps a log',
    says: 'Measures the same thing again and again, and writes down what was read.',
    ways: [today],
  },
  'estimates-first': {
    name: 'Estimates first',
    says: 'Says about how long it is before measuring, with a length known by heart to help.',
    ways: [today],
  },
  'compares-two-units': {
    name: 'Compares two units',
    says: 'Reads one length in centimetres and in inches, and tells why the numbers differ.',
    ways: [{ path: '/measure/both-sides', name: 'Both sides of the ruler' }],
  },
  'keeps-a-tally': {
    name: 'Sorts and keeps a tally',
    says: 'Sorts days or things into kinds, and counts them before drawing.',
    ways: [draw],
  },
  'draws-picture-graph': {
    name: 'Draws a picture graph',
    says: 'One picture for each thing, or for as many as the key says; a title and a key.',
    ways: [draw],
  },
  'draws-bar-graph': {
    name: 'Draws a bar graph',
    says: 'Bars that begin at zero and end at their number; names, numbers and a title.',
    ways: [draw],
  },
  'draws-line-plot': {
    name: 'Draws a line plot',
    says: 'One X for each measure, above its place on a number line.',
    ways: [draw],
  },
  'draws-line-graph': {
    name: 'Draws a line graph, guided',
    says: 'Points at their day and number, the days spaced as in the calendar.',
    ways: [draw],
  },
  'reads-a-graph': {
    name: 'Reads a graph',
    says: 'Finds a number, a day or a kind in it.',
    ways: [talk, review],
  },
  'reads-key-and-scale': {
    name: 'Reads the key and the scale',
    says: 'Knows what one picture, one X or one step at the side stands for.',
    ways: [talk, review],
  },
  'compares-and-combines': {
    name: 'Compares and puts together',
    says: 'How many more, how many fewer, how many together, how many in all.',
    ways: [talk, review],
  },
  'compares-lengths': {
    name: 'Compares lengths',
    says: 'How much taller, longer or wetter; which first, in order.',
    ways: [talk, review],
  },
  'adds-and-subtracts-lengths': {
    name: 'Adds and subtracts lengths',
    says: 'Works out a length that was not measured, with jumps or with an equation.',
    ways: [review, talk],
  },
  'tells-growth-with-its-days': {
    name: 'Tells growth with its days',
    says: 'Says how much it grew, and over how many days.',
    ways: [talk],
  },
  'looks-beyond': {
    name: 'Looks beyond, with a because',
    says: 'Says what may come, as a range, and why.',
    ways: [{ path: '/measure/ahead', name: 'A guess ahead' }, talk],
  },
  'knows-a-blank-from-zero': {
    name: 'Knows a blank from a zero',
    says: 'Tells a day with no reading from a day that was read as 0.',
    ways: [talk],
  },
  'knows-where-data-came-from': {
    name: 'Knows where the data came from',
    says: 'Tells who measured, and how, what is missing, and what the graph cannot say.',
    ways: [talk],
  },
  'plans-a-fair-test': {
    name: 'Plans a fair test',
    says: 'Lets one thing differ, keeps the rest the same, and looks at more than height.',
    ways: [{ path: '/measure/fair-test', name: 'A fair test' }],
  },
  'asks-own-questions': {
    name: 'Asks own questions',
    says: 'Writes a question that the graph can answer.',
    ways: [talk],
  },
  'says-what-a-graph-tells': {
    name: 'Says what a graph tells',
    says: 'One sentence of what was found, about this plant or this home only.',
    ways: [],
  },
};
