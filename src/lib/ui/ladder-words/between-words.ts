import { formOf, type Told } from '#core/questions';
import { kind, part, numberIn, sentences, hasHalves, muchMore, bothEnds } from './between-parts';
import { howManyText, isPlainKind, kindText } from './kind-text';
import type { WordsById } from './template-words';
import { answerText } from './told-text';

/** Questions to compare and put together. */
export const betweenWords: WordsById = {
  C1: {
    ask: (blank) =>
      `Count the ${kind(blank, 'more')}. Count the ${kind(blank, 'fewer')}. ${
        isPlainKind(blank('more'), blank('counted'))
          ? `How many more ${kind(blank, 'more')} are there?`
          : 'Which has more? How many more?'
      }`,
    easier: (blank) =>
      `Look at the ${kind(blank, 'more')}. Look at the ${kind(blank, 'fewer')}. Pair them up. How many have no pair?`,
    stretch: (blank) =>
      isPlainKind(blank('fewer'), blank('counted'))
        ? `Turn it round. How many fewer ${kind(blank, 'fewer')} are there?`
        : 'Turn it round. Which has fewer? How many fewer?',
  },
  C2: {
    ask: (blank, question) => muchMore(blank, question),
    easier: (_, { blanks }) => `Find ${bothEnds(blanks)}. Draw the jump from the small number up.`,
    stretch: () => 'Write it with an empty box. Start with the small number.',
  },
  C3: {
    ask: (blank) =>
      `Count the ${kind(blank, 'one')}. Count the ${kind(blank, 'other')}. How many is that together?`,
    easier: (blank) => `Count the ${kind(blank, 'one')} first. Then count on.`,
    stretch: () => 'Is there one more kind? Put it with them. How many now?',
  },
  C4: {
    ask: (blank) => `How many ${blank('counted')} did we mark in all?`,
    easier: () => 'Look at one kind at a time. Add as you go.',
    stretch: (blank) =>
      blank('counted') === 'days'
        ? 'Look at a calendar. Are there more days there? Why?'
        : 'How could you check that it is right?',
  },
  C5: {
    ask: (blank) =>
      `Look at ${blank('measured') === 'rain' ? 'the rain' : blank('plant')}. Two days in a row are ${blank('apart')} apart. Which days are they?`,
    easier: () => 'Look at the steps from day to day. Which step fits?',
    stretch: () => 'Are there more days just as far apart? Look at all.',
  },
  C6: {
    ask: (blank, { blanks }) => {
      const [look, first] =
        blank('measured') === 'rain'
          ? ['Look at the rain on these days.', 'The least rain comes first.']
          : ['Look at the shadow at these times.', 'The shortest one comes first.'];
      return `${look} ${sentences(blanks['things'])} Put them in order. ${first}`;
    },
    easier: (blank, { blanks }) =>
      `Look at just two. ${sentences(blanks['things'], 2)} Which ${blank('measured') === 'rain' ? 'has less' : 'is shorter'}?`,
    stretch: (blank) =>
      blank('measured') === 'rain'
        ? 'Where would a day with no number go?'
        : 'Where would a time with no sun go?',
  },
  C7: {
    ask: (blank) =>
      `When did ${blank('plant')} grow the most? Name the two days. How many days was that?`,
    easier: () => 'Look at each step up. Which step is the tallest?',
    stretch: () => 'What if one gap were longer? Would it be fair?',
  },
  C8: {
    ask: (blank) =>
      `Look from ${blank('from')} to ${blank('to')}. That is ${blank('gap')}. About how much did ${blank('plant')} grow each day?`,
    easier: () => 'Lay cubes for the growth. Share them out, day by day.',
    stretch: () => 'Are some cubes left? What do they tell you?',
  },
  C9: {
    ask: (blank) => {
      const measured = blank('measured');
      if (measured === 'growth') return 'How much did it grow most often?';
      return measured === 'rain'
        ? 'How much rain came most often?'
        : `Which ${measured} came most often?`;
    },
    easier: () => 'Find the tallest pile. Read the number under it.',
    stretch: () => 'Could two piles be the tallest? What would you say?',
  },
  C10: {
    ask: (_, question) =>
      `Find the smallest X. Find the largest X. ${
        formOf(question) === 'steps'
          ? `Each step is ${answerText(question.blanks['step'] as Told)}. How many steps apart are they?`
          : 'How far apart are they?'
      }`,
    easier: () => 'Start at the smallest X. Count the hops to the last.',
    stretch: () => 'What would a wide row of X marks tell us?',
  },
  C11: {
    ask: (blank) => `Find each X at ${blank('value')} or more. How many?`,
    easier: (blank) => `Find ${blank('value')}. Cover what is to the left. Count the rest.`,
    stretch: (blank) => `Now leave out those at ${blank('value')}. How many are left?`,
  },
  C12: {
    ask: (blank, { blanks }) => {
      const counted = blanks['goal']?.kind === 'count' ? blanks['goal'].of : '';
      const third = kindText(blank('third'), counted);
      const have = `We count ${part(blanks, 'one')}. We count ${part(blanks, 'other')}.`;
      const more = isPlainKind(blank('third'), counted) ? `more ${third}` : 'more of those';
      return `${have} Find the ${third} too. How many ${more} make ${numberIn(blanks['goal'])} in all?`;
    },
    easier: () => 'First add up what we have. How many is that?',
    stretch: () => 'Find one more way to get there.',
  },
  C13: {
    ask: (blank, question) =>
      formOf(question) === 'how-far'
        ? `Find ${blank('day')}. How far was ${blank('leader')} ahead of ${blank('other')}?`
        : `When was ${blank('leader')} the most ahead of ${blank('other')}? Name the day.`,
    easier: (_, question) =>
      formOf(question) === 'how-far'
        ? 'Find both marks. Count up from one to the other.'
        : 'Look at two days. On which day is the gap bigger?',
    stretch: () => 'Make a list of how far ahead, day by day.',
  },
  C14: {
    ask: (blank, { blanks }) =>
      `Each picture means ${blank('each')}. ${hasHalves(blanks['each']) ? 'Half a picture counts too. ' : ''}${howManyText(blank('kind'), blank('counted'))}`,
    easier: (blank) => `Each picture means ${blank('each')}. Skip count the whole ones first.`,
    stretch: (_, { blanks }) =>
      hasHalves(blanks['each'])
        ? 'What if each picture means 5? Can we use half? Why?'
        : 'Can we use half a picture here? Why?',
  },
};
