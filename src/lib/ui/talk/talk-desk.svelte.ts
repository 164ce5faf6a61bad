import type { EvidenceLevel, PersonId } from '#core/journal';
import { judgeAnswer, type Judged, type Told } from '#core/questions';
import type { NotebookState } from '#notebook';
import { answerText } from '#ui/ladder-words';
import { helpText } from './help-words';
import { readPlace, writePlace } from './talk-place';
import { sheetOf, type TalkItem } from './talk-item';
import { answeredBy, type TalkSet } from './talk-set';

/** Where the talk about one question stands. */
export type TalkStep = 'ask' | 'right' | 'tell' | 'together' | 'heard' | 'looked';

/**
 * One child's talk about a set of questions: which one is up, how often it was tried, and what is
 * written of it. What was answered is read from the notebook, so that a reload loses nothing.
 */
export class TalkDesk {
  /** The questions in the order they come up; one that is put off goes to the end. */
  #order = $state.raw<readonly TalkItem[]>([]);
  /** A question that was answered a moment ago and is still looked at. */
  #held = $state.raw<TalkItem | null>(null);
  #putOff = $state.raw<readonly string[]>([]);
  step = $state<TalkStep>('ask');
  tries = $state(0);
  /** The last answer, in words. */
  said = $state('');
  judged = $state.raw<Judged | null>(null);
  help = $state('');
  /** How an answer went that could not be kept yet. */
  unkept = $state<EvidenceLevel | null>(null);
  isKeeping = $state(false);

  constructor(
    readonly notebook: NotebookState,
    readonly set: TalkSet,
    readonly person: PersonId | null,
    more: readonly TalkItem[],
  ) {
    this.#order = [...set.items, ...more];
    const place = readPlace(notebook.memory);
    const left = this.left.find(({ key }) => key === place?.key);
    if (!left || !place) return;
    this.#order = [left, ...this.#order.filter((each) => each !== left)];
    this.tries = place.tries;
    this.help = place.help;
    this.said = place.said;
    if (place.isTelling) this.step = 'tell';
  }

  readonly #answered = $derived.by(() => {
    const { contents, today } = this.notebook;
    const { lesson } = this.set;
    const here = answeredBy(contents, this.person, { lesson, today: lesson ? null : today });
    const ever = answeredBy(contents, this.person, { lesson: null, today: null });
    return (item: TalkItem): boolean =>
      (item.kind === 'own' && item.lesson === null ? ever : here).has(item.key);
  });

  /** What is not answered yet, the next one first. */
  readonly left = $derived(this.#order.filter((item) => !this.#answered(item)));

  /** The question on the screen; null when there is none left, or all that are were put off. */
  readonly item = $derived(
    this.#held ?? this.left.find(({ key }) => !this.#putOff.includes(key)) ?? null,
  );

  readonly question = $derived(this.item?.kind === 'asked' ? this.item.question : null);

  /** The grown-up is offered after the second try. */
  readonly offersTogether = $derived(this.tries >= 2);

  answer(told: Told): void {
    const { question } = this;
    if (!question) return;
    this.said = answerText(told);
    this.judged = judgeAnswer(question, told);
    if (this.judged.kind === 'right') return void this.keep(this.#how(), 'right');
    if (this.judged.kind === 'for-a-grown-up') return this.#go('tell');
    this.tries += 1;
    this.help = helpText(question, this.judged);
    this.#remember();
  }

  /** An answer in the child's own words: right where it is just what its writer said. */
  answerInWords(text: string): void {
    const { item } = this;
    if (!item) return;
    this.said = text.trim();
    const isSame = item.kind === 'own' && sameWords(item.answer, text);
    if (isSame) void this.keep(this.#how(), 'right');
    else this.#go('tell');
  }

  /** The grown-up is there. */
  lookTogether(): void {
    this.#go('together');
  }

  tryAgain(): void {
    this.#go('ask');
  }

  /** Writes how it went. When it cannot be kept, the answer stays on the screen. */
  async keep(how: EvidenceLevel, then: TalkStep = this.step): Promise<void> {
    const { item, notebook } = this;
    if (!item || this.isKeeping) return;
    this.#held = item;
    this.isKeeping = true;
    this.step = then;
    if (this.person) notebook.chooseAuthor(this.person);
    const kept = await notebook.write({
      ...{ kind: 'question-answered', question: sheetOf(item), day: notebook.today, how },
      ...(item.lesson === null ? {} : { lesson: item.lesson }),
      answer: this.said.slice(0, mostLetters),
    });
    this.isKeeping = false;
    this.unkept = kept.ok ? null : how;
    if (kept.ok) writePlace(notebook.memory, null);
  }

  /** Puts the question off; it comes back. */
  skip(): void {
    const { item } = this;
    if (!item) return;
    this.#putOff = [...this.#putOff, item.key];
    this.next();
  }

  /** Those that were put off come up again. */
  takeUp(): void {
    this.#putOff = [];
    this.next();
  }

  next(): void {
    this.#held = null;
    this.step = 'ask';
    this.tries = 0;
    this.said = '';
    this.help = '';
    this.judged = null;
    this.unkept = null;
    writePlace(this.notebook.memory, null);
  }

  #go(step: TalkStep): void {
    this.step = step;
    this.#remember();
  }

  #how(): EvidenceLevel {
    return this.tries === 0 ? 'alone' : 'with-help';
  }

  #remember(): void {
    const { item, tries, help, said } = this;
    if (!item) return;
    writePlace(this.notebook.memory, {
      ...{ key: item.key, tries, help, said },
      isTelling: this.step === 'tell',
    });
  }
}

const sameWords = (one: string, other: string): boolean =>
  plain(one) !== '' && plain(one) === plain(other);

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\s.,!?]+/g, ' ')
    .trim();

/** As much as the journal keeps of an answer. */
const mostLetters = 4000;
