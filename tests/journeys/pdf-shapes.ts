import { inflateSync } from 'node:zlib';

/**
 * What is drawn on each page of a PDF, as lengths on paper: enough of PDF 1.4 (ISO 32000-1, 8.4
 * and 8.5) to read the paths that Chromium writes. Letters and pictures are passed over.
 */
export interface PdfPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shapes: readonly PdfShape[];
  /** Whether any letter stands on it (the operators of ISO 32000-1, 9.4.3). */
  readonly hasLetters: boolean;
}

export interface PdfShape {
  readonly paint: 'fill' | 'stroke';
  /** Red, green and blue, each 0 to 255. */
  readonly colour: string;
  /** Each part of the path, as the box around its points, in millimetres from the lower left. */
  readonly parts: readonly Box[];
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function pdfPages(pdf: Buffer): readonly PdfPage[] {
  const text = pdf.toString('latin1');
  const pages = [...text.matchAll(/\/Type \/Page\b[^]*?endobj/g)].map(([page]) => page);
  return pages.map((page) => {
    const [, , widthPt, heightPt] = /\/MediaBox \[([^\]]*)\]/.exec(page)![1]!.trim().split(/\s+/);
    const content = streamOf(pdf, text, Number(/\/Contents (\d+) 0 R/.exec(page)![1]));
    return {
      widthMm: mm(Number(widthPt)),
      heightMm: mm(Number(heightPt)),
      shapes: shapesOf(content),
      hasLetters: /\bT[jJ]\b/.test(content),
    };
  });
}

/** A point of a PDF is 1/72 inch (ISO 32000-1, 8.3.2.3); an inch is 25.4 mm. */
const mm = (points: number): number => (points / 72) * 25.4;

const streamOf = (pdf: Buffer, text: string, object: number): string => {
  const from = text.indexOf(`\n${object} 0 obj`);
  const length = Number(/\/Length (\d+)/.exec(text.slice(from, from + 400))![1]);
  const begin = text.indexOf('stream\n', from) + 'stream\n'.length;
  return inflateSync(pdf.subarray(begin, begin + length)).toString('latin1');
};

type Matrix = readonly [number, number, number, number, number, number];
type Point = readonly [number, number];
interface Pen {
  readonly matrix: Matrix;
  readonly fill: string;
  readonly stroke: string;
}

const shapesOf = (content: string): readonly PdfShape[] => {
  const shapes: PdfShape[] = [];
  const kept: Pen[] = [];
  let pen: Pen = { matrix: [1, 0, 0, 1, 0, 0], fill: '0 0 0', stroke: '0 0 0' };
  let parts: Point[][] = [];
  let numbers: number[] = [];
  const add = (points: readonly Point[]): void =>
    void parts.at(-1)?.push(...points.map((point) => moved(point, pen.matrix)));
  const paint = (how: PdfShape['paint']): void => {
    const colour = how === 'fill' ? pen.fill : pen.stroke;
    shapes.push({ paint: how, colour, parts: parts.map(boxOf) });
  };
  for (const token of content.replace(/<[^>]*>|\([^)]*\)/g, ' ').split(/\s+/)) {
    if (/^[-+.\d]/.test(token)) {
      numbers.push(Number(token));
      continue;
    }
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
    if (token === 'q') kept.push(pen);
    if (token === 'Q') pen = kept.pop()!;
    if (token === 'cm') pen = { ...pen, matrix: times([a, b, c, d, e, f], pen.matrix) };
    if (token === 'rg') pen = { ...pen, fill: colourOf(a, b, c) };
    if (token === 'RG') pen = { ...pen, stroke: colourOf(a, b, c) };
    if (token === 'scn') pen = { ...pen, fill: 'pattern' };
    if (token === 'm') parts.push([]);
    if (token === 'm' || token === 'l') add([[a, b]]);
    if (token === 'c') add([[e, f]]);
    if (token === 're') {
      parts.push([]);
      add([
        [a, b],
        [a + c, b],
        [a + c, b + d],
        [a, b + d],
      ]);
    }
    if (/^(f|f\*|B|B\*)$/.test(token)) paint('fill');
    if (/^(S|s|B|B\*)$/.test(token)) paint('stroke');
    if (/^(f|f\*|B|B\*|S|s|n)$/.test(token)) parts = [];
    numbers = [];
  }
  return shapes;
};

const colourOf = (...parts: readonly number[]): string =>
  parts.map((part) => Math.round(part * 255)).join(' ');

/** First the one, then the other. */
const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  ...([a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j] as const),
  ...([e * g + f * i + k, e * h + f * j + l] as const),
];

const moved = ([x, y]: Point, [a, b, c, d, e, f]: Matrix): Point => [
  mm(a * x + c * y + e),
  mm(b * x + d * y + f),
];

const boxOf = (points: readonly Point[]): Box => {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
};
