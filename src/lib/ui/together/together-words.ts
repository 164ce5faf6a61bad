import type { Quantity } from '#core/journal';
import { formatMeasured, formatMeasuredNumber } from '#core/measure';
import type { SpreadOfDay } from '#core/series';
import type { TalkCard } from '#ui/both-sides';

/** What children and grown-ups read while many measure one thing. */
export const togetherWords = {
  name: 'Measure with others',
  back: 'Measure with care',
  notHere: 'This log is for one of you. Pick a plant.',
  done: 'This log is done. You can look at it.',
  who: 'Who measures now?',
  measure: 'I measure now',
  somebody: 'One more',
  alone: 'Now measure. Keep your number to yourself.',
  write: 'Write it down',
  isIn: 'is in',
  covered: 'All the numbers are covered.',
  safe: 'Your number is safe. Who is next?',
  safeNoNames: 'Your number is safe. Give the ruler on.',
  one: 'One number is in.',
  show: 'Show what we found',
  found: 'What we found',
  cover: 'Cover them again',
  draw: 'Draw it',
  goOn: 'Go on with your drawing',
  drawFirst: 'Draw it first. Then look at the plot here.',
  openDrawing: 'Your drawing is not done yet.',
  plot: 'Now show the notebook’s plot',
  table: 'Our numbers',
  talk: 'Talk about it',
  lastOnly: 'Who measured again has the last number here.',
  drawAll: 'To draw, you get all the numbers.',
  before: 'Days we all measured',
  nobody: 'no name',
} as const;

export const numbersIn = (count: number): string =>
  count === 1 ? togetherWords.one : `${count} numbers are in.`;

/** What was found, in sentences. `counted` is what stands for the day in the log. */
export function foundWords(
  { smallest, largest, middle, spreadExact }: SpreadOfDay,
  counted: string,
  quantity: Quantity,
): readonly string[] {
  const thing = quantity === 'plant-height' ? 'plant' : 'thing';
  const between =
    spreadExact === 0
      ? `All our numbers are ${formatMeasured(middle)}.`
      : `Our numbers are between ${formatMeasuredNumber(smallest)} and ${formatMeasured(largest)}.`;
  const middleText = formatMeasured(middle);
  return [
    `We measured the same ${thing}.`,
    between,
    ...(spreadExact === 0 ? [] : [`The middle one is ${middleText}.`]),
    counted === middleText
      ? 'The middle one goes in the log.'
      : `In the log the day is ${counted}.`,
  ];
}

/** Who is right? Nobody is out of it. */
export const whoIsRight: readonly TalkCard[] = [
  {
    id: 'who',
    ask: ['Who is right?'],
    answer:
      'Everyone who looked with care. A measure is never quite the same twice, not for scientists either. No number here is anybody’s mistake until it was looked at again.',
  },
  {
    id: 'between',
    ask: ['Where does the tip end on your ruler?', 'Is it on a mark?'],
    answer:
      'Often it ends between two marks. One takes the lower number and another the higher, and both looked well.',
  },
  {
    id: 'again',
    ask: ['Look at a number far from the rest.', 'What may have happened?'],
    answer:
      'Zero not at the soil, the ruler leaning, the eye too high or too low, the plant bent. Let whoever likes to read it again do so; the first number stays readable in the log.',
  },
  {
    id: 'rule',
    ask: ['How will you all read it next time?'],
    answer:
      'Make a family rule and write it on the card: from the same soil mark, eyes as high as the tip, and what to do half-way between two marks (many say: go up). The middle number counts, because it needs no arithmetic.',
  },
];
