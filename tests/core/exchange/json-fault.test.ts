import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findJsonFault } from '../../../src/lib/core/exchange/json-fault';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

test('X26 finds a fault exactly where the platform does not read JSON', () => {
  // The outside judge is the platform's own JSON.parse.
  const pieces = fc.constantFrom(
    ...['{', '}', '[', ']', ',', ':', ' ', '"a"', '"', '\\', '\\n', '\\u12', '1', '-', '0', '.5'],
    ...['e9', 'E', '+', 'true', 'nul', 'null', '\n', '\t', 'x'],
  );
  fc.assert(
    fc.property(
      fc.array(pieces, { maxLength: 12 }).map((all) => all.join('')),
      (text) => {
        expect(findJsonFault(text) === null).toBe(isJson(text));
      },
    ),
    { seed: 41, numRuns: 4000 },
  );
});

test('X26 every beginning of JSON is called cut short, and is not called a fault inside', () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 3 }), fc.nat(), (json, place) => {
      const text = `[${json}]`;
      const cut = text.slice(0, 1 + (place % (text.length - 1)));
      expect(findJsonFault(cut)).toEqual({ position: cut.length, isCutShort: true });
    }),
    { seed: 42, numRuns: 2000 },
  );
});

test('X26 what stands before a fault is the beginning of JSON, and with it no longer is', () => {
  fc.assert(
    fc.property(
      fc.json({ maxDepth: 2 }),
      fc.nat(),
      fc.constantFrom(...'}],:x"\\1-'),
      (json, place, other) => {
        const at = place % (json.length + 1);
        const text = json.slice(0, at) + other + json.slice(at);
        const fault = findJsonFault(text);
        fc.pre(fault !== null && !fault.isCutShort);
        const before = findJsonFault(text.slice(0, fault!.position));
        expect(before === null || before.isCutShort).toBe(true);
        expect(findJsonFault(text.slice(0, fault!.position + 1))).toEqual(fault);
      },
    ),
    { seed: 43, numRuns: 2000 },
  );
});

test.each([
  ['{"a": 1,}', 8],
  ['{"a" 1}', 5],
  ['[1 2]', 3],
  ['[01]', 2],
  ['{a: 1}', 1],
  ['["a\tb"]', 3],
  ['["\\x"]', 3],
  ['["\\u12g4"]', 6],
  ['[1.e5]', 3],
  ['[-x]', 2],
  ['{"a": tru }', 9],
  ['[] []', 3],
])('X26 the fault of %s stands at %i', (text, position) => {
  expect(findJsonFault(text)).toEqual({ position, isCutShort: false });
});
