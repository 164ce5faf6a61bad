import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareEntries,
  decodeEntry,
  isId,
  isStamp,
  isUnderstood,
  mergeEntries,
  momentOfStamp,
  newId,
  nextStamp,
  stampOf,
  type JournalEntry,
  type Stamp,
} from '#core/journal';
import { anId, begun, took } from './entries';

const reading = took(5, '2026-03-10', 1);
const without = (field: string): unknown => {
  const copy: Record<string, unknown> = { ...reading };
  delete copy[field];
  return copy;
};

describe('entries', () => {
  it('J1 makes the id of the worked example in RFC 9562 appendix A.6', () => {
    // 017F22E2-79B0-7CC3-98C4-DC0C0C07398F: rand_a = CC3, rand_b = 18C4DC0C0C07398F.
    const random = [0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f];
    expect(newId(1645557742000, Uint8Array.from(random))).toBe(
      '017f22e2-79b0-7cc3-98c4-dc0c0c07398f',
    );
  });

  it('J1 makes ids that have the form and the order of their moments', () => {
    const moment = fc.integer({ min: 0, max: 2 ** 47 });
    const bytes = fc.uint8Array({ minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(moment, moment, bytes, bytes, (early, late, first, second) => {
        fc.pre(early < late);
        const [left, right] = [newId(early, first), newId(late, second)];
        expect(isId(left) && isId(right) && left < right).toBe(true);
      }),
      { seed: 1 },
    );
  });

  it('J2 stamps always go forward, whatever the clock does', () => {
    const clock = fc.array(fc.integer({ min: 0, max: 4_000_000_000_000 }), { minLength: 2 });
    fc.assert(
      fc.property(clock, (moments) => {
        let last: Stamp | null = null;
        for (const moment of moments) {
          const next = nextStamp(last, moment);
          expect(isStamp(next)).toBe(true);
          if (last !== null) expect(next > last).toBe(true);
          last = next;
        }
      }),
      { seed: 2 },
    );
  });

  it('J2 goes on to the next millisecond when the counter is full', () => {
    const next = nextStamp(stampOf(1000, 99_999), 1000);
    expect([momentOfStamp(next), next.slice(-5)]).toEqual([1001, '00000']);
  });

  it('J3 decodes every entry this version writes, unchanged', () => {
    for (const entry of [...begun, reading]) {
      expect(decodeEntry(entry)).toEqual({ ok: true, value: entry });
    }
  });

  it.each([
    ['a number', 7, 'not-an-entry', ''],
    ['nothing', null, 'not-an-entry', ''],
    ['an entry with no id', without('id'), 'not-an-entry', 'id'],
    ['a stamp that is no moment', { ...reading, at: '2026-02-31' }, 'not-an-entry', 'at'],
    ['a reading with no value', without('measured'), 'damaged-entry', 'measured'],
    ['a day that is none', { ...reading, day: '2026-02-30' }, 'damaged-entry', 'day'],
    [
      'a value that is no whole number of nanometres',
      { ...reading, measured: { ...reading, text: '1', unit: 'cm', mark: '1 cm', exact: 0.5 } },
      'damaged-entry',
      'measured.exact',
    ],
    [
      'a mark nobody knows',
      { ...reading, measured: { text: '1', unit: 'cm', mark: '1/3 in', exact: 1 } },
      'damaged-entry',
      'measured.mark',
    ],
  ])('J3 refuses %s and names the field', (_, data, kind, field) => {
    const decoded = decodeEntry(data);
    expect(decoded.ok ? decoded.value : decoded.error).toMatchObject({ kind, field });
  });

  it('J3 keeps an entry of an unknown kind or a newer version with every field', () => {
    for (const stranger of [
      { ...reading, kind: 'moon-seen', phase: 'half' },
      { ...reading, v: 2, measured: { inWords: 'one' } },
    ]) {
      const decoded = decodeEntry(stranger);
      expect(decoded).toEqual({ ok: true, value: stranger });
      expect(decoded.ok && isUnderstood(decoded.value)).toBe(false);
    }
  });

  it('J4 orders by stamp, then device, then id', () => {
    const entry = (at: string, device: string, id: string) => ({ at, device, id }) as JournalEntry;
    const inOrder = [
      entry('1', 'b', 'z'),
      entry('2', 'a', 'y'),
      entry('2', 'b', 'a'),
      entry('2', 'b', 'b'),
    ];
    expect([...inOrder].reverse().sort(compareEntries)).toEqual(inOrder);
  });

  it('J5 merges two journals to the same union from either side', () => {
    const pool = [...begun, reading, took(6, '2026-03-11', 2)];
    const some = fc.subarray(pool);
    fc.assert(
      fc.property(some, some, (left, right) => {
        const merged = mergeEntries(left, right);
        expect(merged).toEqual(mergeEntries(right, left));
        expect(mergeEntries(merged, left)).toEqual(merged);
        expect(new Set(merged.map((entry) => entry.id)).size).toBe(merged.length);
      }),
      { seed: 3 },
    );
  });

  it('J5 keeps the same one of two entries that claim one id', () => {
    const other = { ...took(5, '2026-03-10', 9), at: reading.at };
    expect(other.id).toBe(anId(5));
    expect(mergeEntries([reading], [other])).toEqual(mergeEntries([other], [reading]));
    expect(mergeEntries([reading], [other])).toHaveLength(1);
  });
});
