import type { SymbolName } from '#core/graphs';
import { dataLooks, patternStrokes, type DataPattern } from '#ui/look';

/** What fills a symbol: a colour of the data, and a pattern that stays in grey print. */
export interface SymbolLook {
  readonly colour: string;
  /** The colour of the pattern's lines on it. */
  readonly lines: string;
  readonly pattern: DataPattern;
  readonly strokes: { readonly d: string; readonly width: number };
}

const pairs: Readonly<Record<SymbolName, readonly [colour: string, pattern: DataPattern]>> = {
  leaf: ['green', 'plain'],
  drop: ['blue', 'level'],
  sun: ['yellow', 'plain'],
  cloud: ['sky', 'level'],
  boot: ['vermilion', 'slant'],
  seed: ['orange', 'dots'],
  flake: ['sky', 'plain'],
  star: ['purple', 'upright'],
  circle: ['blue', 'slant'],
  square: ['green', 'squares'],
};

/** The fill of a symbol: no two symbols share both colour and pattern. */
export const symbolLook = (name: SymbolName): SymbolLook => {
  const [colourName, pattern] = pairs[name];
  const look = dataLooks.find((each) => each.name === colourName);
  if (!look) throw new Error(`No data colour ${colourName}`);
  return { colour: look.colour, lines: look.lines, pattern, strokes: patternStrokes[pattern] };
};
