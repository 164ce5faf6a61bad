/**
 * Small things this device remembers for its own comfort: who is writing, which log was open.
 * Nothing here is part of the journal, and losing it loses no work. Where the browser keeps
 * nothing (a private window), it is remembered until the window closes.
 */
export class DeviceMemory {
  readonly #kept = new Map<string, string>();

  read(key: string): string | null {
    try {
      return localStorage.getItem(prefix + key) ?? this.#kept.get(key) ?? null;
    } catch {
      return this.#kept.get(key) ?? null;
    }
  }

  write(key: string, value: string): void {
    this.#kept.set(key, value);
    try {
      localStorage.setItem(prefix + key, value);
    } catch {
      // Kept until the window closes, which is all a private window allows.
    }
  }
}

const prefix = 'morning-measure:';
