/** What is read to the child when it looks at a graph for the first time. */
export const wonderQuestions = [
  'What do you see?',
  'What do you wonder?',
  'What could the title be?',
] as const;

/** How the child's own sentence begins. */
export const sentenceStarter = 'Our graph tells us …';
