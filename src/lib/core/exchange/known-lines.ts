import type { AlreadyThere, RowContent } from './row-content';
import {
  existingLinesOf,
  keyOfContent,
  type ExistingLine,
  type ExistingLog,
} from './existing-lines';

/**
 * Finds out which rows of a table the log says already. Each line of the log answers for one row,
 * so that two equal readings of a day stay two, and the same table brought in again finds every
 * one of its rows. A corrected reading answers for what it said first or for what it says now,
 * whichever leaves fewer rows without a line: a largest matching of rows and lines, kept largest
 * with each row by augmenting paths.
 * Source: C. Berge, "Two Theorems in Graph Theory" (1957), from memory.
 */
export class KnownLines {
  readonly #linesByKey = new Map<string, Line[]>();
  readonly #nextFreeByKey = new Map<string, number>();
  readonly #answersByKey = new Map<string, AlreadyThere[]>();

  constructor(existing: ExistingLog | null) {
    for (const { entry, wordByKey } of existing ? existingLinesOf(existing) : []) {
      const line: Line = { entry, wordByKey, answersFor: null };
      for (const key of wordByKey.keys()) {
        const lines = this.#linesByKey.get(key);
        if (lines) lines.push(line);
        else this.#linesByKey.set(key, [line]);
      }
    }
  }

  /** Whether a line of the log is left to answer for one more row that says this. */
  take(content: RowContent): boolean {
    return this.#assign(keyOfContent(content), new Set());
  }

  /** Once every row was offered: the line that answers for the next row that says this. */
  nextAnswer(content: RowContent): AlreadyThere {
    const key = keyOfContent(content);
    const answers = this.#answersByKey.get(key) ?? this.#answersTo(key);
    this.#answersByKey.set(key, answers);
    const answer = answers.shift();
    if (!answer) throw new Error('More rows were said to be there than there are lines');
    return answer;
  }

  #answersTo(key: string): AlreadyThere[] {
    const answering = (this.#linesByKey.get(key) ?? []).filter((each) => each.answersFor === key);
    return answering.map(({ entry, wordByKey }) => ({
      kind: 'already-there',
      entry,
      line: wordByKey.get(key) ?? 'counts',
    }));
  }

  #assign(key: string, tried: Set<string>): boolean {
    tried.add(key);
    const lines = this.#linesByKey.get(key);
    if (!lines) return false;
    let free = this.#nextFreeByKey.get(key) ?? 0;
    while (free < lines.length && lines[free]!.answersFor !== null) free += 1;
    this.#nextFreeByKey.set(key, free);
    const line = lines[free] ?? lines.find((each) => this.#canMove(each, tried));
    if (!line) return false;
    line.answersFor = key;
    return true;
  }

  /** Whether what a line answers for now can be answered for by another line. */
  #canMove({ wordByKey, answersFor }: Line, tried: Set<string>): boolean {
    if (wordByKey.size === 1 || answersFor === null || tried.has(answersFor)) return false;
    return this.#assign(answersFor, tried);
  }
}

interface Line extends ExistingLine {
  /** What the row says that this line answers for, or null. */
  answersFor: string | null;
}
