import { seededRandom } from '#core/base';
import { answerWayOf, sameTold, type AskedQuestion, type Told } from '#core/questions';
import { talkWords } from './talk-words';

/**
 * The sentences or words to choose an answer from: the answer, its usual slips, other ideas of the
 * question, and always that one cannot tell; never only two. Mixed, the same way each time.
 */
export function answerChoices(question: AskedQuestion): readonly Told[] {
  const { by, choices } = answerWayOf(question);
  const offered = by === 'words' ? ideasOf(question) : choices;
  const distinct = offered.filter(
    (told, index) => offered.findIndex((each) => sameTold(each, told)) === index,
  );
  const mixed = shuffled(distinct, question);
  return isOneOfThree(question) ? mixed : [...mixed, cannotTell];
}

/** Which question cannot be answered: "we can not tell" would be an answer to another question. */
const isOneOfThree = ({ template }: AskedQuestion): boolean => template === 'H9';

const cannotTell: Told = { kind: 'word', word: talkWords.cannotTell };

const ideasOf = ({ template, answer, slips }: AskedQuestion): readonly Told[] => {
  const first = answer.kind === 'order' ? answer.things.slice(0, 1) : [answer];
  const ideas = [...first, ...slips.map(({ told }) => told)].filter(({ kind }) => kind === 'idea');
  return [...ideas, ...(moreIdeas[template] ?? []).map((idea): Told => ({ kind: 'idea', idea }))];
};

/** What else could be said: the answers of the same question about other logs. */
const moreIdeas: Readonly<Partial<Record<AskedQuestion['template'], readonly string[]>>> = {
  Y3: ['probably-not-yet', 'might-be-as-tall'],
  Y9: ['longer-and-further-round', 'shorter-and-further-round'],
  H5: ['one-difference', 'second-difference'],
};

/** Fisher and Yates, with chance that hangs on the question alone. */
export function shuffled<Item>(items: readonly Item[], question: AskedQuestion): readonly Item[] {
  const random = seededRandom(seedOf(JSON.stringify(question)));
  const mixed = [...items];
  for (let last = mixed.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    [mixed[last], mixed[other]] = [mixed[other] as Item, mixed[last] as Item];
  }
  return mixed;
}

/** A whole number that hangs on every letter (FNV-1a, 32 bits; from memory). */
const seedOf = (text: string): number => {
  let seed = 0x811c9dc5;
  for (const letter of text) seed = Math.imul(seed ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return seed >>> 0;
};
