import type { GraphKind } from '#core/graphs';
import { graphFit } from '#core/graphs';
import type { Lesson } from '#core/lessons';
import { estimatesOf, fairTestOf, isAnswered, rulerPairs } from '#core/series';
import { dayText, lengthText } from './length-text';
import { listed, toldRows } from './told-rows';

/** What to do while the child draws; the days and numbers named are those of the log. */
export const drawText = (idea: string, lesson: Lesson): readonly string[] =>
  drawn[idea]?.(lesson) ?? [];

const drawn: Readonly<Record<string, (lesson: Lesson) => readonly string[]>> = {
  'draw-own-table': ({ facts }) => [...whoDraws(facts), ...rightFirst],
  'draw-finish-half': ({ facts }) => [halfDone(facts), ...rightFirst],
  'draw-how-much-taller': ({ facts }) => [
    'Then draw a number line from 0 under the graph, and let your child draw one jump on it.',
    jumpOf(facts),
  ],
  'draw-two-units-of-one-thing': ({ facts }) => [
    `Under the graph write both numbers for the days that were read on both sides: ${pairsOf(facts)}.`,
    'The graph itself stays in one unit.',
  ],
  'draw-guess-before-measuring': ({ facts }) => [
    `Where there was a guess, your child first draws a dotted line at the guess, then the bar: ${guessesOf(facts)}.`,
    'Look at how far each dotted line is from the end of its bar. It may be above or below.',
  ],
  'draw-fair-test-of-two': ({ facts }) => [differenceOf(facts)],
};

type Facts = Lesson['facts'];

const rightFirst: readonly string[] = [
  'Then say first what is right. Point to one thing to look at again, and let your child mend it.',
];

const whoDraws = ({ graph, table, stage }: Facts): readonly string[] => {
  const isGuided = graphFit(graph, table, stage) === 'guided';
  const words =
    stage === 'grade-1'
      ? ' You may write the words; your child does the numbers and the marks.'
      : '';
  if (isGuided) {
    return [
      `Give the frame with its numbers, or draw it beforehand. Your child ${marks[graph]}, reading each one from our own table.${words}`,
    ];
  }
  return [
    `Your child draws our graph from our own table: ${firstThings[graph]} first, then ${things[graph]}, the title last. You watch and wait.${words}`,
  ];
};

const marks: Readonly<Record<GraphKind, string>> = {
  'picture-graph': 'draws the pictures',
  'bar-graph': 'draws the bars',
  'line-plot': 'makes the crosses',
  'line-graph': 'makes the points and joins them',
};
const things: Readonly<Record<GraphKind, string>> = {
  'picture-graph': 'the pictures and the key',
  'bar-graph': 'the bars',
  'line-plot': 'the crosses',
  'line-graph': 'the points and joins',
};

const firstThings: Readonly<Record<GraphKind, string>> = {
  'picture-graph': 'the names of the rows',
  'bar-graph': 'the names and the numbers',
  'line-plot': 'the number line',
  'line-graph': 'the days and the numbers',
};

/** Which part is done beforehand. */
const halfDone = ({ graph, table }: Facts): string => {
  const labels = [...new Set(toldRows(table).map(({ label }) => label))];
  const half = Math.ceil(labels.length / 2);
  const done = halves[graph](`“${labels[half - 1]}”`, half);
  return `The first half is there already: ${done}. Print it so, or draw it beforehand. Your child does the rest.`;
};

const halves: Readonly<Record<GraphKind, (last: string, half: number) => string>> = {
  'picture-graph': (last) => `the key, the names, and the pictures of the rows up to ${last}`,
  'bar-graph': (last) => `the frame with its numbers, the names, and the bars up to ${last}`,
  'line-plot': (_, half) => `the number line, and crosses for the first ${half} numbers`,
  'line-graph': (last) => `the frame with its numbers and places, and the points up to ${last}`,
};

/** A large one, because it is easy to see: from one number of the table to the very next. */
const jumpOf = ({ table }: Facts): string => {
  const rows = toldRows(table);
  const jumps = rows.flatMap((to, index) => {
    const from = rows[index - 1];
    return from?.number != null && to.number !== null && to.number > from.number
      ? [{ from, to, size: to.number - from.number }]
      : [];
  });
  const [largest] = jumps.toSorted((one, other) => other.size - one.size);
  if (!largest) {
    return 'Take two days with numbers, and jump from the smaller number to the larger.';
  }
  const { from, to } = largest;
  return `One jump for an example: from ${from.label} to ${to.label}, ${from.text} + ? = ${to.text}. Your child chooses another and writes its equation.`;
};

const mostNamed = 3;

const pairsOf = ({ notebook, series, choice }: Facts): string =>
  listed(
    series
      .flatMap((each) => rulerPairs(notebook, each))
      .filter(({ day }) => day >= choice.from && day <= choice.to)
      .slice(0, mostNamed)
      .map(
        ({ day, metric, customary }) =>
          `${dayText(day)} (${lengthText(metric)} and ${lengthText(customary)})`,
      ),
  ) || 'none of the days shown; use the things you measured at the start';

const guessesOf = ({ notebook, choice }: Facts): string =>
  listed(
    choice.specimens
      .flatMap((specimen) => estimatesOf(notebook, specimen))
      .filter(isAnswered)
      .filter(({ reading }) => reading.day >= choice.from && reading.day <= choice.to)
      .slice(0, mostNamed)
      .map(
        ({ estimate, reading }) =>
          `${dayText(reading.day)} (guess ${lengthText(estimate.measured)}, measured ${lengthText(reading.counted)})`,
      ),
  ) || 'none of the days shown; use the guesses you made at the start';

const differenceOf = ({ notebook, choice }: Facts): string => {
  const test = fairTestOf(notebook, choice.investigation);
  const different = test?.plan?.different ?? test?.laterPlans[0]?.different;
  const said = different && differenceWords[different];
  return said
    ? `Write under the graph what was different: ${said}. All else was to stay the same.`
    : 'Write under the graph what was different between the two, and that all else was to stay the same.';
};

const differenceWords: Readonly<Record<string, string>> = {
  ...{ light: 'the light', water: 'the water', soil: 'the soil', seed: 'the seed' },
  place: 'the place',
};
