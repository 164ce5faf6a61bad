import { describe, expect, it } from 'vitest';
import { type Told } from '#core/questions';
import {
  asked,
  between,
  day,
  days,
  long,
  many,
  order,
  said,
  slip,
  stretch,
  time,
  word,
} from './judging';

describe('a length', () => {
  const seven = asked('read', long(7), [slip('other-day', long(9)), slip('forgot-unit', many(7))]);

  it('is right as it is and told in another unit', () => {
    expect(said(seven, long(7))).toBe('right');
    expect(said(seven, long(70, 'mm', '1 mm'))).toBe('right');
  });
  it('is nearly right without its unit, and with another one', () => {
    expect(said(seven, many(7))).toBe('forgot-unit');
    expect(said(asked('read', long(7)), many(7))).toBe('forgot-unit');
    expect(said(seven, long(7, 'in', '1 in'))).toBe('other-unit');
  });
  it('that is a usual slip is known with its unit and without', () => {
    expect(said(seven, long(9))).toBe('other-day');
    expect(said(seven, many(9))).toBe('other-day');
    expect(said(seven, long(8))).toBe('other');
  });
  it('that came most often is not how often it came', () => {
    const often = asked('between', long(3), [slip('count-for-axis', many(5, 'times'))]);
    expect(said(often, many(5))).toBe('count-for-axis');
    expect(said(often, long(5))).toBe('count-for-axis');
  });
});

describe('a share with some left over', () => {
  // 7 cm over 2 days: 3 each day and 1 left over.
  const share = asked('between', { ...between(long(3), long(4)), hasLeftOver: true } as Told, [
    slip('whole-jump', long(7)),
  ]);
  it('takes either neighbour and what lies between', () => {
    for (const given of [long(3), long(3.5, 'cm', '1 mm'), long(4), between(long(3), long(4))]) {
      expect(said(share, given)).toBe('right');
    }
    expect(said(share, long(5))).toBe('other');
  });
  it('knows its slips, and a number without its unit', () => {
    expect(said(share, long(7))).toBe('whole-jump');
    expect(said(share, many(3))).toBe('forgot-unit');
    expect(said(share, long(3, 'in', '1 in'))).toBe('other-unit');
  });
});

describe('a count', () => {
  const four = asked('between', many(4, 'days'), [slip('added', many(10, 'days'))]);
  it('is right whatever it is said to count', () => {
    expect(said(four, many(4, 'days'))).toBe('right');
    expect(said(four, many(4))).toBe('right');
  });
  it('is one of its slips, or another number', () => {
    expect(said(four, many(10))).toBe('added');
    expect(said(four, many(5))).toBe('other');
    expect(said(four, long(4))).toBe('other-unit');
  });
});

describe('days', () => {
  const two = asked('between', days(3, 4), [slip('one-day-only', day(4))]);
  it('of a pair are right in any order, and as a stretch from one to the other', () => {
    expect(said(two, days(3, 4))).toBe('right');
    expect(said(two, days(4, 3))).toBe('right');
    expect(said(two, stretch(3, 4, 1))).toBe('right');
  });
  it('of a pair are nearly right when there is one only, or one more', () => {
    expect(said(two, day(3))).toBe('one-day-only');
    expect(said(two, days(4))).toBe('one-day-only');
    expect(said(two, days(3, 4, 5))).toBe('more-than-asked');
    expect(said(two, days(4, 5))).toBe('other');
  });
  it('without a number are asked for all, and only those', () => {
    const missing = asked('read', days(3, 5, 6), [slip('blank-is-zero', long(0))]);
    expect(said(missing, days(6, 3, 5))).toBe('right');
    expect(said(missing, days(3, 6))).toBe('some-left-out');
    expect(said(missing, days(2, 3, 5, 6))).toBe('more-than-asked');
    expect(said(missing, many(0))).toBe('blank-is-zero');
    expect(said(missing, days())).toBe('other');
    expect(said(asked('read', days(5)), day(5))).toBe('right');
  });
  it('of one day take a list of that one, and know the day beside it', () => {
    const one = asked('read', day(4), [slip('other-day', day(5))]);
    expect(said(one, day(4))).toBe('right');
    expect(said(one, days(4))).toBe('right');
    expect(said(one, day(5))).toBe('other-day');
    expect(said(one, days(4, 5))).toBe('more-than-asked');
  });
  it('of a stretch are right with their gap, and without it', () => {
    const grew = asked('between', stretch(3, 4, 1), [slip('tallest-day', day(6))]);
    expect(said(grew, stretch(3, 4, 1))).toBe('right');
    expect(said(grew, days(4, 3))).toBe('right');
    expect(said(grew, stretch(3, 4, 2))).toBe('counted-ends');
    expect(said(grew, stretch(3, 4, 5))).toBe('other');
    expect(said(grew, day(6))).toBe('tallest-day');
    expect(said(grew, day(3))).toBe('one-day-only');
  });
  it('of the largest lead are no plant', () => {
    const most = asked('between', day(4), [slip('tallest-plant', word('Bean'))]);
    expect(said(most, word('Bean'))).toBe('tallest-plant');
    expect(said(most, word('Pea'))).toBe('other');
  });
});

describe('an order', () => {
  const sorted = order(day(3), day(2), day(4));
  const three = asked('between', sorted, [
    slip('reversed', order(day(4), day(2), day(3))),
    slip('log-order', order(day(2), day(3), day(4))),
  ]);
  it('is right in that order only, as things or as days one after the other', () => {
    expect(said(three, sorted)).toBe('right');
    expect(said(three, days(3, 2, 4))).toBe('right');
    expect(said(three, order(day(2), day(3), day(4)))).toBe('log-order');
    expect(said(three, order(day(4), day(2), day(3)))).toBe('reversed');
    expect(said(three, order(day(3), day(4), day(2)))).toBe('other');
    expect(said(three, order(day(3), day(2)))).toBe('other');
  });
  it('of times is one of times', () => {
    const times = asked('between', order(time('12:00'), time('15:00'), time('09:00')));
    expect(said(times, order(time('12:00'), time('15:00'), time('09:00')))).toBe('right');
    expect(said(times, order(time('09:00'), time('12:00'), time('15:00')))).toBe('other');
  });
});
