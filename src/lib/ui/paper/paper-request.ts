import type { GraphKind, TableChoice } from '#core/graphs';
import { decodeTableChoice, graphKinds } from '#core/graphs';
import { isId, stages, type DrawingId, type Stage } from '#core/journal';
import { isPaperSize, type PaperSizeName } from './paper-sizes';
import { isSheetKind, type SheetKind } from './paper-words';

/** What the address of the page asks to have on paper. What it does not say is left open. */
export interface PaperRequest {
  readonly drawing: DrawingId | null;
  /** A table with a graph to make of it, where there is no drawing yet. */
  readonly chosen: {
    readonly choice: TableChoice;
    readonly graph: GraphKind;
    readonly stage: Stage;
  } | null;
  readonly sheet: SheetKind | null;
  readonly size: PaperSizeName | null;
  /** Whether bars stand or lie; null for the usual way. */
  readonly upright: boolean | null;
}

/**
 * Reads the address: `drawing` (an id), or `choice` (a table choice as JSON), `graph` and `stage`;
 * and `sheet`, `size`, `way` (`standing` or `lying`). Anything else is passed over.
 */
export const paperRequest = (search: URLSearchParams): PaperRequest => {
  const drawing = search.get('drawing');
  const sheet = search.get('sheet');
  const size = search.get('size');
  const way = search.get('way');
  return {
    drawing: drawing !== null && isId(drawing) ? (drawing as DrawingId) : null,
    chosen: chosenIn(search),
    sheet: isSheetKind(sheet) ? sheet : null,
    size: isPaperSize(size) ? size : null,
    upright: way === 'standing' ? true : way === 'lying' ? false : null,
  };
};

/** The same address with one thing asked otherwise. */
export const askedOtherwise = (url: URL, name: string, value: string): string => {
  const search = new URLSearchParams(url.search);
  search.set(name, value);
  return `${url.pathname}?${search}`;
};

const chosenIn = (search: URLSearchParams): PaperRequest['chosen'] => {
  const graph = graphKinds.find((kind) => kind === search.get('graph'));
  const stage = stages.find((each) => each === search.get('stage'));
  const choice = decodeTableChoice(parsed(search.get('choice')));
  return graph && stage && choice.ok ? { choice: choice.value, graph, stage } : null;
};

const parsed = (text: string | null): unknown => {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return null;
  }
};
