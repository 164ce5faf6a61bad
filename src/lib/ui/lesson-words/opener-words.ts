import type { TableSource } from '#core/graphs';
import type { PurposeId } from '#core/lessons';
import type { Quantity } from '#core/journal';

/**
 * How a lesson begins with something in the hand: today's reading, guessed first and read three
 * times (common practice, no source). By table, by purpose, and for a log that has ended.
 */
export const openerText = (idea: string, quantity: Quantity): readonly string[] => {
  const name = idea.replace(/^opener-/, '');
  if (name === 'day-values' || name === 'days-in-order') return readingOf[quantity];
  return openers[name as OpenerName] ?? readingOf[quantity];
};

type OpenerName =
  | Exclude<TableSource, 'day-values' | 'days-in-order'>
  | Extract<
      PurposeId,
      'how-much-taller' | 'two-units-of-one-thing' | 'guess-before-measuring' | 'fair-test-of-two'
    >
  | 'ended-lengths'
  | 'ended-counts';

const threeTimes =
  'Measure three times, and set the ruler down anew each time. The middle number is today’s reading; write it in the log.';

const readingOf: Readonly<Record<Quantity, readonly string[]>> = {
  'plant-height': [
    'Go to the plant. Your child guesses today’s height first and says the guess aloud.',
    'Stand the ruler on the soil with its zero down, and read at the growing tip, not at a leaf.',
    threeTimes,
  ],
  rain: [
    'Go to the gauge. Your child guesses how much is in it before looking closely.',
    'Stand it level and read at eye height, three times; keep the middle number and write it in the log. Only then empty it.',
    'Nothing in it is a reading too: 0 is a number.',
  ],
  shadow: [
    'If the sun is out, go to the stick. Your child guesses where the tip of the shadow is by now, and lays a stone there.',
    'Measure from the foot of the stick to the tip of the shadow, three times, and keep the middle number.',
    'No sun: lay a string on the table as long as one shadow of the log, and guess before you cut.',
  ],
  length: [
    'Fetch the thing you measure. Your child guesses its length first and says the guess aloud.',
    'Lay the ruler’s zero at one end, and read at the other.',
    threeTimes,
  ],
  'daily-kind': [
    'Decide together what kind of day today is, and put its word in the log.',
    'Your child guesses which kind came most so far, before anybody counts.',
    'Lay one button for each day of the table in piles, one pile for each kind. Was the guess right?',
  ],
};

const openers: Readonly<Record<OpenerName, readonly string[]>> = {
  'kind-days': readingOf['daily-kind'],
  'weather-days': [
    'Go to the window or outside together, look at the sky for a minute, and agree on one word for today’s weather.',
    'Your child guesses which weather came most so far, before anybody counts.',
    'Lay one button for each day of the table in piles, one pile for each kind of weather. Was the guess right?',
  ],
  'wet-days': [
    'Go to the gauge and read it: is there anything in it? Write today’s number in the log.',
    'Your child guesses whether there were more wet days or more dry days.',
    'Lay one button for each day of the table, a pile for each kind. 0 is a dry day; a few drops that are too little to measure are a trace; a day nobody read is in no pile.',
  ],
  'growth-days': [
    'Take today’s reading: your child guesses first, then measures three times and keeps the middle number.',
    'Ask whether it grew since the last reading, and how your child knows.',
    'Lay one button for each line of the table: a pile for “grew”, a pile for “did not grow”.',
  ],
  'state-days': [
    'Take today’s reading first, if today is a day for it: guess, measure three times, keep the middle number.',
    'Open the log and walk through its days with a finger. Your child says of each: a number, or what else?',
    'Lay one button for each day in piles. A day without a number is a fact, not a mistake.',
  ],
  'specimen-readings': [
    'Read each of them today: your child guesses, measures, and writes the number in the log.',
    'Your child guesses which has been measured most often.',
    'Lay one button for each reading, a pile for each name.',
  ],
  'values-side-by-side': [
    'Fetch both plants. Your child says which is taller, and by how much, before any ruler is out.',
    'Measure each from the soil to the growing tip, and write both numbers in the log.',
    'Cut a paper strip to each height, and stand the two side by side on one line: where one is taller, that piece is the difference.',
  ],
  'week-values': [
    'Read the gauge, three times at eye height, and write today’s number in the log.',
    'Your child guesses which week brought most rain.',
    'Put one week’s days together on paper: add two days first, then the next one to that.',
  ],
  'hour-values': readingOf.shadow,
  'hours-in-order': readingOf.shadow,
  'each-specimen': [
    'Lay the things in a row. Your child guesses which is longest and about how long it is.',
    'Measure each one once, from zero, and write each number on a scrap of paper beside its thing.',
    'Sort the scraps from smallest to largest, and put the same numbers on one pile.',
  ],
  'reads-of-one': [
    'Everybody guesses, then measures the same thing, and writes the number on a scrap of paper without showing it.',
    'Go round three times, and set the ruler down anew each time.',
    'Turn the scraps over and put the same numbers on one pile. They will not all agree, and that is what this lesson is about.',
  ],
  'growth-amounts': [
    'Take today’s reading: your child guesses first, then measures three times and keeps the middle number.',
    'Cut a strip of paper just as long as it grew since yesterday, and hold it against the stem.',
    'Ask: is that a lot for one day, or a little? The graph will tell.',
  ],
  'rain-amounts': [
    'Read the gauge: your child guesses first, then reads three times at eye height and keeps the middle number.',
    'Say each number of the table aloud, and show with two fingers how much water that is.',
    'Ask: which amount do you think came most often?',
  ],
  'how-much-taller': [
    'If it still grows, take today’s reading: guess first, measure three times, keep the middle number.',
    'Cut one strip of paper as long as an earlier height and one as long as a later height. Lay them side by side: what sticks out is how much taller it got.',
    'Your child guesses how long that piece is, then measures it.',
  ],
  'two-units-of-one-thing': [
    'Choose three things on the table, and the one of your log if it is still there. Your child guesses: will it be more centimetres or more inches?',
    'Measure each on both sides of the ruler, from zero, and write both numbers beside the thing.',
    'Say: the thing did not change. Why are there two numbers?',
  ],
  'guess-before-measuring': [
    'Measure one short thing together, such as a finger. That length helps with the next guesses.',
    'For three more things, today’s reading among them if the log goes on: your child guesses, writes the guess on a scrap, hides it under the cup, measures, and looks at the guess.',
    'Each time ask how far off the guess was. Guesses are never marked.',
  ],
  'fair-test-of-two': [
    'Stand both pots side by side if you still have them; else tell each other how they stood. Say what was different between them, and what you kept the same.',
    'If they still grow, read both with the same ruler, one right after the other: guess, measure three times, keep the middle number.',
    'Before looking at the table, your child says which one grew faster, and how one could tell.',
  ],
  'ended-lengths': [
    'This log has ended, so there is nothing to read today. Choose three of its numbers instead.',
    'For each, your child first cuts a strip of paper or a piece of string by eye, then measures it and trims it to the number.',
    'Lay them side by side in the order of the table, their ends at one line.',
  ],
  'ended-counts': [
    'This log has ended, so there is nothing to read today. Your child guesses which kind came most.',
    'Lay one button for each line of the table in piles, one pile for each kind.',
    'Put the piles in rows that begin at one line. Which is longest, and was the guess right?',
  ],
};
