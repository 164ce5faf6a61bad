import type { Entry } from '#core/journal';
import { keepPersistent, type JournalStore } from '#store';
import type { DeviceMemory } from './device-memory';

/**
 * Asks the browser to keep the notebook even when it clears up, once on a device: when the first
 * reading was saved, because then there is something to lose. The answer is shown under Records.
 */
export function askToKeep(
  entries: readonly Entry[],
  store: Pick<JournalStore, 'keeps'>,
  memory: DeviceMemory,
): void {
  const hasReading = entries.some((entry) => entry.kind === 'reading-taken');
  if (!hasReading || store.keeps === 'until-closed' || memory.read(askedKey) !== null) return;
  memory.write(askedKey, 'yes');
  void keepPersistent();
}

const askedKey = 'asked-to-keep';
