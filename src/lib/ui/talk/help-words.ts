import type { AskedQuestion, Judged, SlipId } from '#core/questions';
import { easierText } from '#ui/ladder-words';

/** The one question that helps after an answer. It never holds what is asked for. */
export function helpText(question: AskedQuestion, judged: Judged): string {
  const ofSlip = judged.kind === 'slip' ? helpBySlip[judged.slip] : undefined;
  if (typeof ofSlip === 'function') return ofSlip(question);
  return ofSlip ?? easierText(question);
}

type Help = string | ((question: AskedQuestion) => string);

/** The slips of answers in words have none of their own: there the easier way is what helps. */
export const helpBySlip: Readonly<Partial<Record<SlipId, Help>>> = {
  'larger-value': 'That is the larger one. How far apart are they?',
  'smaller-value': 'That is the smaller one. How far apart are they?',
  added: 'You put them together. How far apart are they?',
  'off-by-one': 'Can you touch each one, and count once more?',
  'one-part-only': 'That is one part. What goes with it?',
  'other-category': 'You read one row. Is it the one we want?',
  'other-day': 'Read the day once more. Is it the same day?',
  'other-time': 'Read the time once more. Is it the same time?',
  'other-pile': 'You looked at one pile. Is it the one we want?',
  'axis-for-count': 'You read the line. How many X marks stand there?',
  'count-for-axis': 'You counted the X marks. What number is under them?',
  'forgot-scale': ({ template }) =>
    template === 'R7'
      ? 'Read two numbers on the side. How far is that?'
      : 'What does the key say one picture is?',
  'forgot-unit': 'A number, good. What does it count? Pick a unit.',
  'other-unit': 'Look at the side. Which unit did we use?',
  'blank-is-zero': 'Is no number the same as 0?',
  'counted-ends': 'Count the hops, not the ends. How many hops?',
  'some-left-out': 'Those fit. Can you find more that fit?',
  'more-than-asked': 'Do all of them fit? Look at each one.',
  'divided-by-readings': 'How many nights went by? Share it out by those.',
  'whole-jump': 'That is all of it. How much for one day?',
  'counted-kinds': 'You counted the kinds. How many are in each kind?',
  'kind-for-key': 'That is the kind. How many is one picture?',
  'top-number': 'That is the top. How far to the next line?',
  'one-day-only': 'That is one day. Which day goes with it?',
  reversed: 'That is from the other end. Which one is least?',
  'log-order': 'That is day by day. Which one is least?',
  'tallest-day': ({ template }) =>
    template === 'C13'
      ? 'It is tall there. Where are they most apart?'
      : 'It is tall there. Where is the biggest step up?',
  'tallest-plant': 'That is the plant. On which day?',
  'summed-axis': 'You put numbers together. How many X marks are there?',
  'left-out-equal': 'Do the X marks at that number count, too?',
  'one-step-only': 'That is one step. What is the next step?',
  'half-as-whole': 'Is there half a picture? How much is half?',
  'hardest-sum': 'Try it. Where on the graph would you look?',
  decimals: 'Which numbers stand on your ruler? Pick one of those.',
};
