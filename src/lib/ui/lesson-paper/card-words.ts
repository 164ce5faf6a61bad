/** The sheet of word cards. */
export const cardWords = {
  preview: 'Word cards',
  cut: 'Words of the day. Cut along the dashed lines.',
} as const;
