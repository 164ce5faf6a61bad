import { describe, expect, it } from 'vitest';
import { likelyDayOrder, readDayText } from '#core/calendar';

describe('reading a day as people write it', () => {
  it.each([
    '2026-03-09',
    '2026/3/9',
    '2026-3-9',
    '2026.03.09',
    '20260309',
    '9 Mar 2026',
    '09 March 2026',
    '9th of March 2026',
    '9-Mar-2026',
    'Mon 9 Mar 2026',
    'Monday, 9 March 2026',
    'March 9, 2026',
    'Mar. 9 2026',
    'MARCH 9TH, 2026',
    'Mon, Mar 9, 2026',
    '  9   march  2026 ',
    '2026-03-09T07:30',
    '2026-03-09T07:30:15Z',
    '2026-03-09T23:30:00.000-05:00',
    '2026-03-09 07:30',
    '2026-03-09t00:30+1300',
    '20260309T0730',
    '20260309T073015Z',
    'March 9, 2026 7:30 am',
    'March 9, 2026, 7:30 PM',
  ])('reads %j', (text) => {
    expect(readDayText(text)).toEqual({ ok: true, value: '2026-03-09' });
  });

  it('takes the date that was written, whatever zone stands beside the time', () => {
    // At this moment it is already the tenth in UTC.
    expect(readDayText('2026-03-09T23:30:00-05:00')).toEqual({ ok: true, value: '2026-03-09' });
  });

  it.each(['9.3.2026', '9/3/2026', '09-03-2026', '9. 3. 2026', '9/3/2026 7:30'])(
    'reads %j day first when told so',
    (text) => {
      expect(readDayText(text, 'day-first')).toEqual({ ok: true, value: '2026-03-09' });
      expect(readDayText(text, 'month-first')).toEqual({ ok: true, value: '2026-09-03' });
    },
  );

  it('asks when both orders give a day and none was named', () => {
    expect(readDayText('3/9/2026')).toEqual({
      ok: false,
      error: {
        kind: 'ambiguous-order',
        text: '3/9/2026',
        dayFirst: '2026-09-03',
        monthFirst: '2026-03-09',
      },
    });
  });

  it('needs no order where only one gives a day, or both give the same', () => {
    expect(readDayText('14/3/2026')).toEqual({ ok: true, value: '2026-03-14' });
    expect(readDayText('3/14/2026')).toEqual({ ok: true, value: '2026-03-14' });
    expect(readDayText('5.5.2026')).toEqual({ ok: true, value: '2026-05-05' });
  });

  it('does not slip into the other order, but offers it', () => {
    expect(readDayText('3/14/2026', 'day-first')).toEqual({
      ok: false,
      error: { kind: 'no-such-day', text: '3/14/2026', otherOrder: '2026-03-14' },
    });
    expect(readDayText('31/4/2026', 'day-first')).toEqual({
      ok: false,
      error: { kind: 'no-such-day', text: '31/4/2026' },
    });
  });

  it.each([
    ['31 April 2026', 'no-such-day'],
    ['2026-02-30', 'no-such-day'],
    ['Feb 29, 2023', 'no-such-day'],
    ['20261309', 'no-such-day'],
    ['32/33/2026', 'no-such-day'],
    ['9 Mar 26', 'two-digit-year'],
    ["Mar 9, '26", 'two-digit-year'],
    ['3/9/26', 'two-digit-year'],
    ['26-03-09', 'two-digit-year'],
    ['1 Jan 1850', 'year-out-of-range'],
    ['3/9/2300', 'year-out-of-range'],
    ['09032026', 'year-out-of-range'],
    ['', 'not-a-day'],
    ['yesterday', 'not-a-day'],
    ['March 2026', 'not-a-day'],
    ['March 9', 'not-a-day'],
    ['9 Ma 2026', 'not-a-day'],
    ['9 Foo 2026', 'not-a-day'],
    ['Foo 9 Mar 2026', 'not-a-day'],
    ['3/9-2026', 'not-a-day'],
    ['12', 'not-a-day'],
    ['12.5', 'not-a-day'],
    ['4 1/2', 'not-a-day'],
    ['2026-03-09T99:99', 'not-a-day'],
    ['2026-03-09 and more', 'not-a-day'],
    ['9 '.repeat(100), 'not-a-day'],
  ])('says of %j that it is %s', (text, kind) => {
    expect(readDayText(text)).toEqual({ ok: false, error: { kind, text } });
  });

  it('notices a weekday that does not belong to the day', () => {
    expect(readDayText('Tuesday 9 March 2026')).toEqual({
      ok: false,
      error: { kind: 'wrong-weekday', text: 'Tuesday 9 March 2026', day: '2026-03-09' },
    });
  });
});

describe('the order a column of days is written in', () => {
  it.each([
    [['3/9/2026', '14/9/2026'], 'day-first'],
    [['3/9/2026', '9/14/2026'], 'month-first'],
    [['3/9/2026', '4/9/2026'], 'either'],
    [['5/5/2026'], 'either'],
    [['14/9/2026', '9/14/2026'], 'neither'],
    [['2026-03-09', '9 Mar 2026'], 'either'],
    [['31/31/2026', 'lost', '', '9/14/2026'], 'month-first'],
    [[], 'either'],
  ])('finds for %j: %s', (texts, order) => {
    expect(likelyDayOrder(Object.freeze(texts))).toBe(order);
  });
});
