import type { AskedQuestion } from '#core/questions';
import type { Blank, WordsById } from './template-words';
import { kindText, listText, answerText } from './told-text';

/** Questions to compare and put together. */
export const betweenWords: WordsById = {
  C1: {
    ask: (blank) =>
      `Count the ${kind(blank, 'more')}. Count the ${kind(blank, 'fewer')}. How many more ${kind(blank, 'more')} are there?`,
    easier: (blank) =>
      `Pair up the ${kind(blank, 'more')} and the ${kind(blank, 'fewer')}. How many have no pair?`,
    stretch: (blank) => `Turn it round. How many fewer ${kind(blank, 'fewer')}?`,
  },
  C2: {
    ask: (blank, question) => muchMore(blank, question),
    easier: (blank) =>
      `Find ${blank('less')} and ${blank('more')}. Draw the jump from the small number up.`,
    stretch: () => 'Write it with a box: small number + ☐ = large number.',
  },
  C3: {
    ask: (blank) =>
      `Count the ${kind(blank, 'one')}. Count the ${kind(blank, 'other')}. How many is that together?`,
    easier: (blank) => `Start at the ${kind(blank, 'one')}. Count on.`,
    stretch: () => 'Put one more kind with them. How many now?',
  },
  C4: {
    ask: (blank) => `How many ${blank('counted')} did we mark in all?`,
    easier: () => 'Look at one kind at a time. Add as you go.',
    stretch: () => 'Look at a calendar. Are there more days there? Why?',
  },
  C5: {
    ask: (blank) =>
      `Find two days in a row. They are ${blank('apart')} apart. Which days are they?`,
    easier: () => 'Look at the steps from day to day. Which step fits?',
    stretch: () => 'Find two days far apart with the same step.',
  },
  C6: {
    ask: (blank, question) =>
      blank('measured') === 'rain'
        ? `Look at the rain. ${inOrder(question)} Which had the least? Put all in order.`
        : `Look at the shadow. ${inOrder(question)} Which was shortest? Put all in order.`,
    easier: () => 'Find the least first. Cross it off. Find the next.',
    stretch: () => 'Where would a day with no number go?',
  },
  C7: {
    ask: (blank) =>
      `When did ${blank('plant')} grow most? Name the two days. How many days was that?`,
    easier: () => 'Look at each step up. Which step is the tallest?',
    stretch: () => 'Why must the gaps be the same to be fair?',
  },
  C8: {
    ask: (blank) =>
      `Look from ${blank('from')} to ${blank('to')}. That is ${blank('gap')}. About how much did ${blank('plant')} grow each day?`,
    easier: () => 'Lay cubes for the growth. Share them out, day by day.',
    stretch: () => 'Are some cubes left? What do they tell you?',
  },
  C9: {
    ask: (blank) => `Which ${blank('measured')} came most often?`,
    easier: () => 'Find the tallest pile. Read the number under it.',
    stretch: () => 'Could two piles be the tallest? What would you say?',
  },
  C10: {
    ask: (_, { blanks }) =>
      blanks['step']
        ? `Go from the smallest X to the largest X. Each step is ${answerText(blanks['step'])}. How many steps is it?`
        : 'How far is it from the smallest X to the largest?',
    easier: () => 'Start at the smallest X. Count the hops to the last.',
    stretch: () => 'What would a wide row of X marks tell us?',
  },
  C11: {
    ask: (blank) => `How many X marks are at ${blank('value')} or more?`,
    easier: (blank) => `Find ${blank('value')}. Cover what is to the left. Count the rest.`,
    stretch: (blank) => `Now leave out those at ${blank('value')}. How many are left?`,
  },
  C12: {
    ask: (blank) =>
      `Two kinds are ${part(blank, 'one')} and ${part(blank, 'other')}. Find the ${kindText(blank('third'), 'days')} on the graph. How many more of those make ${blank('goal')} in all?`,
    easier: () => 'First add what we have. Then count on.',
    stretch: () => 'Find one more way to get there.',
  },
  C13: {
    ask: (blank, { blanks }) =>
      blanks['day']
        ? `Find ${blank('day')}. How far was ${blank('leader')} ahead of ${blank('other')}?`
        : `When was ${blank('leader')} most ahead of ${blank('other')}? Name the day.`,
    easier: () => 'Look at one day. Find both marks. Count the lines between.',
    stretch: () => 'Make a list of how far ahead, day by day.',
  },
  C14: {
    ask: (blank) =>
      `Each picture means ${blank('each')}. Half a picture counts too. How many ${kind(blank, 'kind')} are there?`,
    easier: (blank) => `Each picture means ${blank('each')}. Skip count the whole ones first.`,
    stretch: () => 'When can a key have no half pictures? Why?',
  },
};

const kind = (blank: Blank, name: string): string => kindText(blank(name), blank('counted'));

const part = (blank: Blank, name: string): string => {
  const [number] = blank(`${name}Count`).split(' ');
  return `${number} ${kindText(blank(name), 'days')}`;
};

const inOrder = ({ blanks }: AskedQuestion): string => {
  const things = blanks['things'];
  return things?.kind === 'order' ? `See ${listText(things.things.map(answerText))}.` : '';
};

const muchMore = (blank: Blank, { blanks }: AskedQuestion): string => {
  const ends = `Look at ${blank('less')} and ${blank('more')}.`;
  if (blank('measured') === 'rain') return `${ends} How much more rain fell on the wetter day?`;
  if (blank('measured') === 'shadow') return `${ends} How much longer is the longer shadow?`;
  const word = blank('measured') === 'height' ? 'taller' : 'longer';
  return `${ends} ${blanks['gap'] ? `That is ${blank('gap')}. ` : ''}How much ${word} did ${blank('plant')} get?`;
};
