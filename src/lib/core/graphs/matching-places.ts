/**
 * Which written name stands for which row of the table. Spelling is never marked: a name is taken
 * for the row it equals, else for the one it begins or that begins it ("Mon", "rainy"), else for
 * the one it comes closest to, and the last name left over is the last row left over. Rows of one
 * name are taken in the order of the paper.
 * @returns for each label the index of its place, or null where no name stands for it
 * @example
 * matchingPlaces([{ at: 1, text: 'Rain' }, { at: 2, text: 'sunn' }], ['sun', 'rain', 'snow']) // => [1, 0, null]
 */
export const matchingPlaces = (
  places: readonly { readonly at: number; readonly text: string }[],
  labels: readonly string[],
): readonly (number | null)[] => {
  const placeOf: (number | null)[] = labels.map(() => null);
  const written = places
    .map(({ at, text }, index) => ({ at, index, name: plainName(text) }))
    .filter(({ name }) => name !== '')
    .sort((one, other) => one.at - other.at);
  const names = labels.map(plainName);
  const taken = new Set<number>();
  const give = (row: number, index: number): void => {
    placeOf[row] = index;
    taken.add(index);
  };
  const take = (from: typeof written, fits: (name: string, label: string) => boolean): void =>
    names.forEach((label, row) => {
      if (placeOf[row] !== null) return;
      const found = from.find(({ index, name }) => !taken.has(index) && fits(name, label));
      if (found) give(row, found.index);
    });
  take(written, (name, label) => name === label);
  const others = written.filter(({ name }) => !names.includes(name));
  take(others, begins);
  take(others, isNear);
  const rest = others.filter(({ index }) => !taken.has(index));
  const open = placeOf.flatMap((place, row) => (place === null ? [row] : []));
  const hasOthers = placeOf.length > 1 && written.length === placeOf.length;
  if (rest.length === 1 && open.length === 1 && hasOthers) give(open[0]!, rest[0]!.index);
  return placeOf;
};

/**
 * The place a mark stands at: the nearest, if it is clearly nearer than half the distance between
 * neighbouring places, or between the marks where those are closer. A lone place reaches a square
 * to either side. Null beside none.
 * @param marks the positions of all marks, so that one without a name is not taken by a far name
 * @example
 * placeAt(1.2, [{ at: 1 }, { at: 2 }]) // => 0
 * placeAt(4, [{ at: 1 }, { at: 2 }]) // => null
 * placeAt(3, [{ at: 1 }, { at: 5 }], [1, 3, 5]) // => null
 */
export const placeAt = (
  at: number,
  places: readonly { readonly at: number }[],
  marks: readonly number[] = [],
): number | null => {
  const distanceOf = (index: number): number => Math.abs(places[index]!.at - at);
  const nearest = places.reduce(
    (best, _, index) => (best < 0 || distanceOf(index) < distanceOf(best) ? index : best),
    -1,
  );
  const gap = Math.min(smallestGap(places.map((place) => place.at)), smallestGap(marks));
  const reach = Number.isFinite(gap) ? gap * 0.45 : 1;
  return nearest < 0 || distanceOf(nearest) > reach ? null : nearest;
};

/** Two positions nearer than a quarter of a square were meant for one place. */
const smallestGap = (positions: readonly number[]): number => {
  const sorted = [...positions].sort((one, other) => one - other);
  const gaps = sorted.slice(1).map((at, index) => at - sorted[index]!);
  return Math.min(...gaps.filter((gap) => gap > 0.25));
};

/** A name without what does not matter: capitals, signs, blanks. */
const plainName = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Each word said begins a word of the label, or is begun by one; numbers must be the same. */
const begins = (name: string, label: string): boolean =>
  name.split(' ').every((said) => label.split(' ').some((word) => beginsWord(said, word)));

const beginsWord = (said: string, word: string): boolean =>
  /\d/.test(said + word) ? said === word : said.startsWith(word) || word.startsWith(said);

/** A third of the letters may be other ones; numbers must be as they are. */
const isNear = (name: string, label: string): boolean => {
  const most = Math.floor(Math.max(name.length, label.length) / 3);
  if (Math.abs(name.length - label.length) > most || /\d/.test(name + label)) return false;
  return lettersApart(name, label) <= most;
};

/**
 * How many letters must be changed, added or taken away to make one word another (Levenshtein).
 * @example
 * lettersApart('sunn', 'sun') // => 1
 */
export const lettersApart = (one: string, other: string): number => {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  [...one].forEach((letter, index) => {
    const next = [index + 1];
    [...other].forEach((wanted, column) => {
      const change = row[column]! + (letter === wanted ? 0 : 1);
      next.push(Math.min(change, row[column + 1]! + 1, next[column]! + 1));
    });
    row = next;
  });
  return row[other.length]!;
};
