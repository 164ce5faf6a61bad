/** How things of a kind are called: sunny days, days it grew, readings of one plant. */
export const kindText = (label: string, counted: string, count = 2): string => {
  if (counted !== 'days') {
    const things = count === 1 ? counted.replace(/s$/, '') : counted;
    return label === 'other' || label === 'all others'
      ? `other ${things}`
      : `${things} of ${label}`;
  }
  const days = count === 1 ? 'day' : 'days';
  const [after] = asked[label] ?? [];
  if (after !== undefined) return `${days} ${after}`;
  return `${looks[label] ?? `“${label}”`} ${days}`;
};

/** So many of a kind, with the number. */
export const kindCountText = (count: number, label: string, counted: string): string =>
  `${count} ${kindText(label, counted, count)}`;

/** The question how many of a kind there are on the graph. */
export const howManyText = (label: string, counted: string): string => {
  const [, ask] = (counted === 'days' && asked[label]) || [];
  if (ask !== undefined) return ask;
  return counted === 'days'
    ? `How many ${kindText(label, counted)} are there?`
    : `Find the ${kindText(label, counted)}. How many are there?`;
};

/** Whether a kind can stand after "how many more": "more sunny days", not "more days it grew". */
export const isPlainKind = (label: string, counted: string): boolean =>
  counted === 'days' && asked[label] === undefined;

const looks: Readonly<Record<string, string>> = {
  ...{ sun: 'sunny', cloud: 'cloudy', rain: 'rainy', snow: 'snowy', wind: 'windy', fog: 'foggy' },
  ...{ wet: 'wet', dry: 'dry', other: 'other', 'all others': 'other' },
};

/** What is said after "days", and how they are asked for. */
const asked: Readonly<Record<string, readonly [after: string, ask: string]>> = {
  grew: ['it grew', 'On how many days did it grow?'],
  'did not grow': ['it did not grow', 'On how many days did it not grow?'],
  'got shorter': ['it got less', 'On how many days did it get less?'],
  measured: ['we measured', 'On how many days did we measure?'],
  missed: ['we missed', 'How many days did we miss?'],
  'not up yet': ['it was not up', 'On how many days was it not up?'],
  'no sun': ['with no sun', 'How many days had no sun?'],
  'a trace': ['with just a few drops', 'How many days had just a few drops?'],
  lost: ['it was lost', 'On how many days was it lost?'],
  'nothing written': ['with no word', 'How many days have no word?'],
};
