import { oneOf, seededRandom, type Random } from '#core/base';
import { questionsOf } from './every-template';
import type { LessonFacts } from './lesson-facts';
import { levels, type AskedQuestion, type Level } from './question';
import { isTelling } from './telling';
import { thingsIn } from './things-in';

/** The questions of a lesson, and what the log could not give. */
export interface ChosenQuestions {
  readonly read: readonly AskedQuestion[];
  readonly between: readonly AskedQuestion[];
  readonly beyond: readonly AskedQuestion[];
  readonly behind: readonly AskedQuestion[];
  /** Levels that have fewer questions than a lesson wants, with how many they lack. */
  readonly missing: readonly { readonly level: Level; readonly lacks: number }[];
}

/** How many questions of each level a lesson has at most, and how many it wants. */
const mostByLevel: Readonly<Record<Level, number>> = { read: 2, between: 3, beyond: 2, behind: 1 };
const wantedByLevel: Readonly<Record<Level, number>> = { ...mostByLevel, beyond: 1 };

/**
 * Chooses the questions of a lesson: two to read, three between, one or two beyond, one behind, of
 * different templates, none of which tells the answer of another, and one at least about the whole
 * set where the log has such a question. Of the ways to ask a template the one is chosen whose days,
 * kinds, plants and numbers were asked about least. The same seed chooses the same questions. Fewer
 * are chosen where fewer are possible, and `missing` says so.
 *
 * @param seed a whole number
 * @example
 * chooseQuestions({ graph: 'bar-graph', ranges: [], table: { form: 'counts', rows: [] }, choice: {} }, 1).missing[0] // => { level: 'read', lacks: 2 }
 */
export const chooseQuestions = (facts: LessonFacts, seed: number): ChosenQuestions => {
  const random = seededRandom(seed);
  const possible = shuffledByTemplate(questionsOf(facts), random);
  const chosen = withWholeSet(possible, random);
  const ofLevel = (level: Level) => chosen.filter((question) => question.level === level);
  return {
    ...{ read: ofLevel('read'), between: ofLevel('between') },
    ...{ beyond: ofLevel('beyond'), behind: ofLevel('behind') },
    missing: levels.flatMap((level) => {
      const lacks = wantedByLevel[level] - ofLevel(level).length;
      return lacks > 0 ? [{ level, lacks }] : [];
    }),
  };
};

/** As they come, or begun with one about the whole set where there would be none. */
const withWholeSet = (possible: Possible, random: Random): readonly AskedQuestion[] => {
  const begunWith = (first: readonly AskedQuestion[]) =>
    scarcestFirst.reduce((before, level) => withLevel(before, possible, level), first);
  const chosen = begunWith([]);
  const whole = possible.flatMap((ways) => ways.find((way) => way.wholeSet) ?? []);
  const isThere = whole.length === 0 || chosen.some((each) => each.wholeSet);
  return isThere ? chosen : begunWith([oneOf(whole, random)]);
};

/** Templates, each with its ways to be asked. */
type Possible = readonly (readonly AskedQuestion[])[];

/** What can be read is plenty, so it gives way to what is asked further on. */
const scarcestFirst: readonly Level[] = ['beyond', 'behind', 'between', 'read'];

const withLevel = (
  before: readonly AskedQuestion[],
  possible: Possible,
  level: Level,
): readonly AskedQuestion[] =>
  possible
    .filter((ways) => ways[0]?.level === level)
    .reduce((chosen, ways) => {
      const isFull = chosen.filter((each) => each.level === level).length >= mostByLevel[level];
      const isAsked = chosen.some(({ template }) => template === ways[0]?.template);
      const way = isFull || isAsked ? undefined : leastAlike(ways, chosen);
      return way ? [...chosen, way] : chosen;
    }, before);

/** Of the ways that tell nothing and are told by nothing, the one with the least in common. */
const leastAlike = (
  ways: readonly AskedQuestion[],
  chosen: readonly AskedQuestion[],
): AskedQuestion | undefined => {
  const said = new Set(chosen.flatMap(thingsIn));
  return ways
    .map((way) => ({ way, common: thingsIn(way).filter((thing) => said.has(thing)).length }))
    .toSorted((one, other) => one.common - other.common)
    .find(({ way }) => !chosen.some((each) => isTelling(way, each) || isTelling(each, way)))?.way;
};

/** Templates in a random order, each with its ways in a random order. */
const shuffledByTemplate = (questions: readonly AskedQuestion[], random: Random): Possible => {
  const waysById = new Map<string, AskedQuestion[]>();
  for (const question of questions) {
    const ways = waysById.get(question.template);
    if (ways) ways.push(question);
    else waysById.set(question.template, [question]);
  }
  return shuffled([...waysById.values()], random).map((ways) => shuffled(ways, random));
};

/** Fisher and Yates, as in Knuth, The Art of Computer Programming 2, 3.4.2 algorithm P. */
const shuffled = <Item>(items: readonly Item[], random: Random): readonly Item[] => {
  const mixed = [...items];
  for (let last = mixed.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    [mixed[last], mixed[other]] = [mixed[other] as Item, mixed[last] as Item];
  }
  return mixed;
};
