import type { Result } from '#core/base';
import type { NotebookState } from '#notebook';
import type { PutAway, StoreError } from '#store';

/** What was put away out of sight on this device, and the ways to put it back or erase it. */
export class PutAwayState {
  /** What can be put back, or null. */
  mark = $state.raw<PutAway | null>(null);
  /** What was done last in this window, to say so. */
  done = $state.raw<PutAwayDeed | null>(null);
  readonly #notebook: NotebookState;

  constructor(notebook: NotebookState) {
    this.#notebook = notebook;
  }

  /** Looks now, and again when another tab puts away or back. Returns the way to stop. */
  follow(): () => void {
    void this.#look();
    return this.#notebook.store.onReplacedElsewhere(() => {
      this.done = null;
      void this.#look();
    });
  }

  putAway = (): Promise<void> =>
    this.#do('put-away', () => this.#notebook.store.putAway(this.#notebook.clock.nowMs()));

  putBack = (): Promise<void> =>
    this.#doToWhatIsThere('put-back', () => this.#notebook.store.putBack());

  erase = async (): Promise<void> => {
    await this.#doToWhatIsThere('erased', () => this.#notebook.store.erasePutAway());
    if (this.done !== 'erased' || this.#notebook.entries.length > 0) return;
    // What the device remembers of an erased notebook goes with it.
    this.#notebook.forgetAuthor();
    this.#notebook.memory.write('specimen', '');
  };

  /** Another tab may have put it back, or erased it, meanwhile: then there is nothing to say. */
  async #doToWhatIsThere(deed: PutAwayDeed, work: Work): Promise<void> {
    this.done = null;
    await this.#look();
    if (this.mark) await this.#do(deed, work);
    else await this.#notebook.reload();
  }

  async #do(deed: PutAwayDeed, work: Work): Promise<void> {
    const ended = await work();
    if (!ended.ok) {
      this.#notebook.trouble = ended.error;
      return;
    }
    await this.#notebook.reload();
    await this.#look();
    this.done = deed;
  }

  async #look(): Promise<void> {
    const read = await this.#notebook.store.readPutAway();
    if (read.ok) this.mark = read.value;
    else this.#notebook.trouble = read.error;
  }
}

export type PutAwayDeed = 'put-away' | 'put-back' | 'erased';

type Work = () => Promise<Result<unknown, StoreError>>;
