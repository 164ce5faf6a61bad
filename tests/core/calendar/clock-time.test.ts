import { describe, expect, it } from 'vitest';
import { isClockTime, minutesIntoDay, parseClockTime } from '#core/calendar';

describe('reading a time of day', () => {
  it.each([
    ['7:30', '07:30'],
    ['07:30', '07:30'],
    ['7.30', '07:30'],
    ['7:30 am', '07:30'],
    ['7:30am', '07:30'],
    ['7:30 A.M.', '07:30'],
    ['7.30 p.m.', '19:30'],
    ['7:30 PM', '19:30'],
    ['7 pm', '19:00'],
    ['19:05', '19:05'],
    ['19:05:59', '19:05'],
    ['0:00', '00:00'],
    ['23:59', '23:59'],
    // Noon and midnight by common practice; no standard fixes them.
    ['12:00 am', '00:00'],
    ['12:30 am', '00:30'],
    ['12:00 pm', '12:00'],
    [' 7:30 ', '07:30'],
  ])('reads %j as %s', (text, time) => {
    expect(parseClockTime(text)).toEqual({ ok: true, value: time });
    expect(isClockTime(time)).toBe(true);
  });

  it.each([
    ['24:00', 'no-such-time'],
    ['25:00', 'no-such-time'],
    ['7:60', 'no-such-time'],
    ['7:30:60', 'no-such-time'],
    ['13:30 pm', 'no-such-time'],
    ['0:30 am', 'no-such-time'],
    ['', 'not-a-time'],
    ['7', 'not-a-time'],
    ['730', 'not-a-time'],
    ['7:3', 'not-a-time'],
    ['7:30 xm', 'not-a-time'],
    ['-7:30', 'not-a-time'],
    ['morning', 'not-a-time'],
  ])('says of %j that it is %s', (text, kind) => {
    expect(parseClockTime(text)).toEqual({ ok: false, error: { kind, text } });
  });

  it.each(['7:30', '24:00', '07:60', '07:30:00', ''])('does not take %j as kept form', (text) => {
    expect(isClockTime(text)).toBe(false);
  });

  it('counts minutes from midnight', () => {
    const minutes = ['0:00', '7:30', '23:59'].map((text) => {
      const parsed = parseClockTime(text);
      return parsed.ok ? minutesIntoDay(parsed.value) : parsed;
    });
    expect(minutes).toEqual([0, 450, 1439]);
  });
});
