import { previewImportInSlices, specimensInTable } from '#core/exchange';
import type {
  ImportField,
  ImportMapping,
  ImportPreview,
  ImportQuestion,
  SpecimenName,
} from '#core/exchange';
import type { InvestigationId, Notebook, Quantity, SpecimenId } from '#core/journal';
import type { NotebookState } from '#notebook';
import { existingLogOf } from './existing-log';
import { guessTable } from './guess-table';
import { firstTarget, quantityOfTarget, type ImportTarget } from './import-target';
import { breathe, finishInSlices } from './in-slices';
import { likelyQuantity } from './likely-quantity';
import {
  changeColumns,
  isAnswered,
  mappingFor,
  questionsFor,
  zeroMeansFor,
} from './mapping-changes';
import { previewFacts } from './preview-facts';
import { tableColumns, type TableColumn } from './table-columns';
import type { ReadTable } from './table-source.svelte';
import { targetDrafts } from './target-drafts';

/** A table under review: how it is read, which log it goes to, and what would come in. */
export class ImportReview {
  mapping = $state.raw() as ImportMapping;
  target = $state.raw() as ImportTarget;
  /** What the table leaves open. */
  questions = $state.raw<readonly ImportQuestion[]>([]);
  preview = $state.raw<ImportPreview | null>(null);
  /** How many rows were looked at, while a long table is. */
  rowsDone = $state<number | null>(null);
  stage = $state.raw<ReviewStage>({ kind: 'open' });
  readonly table: ReadTable;
  readonly specimens = $derived.by(() => specimensInTable(this.table.rows, this.mapping));
  readonly quantity: Quantity = $derived.by(() =>
    quantityOfTarget(this.target, this.#notebook.contents),
  );
  readonly existing = $derived.by(() =>
    this.target.kind === 'existing'
      ? existingLogOf(this.#notebook.contents, this.target.specimen)
      : null,
  );
  readonly facts = $derived.by(
    () => this.preview && previewFacts(this.preview.rows, this.existing, this.#notebook.today),
  );
  readonly #notebook: NotebookState;
  #looking = new AbortController();
  /** The notebook as it was when the rows were held against it. */
  #lookedAt: Notebook | null = null;
  #broughtInto: InvestigationId | null = null;

  constructor(table: ReadTable, notebook: NotebookState) {
    this.table = table;
    this.#notebook = notebook;
    const { mapping, questions } = guessTable(table.rows, table.separator);
    this.mapping = mapping;
    this.questions = questions;
    this.#aimAnew();
  }

  get columns(): readonly TableColumn[] {
    return tableColumns(this.table.rows, this.mapping.hasHeading);
  }

  /** Whose rows are read, where the table says so. */
  get name(): SpecimenName | null {
    return this.mapping.only ?? this.specimens[0] ?? null;
  }

  get likelyQuantity(): Quantity {
    const headings = this.columns.map(({ heading }) => heading);
    return likelyQuantity(this.mapping, headings, this.name);
  }

  get openQuestions(): readonly ImportQuestion[] {
    return questionsFor(this.questions, this.mapping, this.quantity);
  }

  /** Questions that rows wait for; the others have a first answer already. */
  get unanswered(): readonly ImportQuestion[] {
    return this.openQuestions.filter((question) => !isAnswered(question, this.mapping));
  }

  putColumn(field: ImportField, column: number | undefined): void {
    this.#change(changeColumns(this.mapping, { field, column }, this.table));
  }

  setHeading(hasHeading: boolean): void {
    this.#change(changeColumns({ ...this.mapping, hasHeading }, null, this.table));
  }

  change(part: Partial<ImportMapping>): void {
    this.mapping = { ...this.mapping, ...part };
    if (part.only) this.#aimAnew();
    void this.look();
  }

  aim(target: ImportTarget): void {
    const { quantity } = this;
    this.target = target;
    if (this.quantity !== quantity) this.change({ zeroMeans: zeroMeansFor(this.quantity) });
    else void this.look();
  }

  /** Other words for what is begun: they change nothing of what comes in. */
  rename(target: ImportTarget): void {
    this.target = target;
  }

  /** Works out what would come in, a slice at a time. */
  async look(): Promise<void> {
    this.stop();
    const { signal } = (this.#looking = new AbortController());
    this.#lookedAt = this.#notebook.contents;
    const mapping = mappingFor(this.mapping, this.quantity);
    const looking = previewImportInSlices(this.table.rows, mapping, this.existing, 500);
    const preview = await finishInSlices(looking, {
      signal,
      onprogress: ({ rowsDone }) => (this.rowsDone = rowsDone),
    });
    if (signal.aborted) return;
    this.rowsDone = null;
    this.preview = preview;
    this.stage = { kind: 'open' };
  }

  stop(): void {
    this.#looking.abort();
    this.rowsDone = null;
  }

  /** Writes what was shown. A failure is the notebook's trouble, and the review stays as it is. */
  async bringIn(): Promise<void> {
    if (this.#lookedAt !== this.#notebook.contents) await this.look();
    const { preview, facts, target } = this;
    if (!preview || !facts || facts.comingIn === 0 || this.stage.kind !== 'open') return;
    const lineCount = facts.comingIn;
    this.stage = { kind: 'writing' };
    await breathe();
    const { drafts, specimen } = targetDrafts(
      preview,
      facts,
      target,
      this.mapping.days,
      this.#notebook,
    );
    const written = await this.#notebook.writeAll(drafts);
    this.stage = written.ok ? { kind: 'done', specimen, lineCount } : { kind: 'open' };
    this.#broughtInto = this.#notebook.contents.specimens.get(specimen)?.investigation ?? null;
  }

  #change({ mapping, questions }: ReturnType<typeof changeColumns>): void {
    this.mapping = mapping;
    this.questions = questions;
    void this.look();
  }

  #aimAnew(): void {
    const { contents } = this.#notebook;
    this.target = firstTarget(this.name, this.likelyQuantity, contents, this.#broughtInto);
    this.mapping = { ...this.mapping, zeroMeans: zeroMeansFor(this.quantity) };
  }
}

export type ReviewStage =
  | { readonly kind: 'open' | 'writing' }
  | { readonly kind: 'done'; readonly specimen: SpecimenId; readonly lineCount: number };
