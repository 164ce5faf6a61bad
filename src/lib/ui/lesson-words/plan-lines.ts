import type { GraphKind } from '#core/graphs';
import type { LessonPlan } from '#core/lessons';
import { sentenceStarter, wonderQuestions } from './child-lines';

/** The lines of a plan that are the same for every log: by the keys that a plan is made of. */
export const planLine = (idea: string): readonly string[] => lines[idea] ?? [];

const lines: Readonly<Record<string, readonly string[]>> = {
  'look-and-wonder': [
    'Show the worked example with its title covered.',
    `Read aloud: ${wonderQuestions.map((each) => `“${each}”`).join(' ')}`,
    'Take two things seen and one wondered. Correct nothing. Then uncover the title.',
  ],
  'talk-ladder': [
    'Ask the questions one at a time, in their order.',
    'Your child points first, then answers. Too hard: take the easier way beside the question. Too easy: go further.',
    'A slip shows a thought; the plan says which. Ask, and do not tell.',
  ],
  'talk-two-questions': [
    'Ask the two questions. Your child points first, then answers.',
    'More questions stand below for a child who wants them.',
  ],
  sentence: [
    `Your child finishes the sentence “${sentenceStarter}”. You or your child write it under the graph.`,
    'Any sentence that the graph shows is good. It is about our own things and these days only.',
  ],
  'accept-wobbly': [
    'Wobbly lines and crooked letters are no mistakes, and spelling is never marked.',
  ],
  'accept-range-with-reason': [
    'Where the graph does not say (what comes next, what was missed), accept “between this and that”, or “I cannot tell”, with a reason from the graph.',
  ],
  'stuck-point': ['First point to the place and wait: “Look here.” Count to ten.'],
  'stuck-beside': [
    'Then do one together on the practice numbers. Your child does the next one alone.',
  ],
  'stop-while-willing': [
    'Stop while your child is still willing, also in the middle: a half-drawn graph can wait.',
  ],
  'stop-and-keep': ['Keep what is drawn, with the day on it. Nothing is erased.'],
};

/** What counts as right in a drawing: a quarter of a step to either side (common practice). */
export const acceptText: Readonly<Record<GraphKind, string>> = {
  'picture-graph':
    'One picture for each, or as the key says, in rows from one starting line. The pictures need not be pretty.',
  'bar-graph':
    'A bar that ends within a quarter of a step of its number is right. A single line in place of a bar is fine if it ends there.',
  'line-plot':
    'A cross whose middle is within a quarter of a step of its number is right. The order in which the crosses are made does not matter.',
  'line-graph':
    'A point at its own day or hour, and within a quarter of a step of its number, is right. Joins need not be straight, but must meet the points.',
};

/** The idea as a question, never the number. */
export const stuckIdea: Readonly<Record<LessonPlan['feature'], string>> = {
  'one-picture-each': 'Which one are you drawing now? Is there a picture for it yet?',
  'key-with-number': 'What does one picture stand for?',
  'bars-from-zero': 'Where does a bar begin?',
  'missed-day-keeps-place': 'Did we measure on that day?',
  'one-cross-each': 'Does this one have its own cross yet?',
  'parts-of-a-unit': 'Is it more or less than a half?',
  'along-then-up': 'Where are you along the bottom? Now, how far up?',
  'gaps-are-dashed': 'Do we know this part, or do we guess it?',
  'jump-is-the-difference': 'Where do you stand? Where do you jump to?',
  'smaller-unit-more-units': 'Which unit is bigger? Does it take more of them, or fewer?',
  'guess-then-measure': 'Which thing do we know already? Is this longer or shorter?',
  'whose-line': 'Whose number is this?',
};
