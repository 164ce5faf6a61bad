/** Where a text stops being JSON. */
export interface JsonFault {
  /** How many characters from the start are the beginning of JSON; the next one is not. */
  readonly position: number;
  /** Whether the text just ends too early: what stands there is the beginning of JSON. */
  readonly isCutShort: boolean;
}

/**
 * Where a text that is no JSON goes wrong, the same in every browser (their own messages are
 * not); null when it is JSON after all. Nesting of any depth is followed.
 * Source: RFC 8259.
 * @example
 * findJsonFault('{"day": 3x}') // => { position: 9, isCutShort: false }
 * findJsonFault('{"day": [3, 4') // => { position: 13, isCutShort: true }
 * findJsonFault('{"day": 3}') // => null
 */
export function findJsonFault(text: string): JsonFault | null {
  const open: ('{' | '[')[] = [];
  let at = skipBlanks(text, 0);
  let wants: Wants = 'value';
  for (;;) {
    const character = text[at];
    if (wants === 'end' && character === undefined) return null;
    if (character === undefined) return { position: at, isCutShort: true };
    const step: Step | JsonFault = takeStep(text, at, wants, open);
    if ('isCutShort' in step) return step;
    at = skipBlanks(text, step.at);
    wants = step.wants;
  }
}

/** What may come next: `first-` means that the bracket just opened may close at once. */
type Wants = 'value' | 'first-value' | 'key' | 'first-key' | 'colon' | 'comma' | 'end';
interface Step {
  readonly at: number;
  readonly wants: Wants;
}

function takeStep(text: string, at: number, wants: Wants, open: ('{' | '[')[]): Step | JsonFault {
  const character = text[at]!;
  const inside = open.at(-1);
  const closes = character === (inside === '{' ? '}' : ']') && inside !== undefined;
  if (closes && (wants === 'comma' || wants === 'first-value' || wants === 'first-key')) {
    open.pop();
    return { at: at + 1, wants: open.length > 0 ? 'comma' : 'end' };
  }
  if (wants === 'colon' && character === ':') return { at: at + 1, wants: 'value' };
  if (wants === 'comma' && character === ',') {
    return { at: at + 1, wants: inside === '{' ? 'key' : 'value' };
  }
  if (wants === 'key' || wants === 'first-key') {
    return character === '"' ? takeToken(text, at, 'colon') : fault(at);
  }
  if (wants !== 'value' && wants !== 'first-value') return fault(at);
  if (character === '{' || character === '[') {
    open.push(character);
    return { at: at + 1, wants: character === '{' ? 'first-key' : 'first-value' };
  }
  return takeToken(text, at, inside === undefined ? 'end' : 'comma');
}

/** A string, a number or a word; where it breaks off, the place of the break. */
function takeToken(text: string, at: number, wants: Wants): Step | JsonFault {
  const whole = text[at] === '"' ? takeString(text, at) : takePlain(text, at);
  return typeof whole === 'number' ? { at: whole, wants } : whole;
}

function takeString(text: string, start: number): number | JsonFault {
  let at = start + 1;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return at + 1;
    if (code < 0x20) return fault(at);
    if (code !== 0x5c) {
      at += 1;
      continue;
    }
    const [begun] = /^\\(?:["\\/bfnrt]|u[0-9a-fA-F]{0,4})?/.exec(text.slice(at, at + 6))!;
    const isWhole = begun.length > 1 && (begun[1] !== 'u' || begun.length === 6);
    const end = at + begun.length;
    if (!isWhole) return end === text.length ? { position: end, isCutShort: true } : fault(end);
    at = end;
  }
  return { position: text.length, isCutShort: true };
}

const words = ['true', 'false', 'null'];

function takePlain(text: string, at: number): number | JsonFault {
  let end = at;
  while (plainCharacter.test(text[end] ?? ' ')) end += 1;
  const run = text.slice(at, end);
  if (words.includes(run) || number.test(run)) return end;
  const begun = Math.max(
    numberBegun.exec(run)![0].length,
    ...words.map((word) => shared(word, run)),
  );
  const position = at + begun;
  return position === text.length ? { position, isCutShort: true } : fault(position);
}

/** How many characters from the start two texts share. */
function shared(one: string, other: string): number {
  let length = 0;
  while (length < one.length && one[length] === other[length]) length += 1;
  return length;
}

const plainCharacter = /[-+.\w]/;
const number = /^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?$/;
const numberBegun = /^-?(?:(?:0|[1-9]\d*)(?:\.(?:\d+(?:[eE][+-]?\d*)?)?|(?:[eE][+-]?\d*)?))?/;

const fault = (position: number): JsonFault => ({ position, isCutShort: false });

function skipBlanks(text: string, from: number): number {
  let at = from;
  while (' \t\n\r'.includes(text[at] ?? 'x')) at += 1;
  return at;
}
