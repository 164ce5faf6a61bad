/** What stands on the child's sheets besides the questions. */
export const childSheetWords = {
  nickname: 'Nickname',
  day: 'Day',
  madeUp: 'Practice numbers, not ours',
  tellsUs: 'Our graph tells us',
  preview: 'The child’s sheets',
  ask: 'Look at your graph. Read, then write.',
  rest: 'Draw the rest from the table.',
  table: 'This is the table to draw from.',
} as const;

/** At the foot of a sheet: which of them it is. */
export const sheetOf = (sheet: number, sheets: number): string => `Sheet ${sheet} of ${sheets}`;
