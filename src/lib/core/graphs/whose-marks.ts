import type { Drawing } from './drawing';

/**
 * Which series of the table each kind of mark (0, 1, 2 in the drawing) stands for, as the child's
 * key says; without a name that is known, the marks stand in the order of the table. Not part of
 * the public door.
 */
export const seriesByMark = (
  { seriesKey }: Pick<Drawing, 'seriesKey'>,
  seriesNames: readonly string[],
): readonly number[] => {
  const names = seriesNames.map(plain);
  const said = names.map((_, mark) => {
    const entry = seriesKey.find(({ series }) => series === mark);
    return entry ? names.indexOf(plain(entry.text)) : -1;
  });
  const isClear = new Set(said.filter((series) => series >= 0)).size === said.length;
  return isClear ? said : names.map((_, mark) => mark);
};

/** Whether the key has a name for each series, no name twice. Not part of the public door. */
export const isKeyWhole = (
  { seriesKey }: Pick<Drawing, 'seriesKey'>,
  seriesNames: readonly string[],
): boolean => {
  const named = seriesKey.map(({ text }) => plain(text)).filter((text) => text !== '');
  const marks = new Set(
    seriesKey.filter(({ text }) => plain(text) !== '').map((one) => one.series),
  );
  return new Set(named).size >= seriesNames.length && marks.size >= seriesNames.length;
};

/** Every way in which so many marks can stand for so many series. Not part of the public door. */
export const everyOrder = (count: number): readonly (readonly number[])[] =>
  count === 0
    ? [[]]
    : everyOrder(count - 1).flatMap((order) =>
        Array.from({ length: count }, (_, at) => order.toSpliced(at, 0, count - 1)),
      );

const plain = (text: string): string => text.trim().toLowerCase();
