import type { DeviceMemory } from '#notebook';

/** Where a child is in the talk: remembered by the device, so that a reload goes on there. */
export interface TalkPlace {
  readonly key: string;
  readonly tries: number;
  readonly help: string;
  readonly said: string;
  /** Whether the child was telling it to a grown-up. */
  readonly isTelling: boolean;
}

export function readPlace(memory: DeviceMemory): TalkPlace | null {
  const kept = memory.read(name);
  if (!kept) return null;
  try {
    const { key, tries, help, said, isTelling } = JSON.parse(kept) as Partial<TalkPlace>;
    const isPlace = typeof key === 'string' && typeof help === 'string' && Number.isInteger(tries);
    return isPlace
      ? { key, help, tries: tries ?? 0, said: String(said ?? ''), isTelling: isTelling === true }
      : null;
  } catch {
    return null;
  }
}

export const writePlace = (memory: DeviceMemory, place: TalkPlace | null): void =>
  memory.write(name, place ? JSON.stringify(place) : '');

const name = 'talk';
