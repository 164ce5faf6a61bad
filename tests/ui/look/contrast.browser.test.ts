import '#ui/look';
import { afterEach, describe, expect, test } from 'vitest';
import { cdp } from 'vitest/browser';
import { contrast } from './contrast';

const root = document.documentElement;
const token = (name: string): string => getComputedStyle(root).getPropertyValue(`--${name}`).trim();
const preferring = (scheme: string) =>
  cdp().send('Emulation.setEmulatedMedia', {
    features: [{ name: 'prefers-color-scheme', value: scheme }],
  });

afterEach(async () => {
  delete root.dataset.theme;
  await preferring('light');
});

// Words need 4.5:1 (WCAG 2.2, 1.4.3).
const words = [
  ...['paper', 'sheet', 'tint', 'action-tint', 'ask-tint'].map((on) => ['ink', on]),
  ...['paper', 'sheet', 'tint', 'action-tint', 'ask-tint'].map((on) => ['ink-soft', on]),
  ...['paper', 'sheet', 'action-tint', 'ask-tint'].map((on) => ['action', on]),
  ...['action', 'action-deep'].map((on) => ['on-action', on]),
  ...['paper', 'sheet', 'ask-tint'].map((on) => ['ask', on]),
] as [string, string][];

// Lines, edges and marks need 3:1 (WCAG 2.2, 1.4.11).
const marks = [
  ...['paper', 'sheet', 'tint'].map((on) => ['pencil', on]),
  ...['paper', 'sheet', 'tint', 'action-tint', 'ask-tint'].map((on) => ['focus', on]),
  ...['paper', 'sheet', 'ask-tint'].map((on) => ['ask-line', on]),
  ['strip-line', 'sheet'],
  ['strip-line', 'paper'],
  ['action', 'tint'],
  ['action', 'strip'],
  // The outline in ink carries the paler data colours; these reach it by themselves.
  ...['blue', 'vermilion', 'green', 'purple', 'ink'].map((name) => [`data-${name}`, 'sheet']),
] as [string, string][];

describe.each(['light', 'dark'])('the %s theme', (theme) => {
  test.each(words)('%s on %s is easy to read', (word, ground) => {
    root.dataset.theme = theme;
    expect(contrast(token(word), token(ground))).toBeGreaterThanOrEqual(4.5);
  });

  test.each(marks)('%s on %s is easy to see', (mark, ground) => {
    root.dataset.theme = theme;
    expect(contrast(token(mark), token(ground))).toBeGreaterThanOrEqual(3);
  });
});

test('the measure of contrast agrees with known pairs', () => {
  // Black on white is 21:1 by definition; #767676 is the lightest grey that passes on white
  // (4.54:1) and #777777 just fails (4.48:1): widely published, from memory.
  expect(contrast('#000000', '#ffffff')).toBe(21);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});

test('data colours are the published Okabe-Ito palette', () => {
  // Okabe and Ito, Color Universal Design (2002, revised 2008).
  const published = {
    orange: [230, 159, 0],
    sky: [86, 180, 233],
    green: [0, 158, 115],
    yellow: [240, 228, 66],
    blue: [0, 114, 178],
    vermilion: [213, 94, 0],
    purple: [204, 121, 167],
  };
  for (const [name, parts] of Object.entries(published)) {
    const hex = `#${parts.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
    expect(token(`data-${name}`)).toBe(hex);
  }
});

test('a device that prefers the dark gets the same dark theme as one that chose it', async () => {
  const names = [...document.styleSheets]
    .flatMap((sheet) => [...sheet.cssRules])
    .filter((rule): rule is CSSStyleRule => rule instanceof CSSStyleRule)
    .filter((rule) => rule.selectorText.includes('data-theme'))
    .flatMap((rule) => [...rule.style])
    .filter((name) => name.startsWith('--'))
    .map((name) => name.slice(2));
  expect(names).toContain('paper');

  const light = names.map(token);
  root.dataset.theme = 'dark';
  const chosen = names.map(token);
  delete root.dataset.theme;
  await preferring('dark');
  expect(names.map(token)).toEqual(chosen);
  expect(chosen).not.toEqual(light);

  root.dataset.theme = 'light';
  expect(names.map(token)).toEqual(light);
});
