/** What Today says when a part of it did not come. The reading is written all the same. */
export const todayWords = {
  restMissing: 'It is written down. The rest did not load.',
  partMissing: 'A part did not load. Load this page again.',
} as const;
