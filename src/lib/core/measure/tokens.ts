import { doubleQuotes, singleQuotes } from './unit-word';

/**
 * A reading's text in pieces. Digits come out as ASCII, quotes as `"` and `'`, fractions that are
 * one character as two numbers; `start` and `end` point into the text as it was typed.
 */
export type Token = TokenPlace &
  (
    | { readonly kind: 'digits'; readonly digits: string }
    | { readonly kind: 'separator'; readonly sign: '.' | ',' }
    | { readonly kind: 'fraction'; readonly numerator: string; readonly denominator: string }
    | { readonly kind: 'word'; readonly word: string }
    | { readonly kind: 'slash' | 'hyphen' | 'minus' | 'other' }
  );

interface TokenPlace {
  readonly start: number;
  readonly end: number;
  /** Whether it touches the piece before it. */
  readonly joined: boolean;
}

export const tokensOf = (text: string): readonly Token[] => {
  const end = text.trimEnd().length;
  const tokens: Token[] = [];
  let at = text.length - text.trimStart().length;
  while (at < end) {
    const rest = text.slice(at, end);
    const length = rest.match(blank)?.[0].length ?? 0;
    if (length > 0) {
      at += length;
      continue;
    }
    const token = tokenAt(rest, at, tokens.at(-1)?.end === at);
    tokens.push(token);
    at = token.end;
  }
  return tokens;
};

const tokenAt = (rest: string, start: number, joined: boolean): Token => {
  const place = (read: string): TokenPlace => ({ start, end: start + read.length, joined });
  const digits = rest.match(digitRun)?.[0];
  if (digits) return { kind: 'digits', digits: asciiDigits(digits), ...place(digits) };
  const word = rest.match(wordRun)?.[0];
  if (word) return { kind: 'word', word, ...place(word) };
  const quotes = rest.match(quoteRun)?.[0];
  if (quotes) {
    const inches = quotes.length === 2 || doubleQuotes.includes(quotes);
    return { kind: 'word', word: inches ? '"' : "'", ...place(quotes) };
  }
  const [character = ''] = rest;
  const fraction = fractions.get(character);
  if (fraction) {
    const [numerator = '', denominator = ''] = fraction.split('/');
    return { kind: 'fraction', numerator, denominator, ...place(character) };
  }
  const sign = separators.get(character);
  if (sign) return { kind: 'separator', sign, ...place(character) };
  return { kind: kindOfSign(character), ...place(character) };
};

const kindOfSign = (character: string): 'slash' | 'hyphen' | 'minus' | 'other' => {
  if ('/\u2044\u2215\uff0f'.includes(character)) return 'slash';
  if ('-\u2010\u2011'.includes(character)) return 'hyphen';
  return '\u2212\u2012\u2013\u2014\ufe63\uff0d'.includes(character) ? 'minus' : 'other';
};

// Blanks within one line. A line break, or a mark that turns the direction of writing, inside a
// number may make it look like another one: those are left to be refused.
const blank = /^[ \t\u00a0\u2000-\u200a\u202f\u205f\u3000]+/;
const digitRun = /^[0-9\u0660-\u0669\u06f0-\u06f9\uff10-\uff19]+/;
const wordRun = /^[\p{L}\u339c\u339d][\p{L}\p{M}]*(?:\.(?!\d))?/u;
const quoteRun = new RegExp(`^(?:[${doubleQuotes}]|[${singleQuotes}]{1,2})`);

const separators = new Map<string, '.' | ','>([
  ['.', '.'],
  [',', ','],
  ['\uff0e', '.'],
  ['\uff0c', ','],
]);

const fractions = new Map(
  Object.entries({
    '½': '1/2',
    '⅓': '1/3',
    '⅔': '2/3',
    '¼': '1/4',
    '¾': '3/4',
    '⅕': '1/5',
    '⅖': '2/5',
    '⅗': '3/5',
    '⅘': '4/5',
    '⅙': '1/6',
    '⅚': '5/6',
    '⅐': '1/7',
    '⅛': '1/8',
    '⅜': '3/8',
    '⅝': '5/8',
    '⅞': '7/8',
    '⅑': '1/9',
    '⅒': '1/10',
  }),
);

/** Western, Arabic-Indic, Persian and full-width digits all end in their value, sixteen-wise. */
const asciiDigits = (digits: string): string =>
  [...digits].map((digit) => String(digit.charCodeAt(0) & 0xf)).join('');
