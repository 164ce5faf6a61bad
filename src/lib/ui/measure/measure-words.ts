/** What a child reads on the page of careful measuring. */
export const measureWords = {
  name: 'Measure with care',
  task: 'What do you want to try?',
  cards: {
    ruler: { name: 'Read a ruler', about: 'Learn what the marks say.' },
    'both-sides': { name: 'Two sides', about: 'Read both sides of your ruler.' },
    together: { name: 'Measure with others', about: 'All of you measure the same thing.' },
    ahead: { name: 'A guess for later', about: 'Guess a day that will come.' },
    'fair-test': { name: 'A fair test', about: 'Two plants. Just one thing is not the same.' },
  },
} as const;
