import type { DeviceMemory } from '#notebook';

/**
 * How far north (above 0) or south a family lives, in degrees, where a grown-up wished to have it
 * kept: in this device's own memory, never in the journal, so in no backup and on no other device.
 */
export const latitudeKey = 'latitude';

export const keptLatitude = (memory: DeviceMemory): number | null => {
  const kept = memory.read(latitudeKey) ?? '';
  return kept === '' ? null : Number(kept);
};

export const keepLatitude = (memory: DeviceMemory, degrees: number): void =>
  memory.write(latitudeKey, String(degrees));

export const forgetLatitude = (memory: DeviceMemory): void => memory.write(latitudeKey, '');

/** Degrees as typed, from 0 to 90, whichever side of the equator; null for anything else. */
export const degreesIn = (text: string): number | null => {
  if (!/^\d{1,2}([.,]\d+)?$/.test(text.trim())) return null;
  const degrees = Number(text.trim().replace(',', '.'));
  return degrees <= 90 ? degrees : null;
};
