/**
 * Asks the browser not to clear this site's data when the device runs out of room. A sensible
 * moment is after the first reading: then there is something to lose. The browser decides, in
 * some browsers by asking the user; a page on plain http cannot ask.
 */
export async function keepPersistent(
  storage: Partial<StorageManager> | undefined = globalThis.navigator?.storage,
): Promise<Persistence> {
  if (!storage?.persist) return 'not-available';
  try {
    return (await storage.persist()) ? 'granted' : 'refused';
  } catch {
    return 'not-available';
  }
}

export type Persistence = 'granted' | 'refused' | 'not-available';
