import type { MistakeId } from '#core/graphs';
import type { HintLadder } from './hint-ladder';

/** Help with the numbered mistakes of a bar graph, in a child's words. */
export const barHints: Readonly<Record<Extract<MistakeId, `B${number}`>, HintLadder>> = {
  B1: [
    'Look where your numbers begin.',
    'What number belongs where your bars start?',
    'Hold a ruler by your numbers with a grown-up. How does it begin?',
  ],
  B2: [
    'Look at where your numbers sit.',
    'Is the number on the line or in the box?',
    'Put a finger on a line with a grown-up. Which number is right there?',
  ],
  B3: [
    'Look at your numbers.',
    'Do your numbers go up by the same jump?',
    'Read your numbers out loud with a grown-up. Listen for a skip.',
  ],
  B4: [
    'Look at the gaps between your numbers.',
    'Is each jump the same size?',
    'Count the squares in each jump with a grown-up. Make them match.',
  ],
  B5: [
    'Look at your numbers.',
    'What numbers live between these?',
    'Count up out loud with a grown-up. Give each number a place.',
  ],
  B6: [
    'Look at where each bar begins.',
    'Where should each bar begin?',
    'Lay a ruler at the start with a grown-up. Set each bar by it.',
  ],
  B7: [
    'Look at how wide your bars are.',
    'Could a fat bar trick us?',
    'Count the squares across each bar with a grown-up. Make them match.',
  ],
  B8: [
    'Look at the end of this bar.',
    'What number does the bar reach?',
    'Lay a ruler from the bar to the numbers. Read it with a grown-up.',
  ],
  B9: [
    'Look at the names of these bars.',
    'Does each bar go with its name?',
    'Sit with a grown-up. Read the name, then the table, then the bar.',
  ],
  B10: [
    'Look by your numbers for a word.',
    'Can we read it? Numbers of what?',
    'Tell a grown-up what the numbers are for. Write it there.',
  ],
  B11: [
    'Look at the names of your bars.',
    'Is there a place for each line of your table?',
    'Read your table with a grown-up. Tick each name and bar you find.',
  ],
  B12: [
    'Look at how many bars there are.',
    'Can we put the same kinds in one bar?',
    'Sort your list into piles with a grown-up. Draw one bar for each pile.',
  ],
  B13: [
    'Look at your title.',
    'Could a guest guess your question from it?',
    'Tell a grown-up what your bars show. Use that word in your title.',
  ],
  B14: [
    'Look at the end of this bar.',
    'Is it on a line? Or is it between lines?',
    'Find the number in your table with a grown-up. Is there a line for it?',
  ],
  B15: [
    'Look for the day without a number.',
    'What went on that day? How can the graph say so?',
    'Talk about that day with a grown-up. How can you keep its place?',
  ],
  B16: [
    'Look at the units you used.',
    'Are all of these the same unit?',
    'Read each unit in your log with a grown-up. Do they match?',
  ],
};
