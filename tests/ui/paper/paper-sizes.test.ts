import { describe, expect, test } from 'vitest';
import {
  isPaperSize,
  marginMm,
  pageRule,
  paperSizes,
  sheetRoom,
} from '../../../src/lib/ui/paper/paper-sizes';

describe('a sheet of paper', () => {
  test('is as large as the standards say', () => {
    // ISO 216: A4 is 210 mm by 297 mm.
    expect([paperSizes.a4.widthMm, paperSizes.a4.heightMm]).toEqual([210, 297]);
    // ANSI/ASME Y14.1: size A, Letter, is 8.5 in by 11 in; an inch is 25.4 mm exactly.
    expect(paperSizes.letter.widthMm).toBeCloseTo(8.5 * 25.4, 9);
    expect(paperSizes.letter.heightMm).toBeCloseTo(11 * 25.4, 9);
  });

  test('has white all round, and a hair more at the foot so that no second page begins', () => {
    expect(sheetRoom('a4', 'tall')).toEqual({
      ...{ widthMm: 210 - 2 * marginMm, heightMm: 297 - 2 * marginMm - 0.5 },
    });
    expect(sheetRoom('letter', 'wide')).toEqual({
      ...{ widthMm: 279.4 - 2 * marginMm, heightMm: 215.9 - 2 * marginMm - 0.5 },
    });
  });

  test('is told to the browser with its width before its height', () => {
    expect(pageRule('a4', 'tall')).toBe('@page { size: 210mm 297mm; margin: 12mm; }');
    expect(pageRule('letter', 'wide')).toBe('@page { size: 279.4mm 215.9mm; margin: 12mm; }');
  });

  test('is one of those that are known', () => {
    expect(['a4', 'letter', 'toString', 'A4', null].map(isPaperSize)).toEqual([
      ...[true, true, false, false, false],
    ]);
  });
});
