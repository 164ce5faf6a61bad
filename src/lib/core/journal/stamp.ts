import type { Brand } from '#core/base';

/**
 * When an entry was written, as a hybrid logical clock: the device's clock, and a counter that
 * keeps entries in the order they were written when the clock stands still or is set back.
 * It has a fixed length, so that sorting the text sorts the moments.
 *
 * Source: Kulkarni, Demirbas, Madappa, Avva, Leone, "Logical Physical Clocks" (2014), section 3.
 */
export type Stamp = Brand<string, 'Stamp'>;

const counterDigits = 5;
const greatestCounter = 10 ** counterDigits - 1;
const stampForm = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z-\d{5}$/;

/**
 * The stamp of a moment.
 * @param epochMs milliseconds since 1970, in the years 1970 to 9999
 * @example
 * stampOf(1772438400000, 2) // => '2026-03-02T08:00:00.000Z-00002'
 */
export const stampOf = (epochMs: number, counter = 0): Stamp =>
  `${new Date(epochMs).toISOString()}-${String(counter).padStart(counterDigits, '0')}` as Stamp;

/**
 * The next stamp on a device: always after the last one it wrote or saw, even if its clock was
 * set back meanwhile.
 * @example
 * nextStamp(null, 1772438400000) // => '2026-03-02T08:00:00.000Z-00000'
 * @example
 * nextStamp(stampOf(1772438400000), 1600000000000) // => '2026-03-02T08:00:00.000Z-00001'
 */
export function nextStamp(last: Stamp | null, nowMs: number): Stamp {
  if (last === null) return stampOf(nowMs);
  const lastMs = momentOfStamp(last);
  if (nowMs > lastMs) return stampOf(nowMs);
  const counter = Number(last.slice(-counterDigits)) + 1;
  return counter > greatestCounter ? stampOf(lastMs + 1) : stampOf(lastMs, counter);
}

/**
 * The clock part of a stamp, in milliseconds since 1970.
 * @example
 * momentOfStamp(stampOf(1772438400000, 7)) // => 1772438400000
 */
export const momentOfStamp = (stamp: Stamp): number => Date.parse(stamp.slice(0, 24));

/**
 * Whether unknown text is a stamp of a real moment.
 * @example
 * isStamp('2026-03-02T08:00:00.000Z-00002') // => true
 * @example
 * isStamp('2026-13-02T08:00:00.000Z-00002') // => false
 */
export const isStamp = (text: string): text is Stamp =>
  stampForm.test(text) && !Number.isNaN(Date.parse(text.slice(0, 24)));
