import type { CivilDay } from '#core/calendar';
import type { PersonId } from '#core/journal';
import {
  answeredOn,
  chosenItem,
  reviewFor,
  reviewSheet,
  type ReviewItem,
  type ReviewOptions,
  type ReviewPick,
  type ReviewPlace,
} from '#core/lessons';
import type { Told } from '#core/questions';
import type { NotebookState } from '#notebook';
import { judgeTold, judgeWritten, type GivenAnswer } from './given-answer';
import { readPlace, writePlace, type KeptPlace } from './review-place';
import { reviewWords } from './review-words';

/** What stands on the page: a place that is no item, an item, or the end. */
export type OnPage =
  | Extract<ReviewPlace, { kind: 'measure-today' }>
  | { readonly kind: 'choose' }
  | { readonly kind: 'item'; readonly item: ReviewItem }
  | { readonly kind: 'end' };

/** How far an item is: asked, found, or looked at side by side. */
export type ItemStep = 'asking' | 'right' | 'together';

/** The daily review of one person on one day. What is answered is kept at once. */
export class ReviewDesk {
  readonly #notebook: NotebookState;
  readonly #options: ReviewOptions;
  readonly #person: PersonId | null;
  readonly #today: CivilDay;
  #kept = $state.raw<KeptPlace>() as KeptPlace;
  /** The item that was answered: it stays until the child goes on. */
  #answered = $state.raw<ReviewItem | null>(null);
  #isChoosingMore = $state(false);
  #lastSaid: string | null = null;
  step = $state<ItemStep>('asking');
  text = $state('');
  help = $state<string | null>(null);
  error = $state<string | null>(null);
  isKeeping = $state(false);

  constructor(notebook: NotebookState, options: ReviewOptions) {
    const { author, contents, today, memory } = notebook;
    this.#notebook = notebook;
    this.#options = options;
    this.#person = author && contents.people.has(author) ? author : null;
    this.#today = today;
    this.#kept = readPlace(memory, today, this.#person);
  }

  readonly page: readonly ReviewPlace[] = $derived.by(() =>
    reviewFor(this.#notebook.contents, this.#person, this.#today, this.#options),
  );

  readonly #done = $derived.by(() =>
    answeredOn(this.#notebook.contents, this.#person, this.#today),
  );

  readonly #place = $derived.by(() => this.page.find((place) => !this.#isOver(place)) ?? null);

  readonly onPage: OnPage = $derived.by(() => {
    if (this.#answered) return { kind: 'item', item: this.#answered };
    const place = this.#place;
    const isChoosing = place?.kind === 'choice' || (place === null && this.#isChoosingMore);
    if (isChoosing) return this.#chosen ?? { kind: 'choose' };
    if (place === null) return { kind: 'end' };
    if (place.kind === 'measure-today') return place;
    return 'task' in place ? { kind: 'item', item: place } : { kind: 'end' };
  });

  /** Which thing of the page it is, from 1; null for what comes after the page. */
  readonly at: number | null = $derived.by(() => {
    if (this.#isChoosingMore) return null;
    const key = this.#answered ? keyOfItem(this.#answered) : this.#place && keyOf(this.#place);
    const index = this.page.findIndex((place) => keyOf(place) === key);
    return index < 0 ? null : index + 1;
  });

  /** Whether anything was answered today: else it was only skipped. */
  readonly hasAnswered = $derived.by(() => this.#done.length > 0);

  /** Whether the item was tried before the page was opened again. */
  isTried(item: ReviewItem): boolean {
    return this.#kept.tried.includes(item.name);
  }

  write(text: string): void {
    this.text = text;
    this.error = null;
  }

  sayWritten(item: ReviewItem): Promise<void> {
    return this.#take(item, judgeWritten(item.task, this.text));
  }

  async sayChosen(item: ReviewItem, told: Told): Promise<void> {
    if (item.task.of === 'question') await this.#take(item, judgeTold(item.task, told));
  }

  choose(pick: ReviewPick): void {
    const round = this.#done.filter(({ kind }) => kind === 'choice').length;
    this.#keep({ ...this.#kept, picked: { pick, round } });
  }

  /** Goes past what stands on the page: it may come another day. */
  skip(): void {
    const key = this.#place ? keyOf(this.#place) : null;
    const passed = key === null ? this.#kept.passed : [...this.#kept.passed, key];
    this.#isChoosingMore = false;
    this.#keep({ ...this.#kept, passed, picked: null });
    this.#clear();
  }

  goOn(): void {
    if (this.#answered?.kind === 'choice') this.#keep({ ...this.#kept, picked: null });
    this.#isChoosingMore = false;
    this.#clear();
  }

  chooseMore(): void {
    this.#isChoosingMore = true;
  }

  get #chosen(): OnPage | null {
    const { picked } = this.#kept;
    if (!picked) return null;
    const { contents } = this.#notebook;
    const item = chosenItem(
      ...([contents, this.#person, this.#today, this.#options] as const),
      ...([picked.pick, picked.round] as const),
    );
    return { kind: 'item', item };
  }

  #isOver(place: ReviewPlace): boolean {
    if (this.#kept.passed.includes(keyOf(place))) return true;
    if (place.kind === 'measure-today') return place.logs.every(({ isTaken }) => isTaken);
    if (place.kind === 'choice') return this.#done.some(({ kind }) => kind === 'choice');
    return this.#done.some(({ name }) => name === place.name);
  }

  async #take(item: ReviewItem, given: GivenAnswer): Promise<void> {
    if (this.isKeeping) return;
    if (given.kind === 'unreadable') {
      this.error = given.text;
      return;
    }
    if (given.kind === 'not-yet' && !this.isTried(item)) {
      this.#lastSaid = given.said;
      this.help = given.help;
      // The next try begins with an empty line.
      this.text = '';
      this.#keep({ ...this.#kept, tried: [...this.#kept.tried, item.name] });
      return;
    }
    // The same once more is not another try.
    if (given.kind === 'not-yet' && given.said === this.#lastSaid) {
      this.error = reviewWords.lookAgain;
      return;
    }
    await this.#finish(item, given);
  }

  async #finish(
    item: ReviewItem,
    given: Exclude<GivenAnswer, { kind: 'unreadable' }>,
  ): Promise<void> {
    this.isKeeping = true;
    const written = await this.#notebook.write({
      ...{ kind: 'review-answered', day: this.#today, item: { ...reviewSheet(item) } },
      ...{ answer: given.said, outcome: given.kind === 'right' ? 'rest' : 'again' },
    });
    this.isKeeping = false;
    if (!written.ok) return;
    this.#answered = item;
    this.step = given.kind === 'right' ? 'right' : 'together';
    this.help = null;
  }

  #keep(place: KeptPlace): void {
    this.#kept = place;
    writePlace(this.#notebook.memory, this.#today, this.#person, place);
  }

  #clear(): void {
    this.#answered = null;
    this.#lastSaid = null;
    this.step = 'asking';
    this.text = '';
    this.help = null;
    this.error = null;
  }
}

const keyOf = (place: ReviewPlace): string => ('name' in place ? place.name : place.kind);
const keyOfItem = ({ kind, name }: ReviewItem): string => (kind === 'choice' ? 'choice' : name);
