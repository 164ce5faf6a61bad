import { isId, newId, type DeviceId } from '#core/journal';
import type { JournalTransaction } from './journal-database';

/** This device's own id: made at the first opening, and the same ever after. */
export async function keepDeviceId(
  transaction: JournalTransaction<'readwrite'>,
): Promise<DeviceId> {
  const meta = transaction.objectStore('meta');
  const kept = await meta.get('device');
  if (typeof kept === 'string' && isId(kept)) return kept as DeviceId;
  const made = newDeviceId();
  await meta.put(made, 'device');
  return made;
}

/** Made of `getRandomValues`, which a page on plain http has too. */
export const newDeviceId = (): DeviceId =>
  newId<DeviceId>(Date.now(), crypto.getRandomValues(new Uint8Array(10)));
