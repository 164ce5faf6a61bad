import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseMeasured, type MarkId, type Unit } from '#core/measure';
import { finerKeys, pressKey, type PadKey } from '../../../src/lib/ui/pad/pad-keys';

const figure = (text: string): PadKey => ({ kind: 'figure', figure: text });
const fraction = (text: string): PadKey => ({ kind: 'fraction', fraction: text });
const point: PadKey = { kind: 'decimal', sign: 'point' };
const takeBack: PadKey = { kind: 'take-back' };
const pressAll = (...keys: PadKey[]) => keys.reduce(pressKey, '');

describe('the keys a mark calls for', () => {
  test.each<[Unit, MarkId, string[], boolean]>([
    ['in', '1 in', [], false],
    ['in', '1/2 in', ['1/2'], false],
    ['in', '1/4 in', ['1/4', '1/2', '3/4'], false],
    ['in', '1/8 in', ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'], false],
    ['in', '0.1 in', [], true],
    ['in', '0.01 in', [], true],
    ['cm', '1 cm', [], false],
    ['cm', '0.5 cm', [], true],
    ['cm', '1 mm', [], true],
    ['mm', '1 mm', [], false],
    ['mm', '0.1 mm', [], true],
    ['m', '1 cm', [], true],
    ['ft', '1/2 in', [], false],
    ['count', '1', [], false],
    ['cm', '1/2 in', [], false],
  ])('%s read to %s: fractions %j, a decimal sign %s', (unit, mark, fractions, decimal) => {
    expect(finerKeys(unit, mark)).toEqual({ fractions, decimal });
  });
});

describe('pressing keys', () => {
  test('writes what a child would write', () => {
    expect(pressAll(figure('1'), figure('2'))).toBe('12');
    expect(pressAll(figure('4'), fraction('1/2'))).toBe('4 1/2');
    expect(pressAll(fraction('3/4'))).toBe('3/4');
    expect(pressAll(figure('1'), figure('2'), point, figure('5'))).toBe('12.5');
    expect(pressKey('12', { kind: 'decimal', sign: 'comma' })).toBe('12,');
  });

  test('a second fraction takes the place of the first', () => {
    expect(pressAll(figure('4'), fraction('1/2'), fraction('1/4'))).toBe('4 1/4');
  });

  test('a figure pressed after a fraction belongs to the whole number', () => {
    expect(pressAll(fraction('1/2'), figure('4'))).toBe('4 1/2');
    expect(pressAll(figure('1'), fraction('1/2'), figure('0'))).toBe('10 1/2');
  });

  test('a second decimal sign changes nothing, and one alone gets its zero', () => {
    expect(pressAll(point)).toBe('0.');
    expect(pressAll(figure('3'), point, point, figure('5'))).toBe('3.5');
    expect(pressAll(figure('3'), fraction('1/2'), point)).toBe('3 1/2');
  });

  test('taking back removes one figure, or a fraction in one piece', () => {
    expect(pressAll(figure('4'), fraction('1/2'), takeBack)).toBe('4');
    expect(pressAll(figure('4'), figure('2'), takeBack)).toBe('4');
    expect(pressKey('', takeBack)).toBe('');
    expect(pressKey('1 2', takeBack)).toBe('1');
    expect(pressKey('4 1/2', { kind: 'clear' })).toBe('');
  });

  test('a seventh figure is not written', () => {
    expect(pressAll(...Array.from('1234567', figure))).toBe('123456');
  });

  test('whatever is pressed, the line is empty, unfinished or a reading of the mark', () => {
    const quarterInch = finerKeys('in', '1/4 in').fractions.map(fraction);
    const anyKey = fc.constantFrom(...Array.from('0123456789', figure), ...quarterInch, takeBack);
    fc.assert(
      fc.property(fc.array(anyKey, { maxLength: 8 }), (keys) => {
        const text = pressAll(...keys);
        if (text === '') return;
        const parsed = parseMeasured(text, { unit: 'in', mark: '1/4 in' });
        const mark = parsed.ok ? parsed.value.mark : parsed.error.kind;
        expect(['1/4 in', 'too-big']).toContain(mark);
      }),
      { seed: 20261125 },
    );
  });
});
