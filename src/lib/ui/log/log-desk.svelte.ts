import { createContext, tick } from 'svelte';
import { SvelteMap, SvelteSet } from 'svelte/reactivity';
import { monthOf, parseCivilDay, type CivilDay } from '#core/calendar';
import type { EntryDraft, EntryId } from '#core/journal';
import type { LogRow } from '#core/series';
import type { NotebookState } from '#notebook';
import { DoubtDesk } from '#ui/asking';
import { logWords } from '#ui/words';
import { numberWritten } from './line-drafts';
import type { LogWork } from './log-work';

/** What is open on the log page: the work in hand, the months and the blank stretches. */
export class LogDesk {
  work = $state.raw<LogWork | null>(null);
  /** What was done last, said once on the page. */
  said = $state('');
  /** The row that was written last, to be found at a glance. */
  newest = $state<string | null>(null);
  /** While the page is printed, every month and every long note lies open. */
  isPrinting = $state(false);
  bothUnits = $state(false);
  readonly openedStretches = new SvelteSet<CivilDay>();
  readonly #openedMonths = new SvelteMap<string, boolean>();
  /** The row, or the button, that the work was taken up from. */
  inHand = $state<string | null>(null);

  constructor(readonly notebook: NotebookState) {
    this.bothUnits = notebook.memory.read(bothUnitsKey) === 'yes';
  }

  /** Takes up a piece of work; `from` is the row or button to come back to. */
  async open(work: LogWork, from: string): Promise<void> {
    this.said = '';
    this.newest = null;
    await this.#takeUp(work, from);
  }

  /** Lays the work aside unwritten. */
  async close(): Promise<void> {
    const from = this.inHand;
    this.work = null;
    this.inHand = null;
    await this.#comeBack(from);
  }

  /** Writes, and goes to what was written. Where it cannot be saved, the work stays open. */
  async write(drafts: readonly EntryDraft[], said: string, row?: string): Promise<boolean> {
    const before = this.notebook.contents;
    const written = await this.notebook.write(...drafts);
    if (!written.ok) return false;
    this.work = null;
    this.inHand = null;
    this.said = said;
    this.newest = row ?? written.value.at(-1) ?? null;
    for (const day of daysIn(drafts)) this.turnMonth(monthOf(day), true);
    if (!(await this.#askAbout(numberWritten(drafts, written.value, before)))) {
      await this.#comeBack(this.newest);
    }
    return true;
  }

  /** Asks about a number that was just written; answers whether there is something to ask. */
  async #askAbout(reading: EntryId | null): Promise<boolean> {
    const asked = new DoubtDesk(this.notebook);
    if (reading === null || !asked.ask(reading)) return false;
    await this.#takeUp({ kind: 'doubt', asked }, reading);
    return true;
  }

  /** Takes what was said away, and brings the keyboard back to the row it was about. */
  unsay(): void {
    this.said = '';
    void this.#comeBack(this.newest);
    this.newest = null;
  }

  /** Brings back a line that was taken back: a new entry, like everything. */
  async putBack(row: LogRow): Promise<void> {
    const takenBack = 'line' in row ? row.line.takenBack : null;
    if (!takenBack) return;
    const again: EntryDraft = { kind: 'entry-taken-back', entry: takenBack.by };
    await this.write([again], logWords.putBack, row.key);
  }

  /** Lays a folded stretch out day by day, and goes to its first day. */
  async layOut(firstDay: CivilDay): Promise<void> {
    this.openedStretches.add(firstDay);
    await this.goTo(firstDay);
  }

  async goTo(day: CivilDay): Promise<void> {
    this.turnMonth(monthOf(day), true);
    await tick();
    const place = document.getElementById(dayId(day));
    place?.scrollIntoView({ block: 'center' });
    place?.focus({ preventScroll: true });
  }

  isMonthOpen(month: string, byItself: boolean): boolean {
    return this.isPrinting || (this.#openedMonths.get(month) ?? byItself);
  }

  turnMonth(month: string, open: boolean): void {
    this.#openedMonths.set(month, open);
  }

  showBothUnits(shown: boolean): void {
    this.bothUnits = shown;
    this.notebook.memory.write(bothUnitsKey, shown ? 'yes' : 'no');
  }

  async #takeUp(work: LogWork, from: string): Promise<void> {
    this.work = work;
    this.inHand = from;
    await tick();
    // The log has grown narrower, and the row has moved.
    document.getElementById(rowActionId(from))?.closest('tr')?.scrollIntoView({ block: 'center' });
  }

  /** Brings the keyboard back to the row it left, or to the log when that row is gone. */
  async #comeBack(row: string | null): Promise<void> {
    await tick();
    const place = row === null ? null : document.getElementById(rowActionId(row));
    (place ?? document.getElementById(logId))?.focus();
  }
}

export const logId = 'the-log';
export const dayId = (day: CivilDay): string => `day-${day}`;
/** The day that an address like `/log#day-2026-03-09` leads to; null where it leads to none. */
export const dayInAddress = (hash: string): CivilDay | null => {
  const [, written] = /^#day-(.+)$/.exec(hash) ?? [];
  const day = parseCivilDay(written ?? '');
  return day.ok ? day.value : null;
};
export const rowActionId = (row: string): string => `do-${row}`;

/** The days that entries write on. */
const daysIn = (drafts: readonly EntryDraft[]): readonly CivilDay[] =>
  drafts.flatMap((draft) => ('day' in draft ? [draft.day] : 'to' in draft ? dayIn(draft.to) : []));

const dayIn = (to: object): readonly CivilDay[] => ('day' in to ? [to.day as CivilDay] : []);

const bothUnitsKey = 'both-units';

/** The page sets its desk once; the rows and the work beside them read it. */
export const [useDesk, provideDesk] = createContext<LogDesk>();
