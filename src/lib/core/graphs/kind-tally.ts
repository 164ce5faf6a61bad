import type { CivilDay } from '#core/calendar';
import type { Series } from '#core/series';

/** On how many days each word was noted. */
export interface KindTally {
  /** In the order of the plan, words that never came with 0; then words of an older plan. */
  readonly words: readonly { readonly word: string; readonly days: number }[];
  /** The words that came most, more than one when they came equally often; none in an empty log. */
  readonly most: readonly string[];
  /** Days with a word, and planned days without one. */
  readonly daysWithWord: number;
  readonly daysMissed: number;
  readonly firstDay: CivilDay | null;
  readonly lastDay: CivilDay | null;
}

/**
 * Counts the days of each word of a daily-kind log. A word noted twice on one day counts once; a
 * day with two words counts for both.
 * @example
 * kindTally({ investigation: { kinds: ['sun', 'rain'] }, days: [{ day: '2026-03-02', state: 'word', planned: true, words: [{ word: 'sun' }, { word: 'sun' }] }, { day: '2026-03-03', state: 'blank', planned: true, words: [] }] }) // => { words: [{ word: 'sun', days: 1 }, { word: 'rain', days: 0 }], most: ['sun'], daysWithWord: 1, daysMissed: 1, firstDay: '2026-03-02', lastDay: '2026-03-02' }
 */
export const kindTally = ({ days, investigation }: Series): KindTally => {
  const daysByWord = new Map(investigation.kinds.map((word) => [word, 0]));
  const noted = days.filter((day) => day.words.length > 0);
  for (const day of noted) {
    for (const word of new Set(day.words.map((note) => note.word))) {
      daysByWord.set(word, (daysByWord.get(word) ?? 0) + 1);
    }
  }
  const words = [...daysByWord].map(([word, count]) => ({ word, days: count }));
  const largest = Math.max(0, ...words.map((each) => each.days));
  return {
    words,
    most: words.filter((each) => largest > 0 && each.days === largest).map(({ word }) => word),
    daysWithWord: noted.length,
    daysMissed: days.filter((day) => day.planned && day.words.length === 0).length,
    firstDay: noted.at(0)?.day ?? null,
    lastDay: noted.at(-1)?.day ?? null,
  };
};
