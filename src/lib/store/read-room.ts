/**
 * How much this site keeps and how much it may keep, in bytes, as the browser estimates it; or
 * null where the browser does not say (plain http, older browsers).
 */
export async function readRoom(
  storage: Partial<StorageManager> | undefined = globalThis.navigator?.storage,
): Promise<Room | null> {
  if (!storage?.estimate) return null;
  try {
    const { usage, quota } = await storage.estimate();
    return usage === undefined || quota === undefined
      ? null
      : { usageBytes: usage, quotaBytes: quota };
  } catch {
    return null;
  }
}

export interface Room {
  readonly usageBytes: number;
  readonly quotaBytes: number;
}
