import { keepPersistent, readRoom, type Persistence, type Room } from '#notebook';

/** What this browser says about keeping the notebook: may it clear it, and how much room is there. */
export class Keeping {
  persistence = $state<Persistence | 'not-asked'>('not-asked');
  room = $state.raw<Room | null>(null);
  readonly #storage: Partial<StorageManager> | undefined;

  constructor(storage: Partial<StorageManager> | undefined = globalThis.navigator?.storage) {
    this.#storage = storage;
  }

  /** Looks without asking anybody anything. */
  async look(): Promise<void> {
    this.room = await readRoom(this.#storage);
    if (this.persistence === 'not-asked') this.persistence = await lookAtPersistence(this.#storage);
  }

  /** Asks the browser to keep the notebook; some browsers ask the user in turn. */
  async ask(): Promise<void> {
    this.persistence = await keepPersistent(this.#storage);
    this.room = await readRoom(this.#storage);
  }
}

/** A browser that has not granted it yet can still be asked. */
async function lookAtPersistence(
  storage: Partial<StorageManager> | undefined,
): Promise<Persistence | 'not-asked'> {
  if (!storage?.persist || !storage.persisted) return 'not-available';
  try {
    return (await storage.persisted()) ? 'granted' : 'not-asked';
  } catch {
    return 'not-available';
  }
}
