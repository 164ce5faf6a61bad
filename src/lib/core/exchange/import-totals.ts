import { monthOf, yearOf } from '#core/calendar';
import { isLengthUnit } from '#core/measure';
import { countedOf } from './counted-of';
import type { ReadingRow } from './row-content';

/** What the numbers of a table add up to, to be held against the place they came from. */
export interface ImportTotals {
  readonly inAll: Total;
  /** In order of time. */
  readonly byYear: readonly (Total & { readonly year: number })[];
  readonly byMonth: readonly (Total & { readonly month: string })[];
}

export interface Total {
  readonly readingCount: number;
  /**
   * The sum, in whole nanometres, or in whole things for counts; exact. Null where lengths and
   * counts are mixed, and beyond what a number holds exactly (some nine thousand kilometres).
   */
  readonly exact: number | null;
}

/** Adds up the numbers of a table as they come. */
export class TotalsSoFar {
  readonly #inAll = new RunningTotal();
  readonly #byYear = new Map<number, RunningTotal>();
  readonly #byMonth = new Map<string, RunningTotal>();

  add(row: ReadingRow): void {
    this.#inAll.add(row);
    totalAt(this.#byYear, yearOf(row.day)).add(row);
    totalAt(this.#byMonth, monthOf(row.day)).add(row);
  }

  get totals(): ImportTotals {
    const years = [...this.#byYear].sort(([left], [right]) => left - right);
    const months = [...this.#byMonth].sort(([left], [right]) => (left < right ? -1 : 1));
    return {
      inAll: this.#inAll.total,
      byYear: years.map(([year, running]) => ({ year, ...running.total })),
      byMonth: months.map(([month, running]) => ({ month, ...running.total })),
    };
  }
}

class RunningTotal {
  #readingCount = 0;
  #exact = 0;
  #hasLength = false;
  #hasCount = false;

  add(row: ReadingRow): void {
    const { exact, unit } = countedOf(row);
    this.#readingCount += 1;
    this.#exact += exact;
    if (isLengthUnit(unit)) this.#hasLength = true;
    else this.#hasCount = true;
  }

  get total(): Total {
    const isOne = !(this.#hasLength && this.#hasCount) && Number.isSafeInteger(this.#exact);
    return { readingCount: this.#readingCount, exact: isOne ? this.#exact : null };
  }
}

function totalAt<Key>(totals: Map<Key, RunningTotal>, key: Key): RunningTotal {
  const known = totals.get(key);
  if (known) return known;
  const begun = new RunningTotal();
  totals.set(key, begun);
  return begun;
}
