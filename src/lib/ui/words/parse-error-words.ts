import type { ParseError } from '#core/measure';

/** Why a written number cannot be taken yet, in words a child can read. */
export function parseErrorWords(error: ParseError): string {
  switch (error.kind) {
    case 'empty':
      return 'Write a number first.';
    case 'too-long':
      return 'That is a very long number. Write just what you read.';
    case 'not-a-number':
      return error.read === ''
        ? 'Something is missing. What number did you read?'
        : `“${error.read}” is not a number here. Use the number keys.`;
    case 'negative':
      return 'Nothing is shorter than 0. Write it with no minus.';
    case 'too-big':
      return 'That is longer than a whole town. Look at your ruler again.';
    case 'unknown-unit':
      return `“${error.read}” is not a unit here. Is it inches or centimetres?`;
    case 'ambiguous':
      return 'That could mean two things. Which one did you read?';
    case 'off-every-mark':
      return 'That falls between the marks. Which mark is nearest?';
    case 'bad-fraction':
      return 'The fraction is not done yet. Look at its two numbers.';
    case 'bad-part':
      return 'The feet and inches do not fit. A foot is 12 inches.';
    case 'unit-mismatch':
      return 'These units do not go together. Write one unit.';
  }
}
