/**
 * Text for a cell of a table that a spreadsheet must not run as a formula: an apostrophe goes in
 * front where the text begins as formulas do (=, +, -, @, also behind blanks or in their wide
 * forms, or a tab or line break). A plain number, with or without a sign, is left alone. Text
 * that has such an apostrophe already gets one more, so that `unguardText` always undoes this.
 * Source of the list: OWASP, "CSV Injection" (from memory).
 * @example
 * guardText('=1+1') // => "'=1+1"
 * guardText('-3') // => '-3'
 * guardText("'tis tall") // => "'tis tall"
 */
export const guardText = (text: string): string =>
  guarded.test(text) && !plainNumber.test(text) ? `'${text}` : text;

/**
 * The text that `guardText` was given.
 * @example
 * unguardText("'=1+1") // => '=1+1'
 * unguardText("'tis tall") // => "'tis tall"
 */
export const unguardText = (text: string): string =>
  text.startsWith("'") && guarded.test(text) ? text.slice(1) : text;

const guarded = /^'*(?:\s*[=+\-@\uff1d\uff0b\uff0d\uff20]|[\t\r\n])/;
const plainNumber = /^[+-]?\d+(?:[.,]\d+)?$/;
