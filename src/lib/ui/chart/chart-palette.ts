import { dataLook, type DataLook } from '#ui/look';

/** The colours and letters a canvas is drawn in, read from the page's own style. */
export interface ChartPalette {
  readonly ink: string;
  readonly inkSoft: string;
  readonly grid: string;
  readonly sheet: string;
  readonly tint: string;
  readonly letters: string;
  readonly line: (index: number) => DataLook;
}

/** On paper, where the page's colours cannot be asked for before it is printed. */
const paper = {
  ink: '#000000',
  inkSoft: '#333333',
  grid: '#9aa7b0',
  sheet: '#ffffff',
  tint: '#eeeeee',
};

/** The palette of the page an element stands on, in its theme of the moment; or that of paper. */
export function chartPalette(element: Element, isForPaper: boolean): ChartPalette {
  const style = getComputedStyle(element);
  const token = (name: string): string => style.getPropertyValue(name).trim();
  const screen = {
    ink: token('--ink'),
    inkSoft: token('--ink-soft'),
    grid: token('--graph-line'),
    sheet: token('--sheet'),
    tint: token('--tint'),
  };
  const inkOfData = isForPaper ? paper.ink : token('--data-ink');
  return {
    ...(isForPaper ? paper : screen),
    letters: token('--type'),
    line: (index) => {
      const look = dataLook(index);
      const colour = look.name === 'ink' ? inkOfData : token(`--data-${look.name}`);
      return { ...look, colour };
    },
  };
}
