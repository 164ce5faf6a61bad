import { tableChoicesOf } from '#core/graphs';
import { foldEntries } from '#core/journal';
import { lessonFactsOf, questionsOf, type AskedQuestion, type LessonFacts } from '#core/questions';
import { wrongIn } from './check-question';
import { madeInvestigation } from './journal-writer';
import { madeLog, type AskedGraph, type MadeLog } from './made-log';
import type { RawAsking } from './raw-asking';
import { rawLogOf, type RawLog } from './raw-log';

/** A question that was asked of a log, with the graph it was asked about. */
export interface AskedOfLog {
  readonly asking: RawAsking;
  readonly question: AskedQuestion;
}

/** A program that reads wrongly, to see whether the reader finds it out. */
export interface Meddling {
  /** What of the entries it looks at. */
  readonly entries?: (entries: MadeLog['entries']) => MadeLog['entries'];
  readonly facts?: (facts: LessonFacts) => LessonFacts;
}

/** Every question the program asks of a log, beside what the raw entries are. */
export const askedOf = (log: MadeLog, meddling: Meddling = {}): readonly AskedOfLog[] => {
  const { entries: seen = (all) => all, facts: changed = (all) => all } = meddling;
  const notebook = foldEntries(seen(log.entries));
  const raw = rawLogOf(log.entries);
  return log.asks.flatMap((asked) => {
    const facts = lessonFactsOf(notebook, asked.choice, asked.graph, log.stage, log.today);
    if (!facts.ok) return [];
    const { labels } = facts.value.right.scale;
    const asking = askingOf(log, raw, asked, labels, facts.value.right.keyValue);
    return questionsOf(changed(facts.value)).map((question) => ({ asking, question }));
  });
};

/** The same log, with every graph that the program itself offers of it today. */
export const withOffers = (log: MadeLog): MadeLog => {
  const notebook = foldEntries(log.entries);
  const about = { investigation: madeInvestigation };
  const asks = tableChoicesOf(notebook, about, log.stage, log.today).flatMap(({ variants }) =>
    variants.flatMap(({ choice, graphs }) =>
      graphs.filter(({ missing }) => missing.length === 0).map(({ graph }) => ({ choice, graph })),
    ),
  );
  return { ...log, asks };
};

const askingOf = (
  { stage, today }: MadeLog,
  log: RawLog,
  { choice, graph }: AskedGraph,
  labels: readonly string[],
  key: number | null,
): RawAsking => {
  const { source, specimens, from, to, told, mostKinds, givenSteps = false } = choice;
  return {
    ...{ log, source, specimens, from, to, told, mostKinds, graph, stage, today, labels, key },
    isGiven: givenSteps,
  };
};

export interface WrongQuestion {
  readonly seed: number;
  readonly wrong: readonly string[];
  readonly question: AskedQuestion;
  readonly asking: RawAsking;
}

/** What the reader has against the questions asked of the log of a seed. */
export const wrongOf = (seed: number, asked: readonly AskedOfLog[]): readonly WrongQuestion[] =>
  asked.flatMap(({ asking, question }) => {
    const wrong = wrongIn(asking, question);
    return wrong.length > 0 ? [{ seed, wrong, question, asking }] : [];
  });

export const wrongOfSeed = (seed: number): readonly WrongQuestion[] =>
  wrongOf(seed, askedOf(madeLog(seed)));

/** One line of what is amiss, for a person to look up by its seed. */
export const lineOf = ({ seed, wrong, question, asking }: WrongQuestion): string =>
  [
    `seed ${seed} ${asking.stage} ${asking.source} ${asking.graph}`,
    `${question.template} ${JSON.stringify(question.blanks)}`,
    `= ${JSON.stringify(question.answer)}`,
    wrong.join('; '),
  ].join(' | ');
