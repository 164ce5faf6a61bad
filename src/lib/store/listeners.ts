/** Those who asked to be told of one kind of event. */
export class Listeners<Told> {
  readonly #listeners = new Set<(told: Told) => void>();

  /** Returns the way to stop listening. */
  add(listener: (told: Told) => void): () => void {
    // Wrapped, so that one function given twice can stop once.
    const own = (told: Told): void => listener(told);
    this.#listeners.add(own);
    return () => void this.#listeners.delete(own);
  }

  tell(told: Told): void {
    for (const listener of [...this.#listeners]) listener(told);
  }

  clear(): void {
    this.#listeners.clear();
  }
}
