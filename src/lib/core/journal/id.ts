import type { Brand } from '#core/base';

export type EntryId = Brand<string, 'EntryId'>;
export type DeviceId = Brand<string, 'DeviceId'>;
export type PersonId = Brand<string, 'PersonId'>;
export type InvestigationId = Brand<string, 'InvestigationId'>;
export type SpecimenId = Brand<string, 'SpecimenId'>;
export type DrawingId = Brand<string, 'DrawingId'>;
export type LessonId = Brand<string, 'LessonId'>;
export type AnyId =
  EntryId | DeviceId | PersonId | InvestigationId | SpecimenId | DrawingId | LessonId;

/**
 * A new id: a UUID version 7, which sorts by the moment it was made.
 * Source: RFC 9562 section 5.7.
 *
 * @param epochMs the moment, in milliseconds since 1970 (0 to 2^48 - 1)
 * @param random at least ten random bytes
 * @example
 * newId(0x017f22e279b0, Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f])) // => '017f22e2-79b0-7cc3-98c4-dc0c0c07398f'
 */
export function newId<Id extends AnyId>(epochMs: number, random: Uint8Array): Id {
  if (random.length < 10) throw new Error('A new id needs ten random bytes');
  if (!Number.isInteger(epochMs) || epochMs < 0 || epochMs >= 2 ** 48) {
    throw new Error('A new id needs a moment in whole milliseconds');
  }
  const time = epochMs.toString(16).padStart(12, '0');
  const bytes = [...random.slice(0, 10)];
  bytes[0] = 0x70 | (bytes[0]! & 0x0f);
  bytes[2] = 0x80 | (bytes[2]! & 0x3f);
  const tail = bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [
    time.slice(0, 8),
    time.slice(8, 12),
    tail.slice(0, 4),
    tail.slice(4, 8),
    tail.slice(8, 20),
  ].join('-') as Id;
}

const idForm = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/**
 * Whether unknown text has the form of an id.
 * @example
 * isId('017f22e2-79b0-7cc3-98c4-dc0c0c07398f') // => true
 * @example
 * isId('bean') // => false
 */
export const isId = (text: string): boolean => idForm.test(text);
