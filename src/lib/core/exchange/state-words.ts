import type { DayState, WeatherWord } from '#core/journal';

/** What a state cell, or words in the place of a number, say about a day. */
export type StateRead = DayState | 'number' | 'word' | 'note';

/**
 * The state that a word in a table names, or null where it names none for sure: a dash may mean
 * nought, nothing or missed. `M` and `T` are observers' marks for missing and trace (from memory:
 * US weather service observing practice); the other words are common practice, no source.
 * @example
 * stateOfWord('Not up yet') // => 'not-up-yet'
 * stateOfWord('T') // => 'trace'
 * stateOfWord('-') // => null
 */
export const stateOfWord = (word: string): StateRead | null =>
  stateByWord.get(
    word
      .trim()
      .toLowerCase()
      .replace(/[\s_-]+/g, ' '),
  ) ?? null;

const wordsByState: Readonly<Record<StateRead, string>> = {
  'not-up-yet': 'not up yet,not up,not yet,not sprouted,not sprouted yet,no sprout',
  missed: 'missed,miss,missing,m,na,n/a,nan,null,none,not measured,did not measure,no reading',
  'no-sun': 'no sun,no shadow',
  trace: 'trace,tr,t',
  lost: 'lost,ended,died,dead,broken',
  number: 'number,reading',
  word: 'word',
  note: 'note',
};

const stateByWord = /* @__PURE__ */ byWord(wordsByState);

/**
 * The weather word of ours that a word in a table means, or null: then it is kept as a note.
 * @example
 * weatherOfWord('Sunny') // => 'sun'
 * weatherOfWord('drizzle') // => null
 */
export const weatherOfWord = (word: string): WeatherWord | null =>
  weatherByWord.get(word.trim().toLowerCase()) ?? null;

const wordsByWeather: Readonly<Record<WeatherWord, string>> = {
  sun: 'sun,sunny,sunshine',
  cloud: 'cloud,clouds,cloudy,overcast',
  rain: 'rain,rainy,raining',
  snow: 'snow,snowy,snowing',
  wind: 'wind,windy',
  fog: 'fog,foggy',
};

const weatherByWord = /* @__PURE__ */ byWord(wordsByWeather);

/** Marked as pure above, so that a page which never looks words up does not carry them. */
function byWord<Meaning extends string>(
  wordsByMeaning: Readonly<Record<Meaning, string>>,
): ReadonlyMap<string, Meaning> {
  const pairs = Object.entries<string>(wordsByMeaning).flatMap(([meaning, words]) =>
    words.split(',').map((word) => [word, meaning as Meaning] as const),
  );
  return new Map(pairs);
}
