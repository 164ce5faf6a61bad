import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { latestChange, rainTotals, shadowDays } from '#core/growth';
import { graphKinds, kindTally, type MistakeId } from '#core/graphs';
import { helperLengths, quantities } from '#core/journal';
import { wordIds } from '#core/lessons';
import type { ParseErrorKind } from '#core/measure';
import { questionsOf } from '#core/questions';
import type { EntryQuestion, Series, StillInInches } from '#core/series';
import { bothSidesWords, compareTalk, compareWords, sideTask } from '#ui/both-sides';
import { hintWords, rightWords } from '#ui/draw-words';
import {
  childGrowthWords,
  childKindWords,
  childRainWords,
  childShadowWords,
} from '#ui/growth-words';
import { easierText, ideaText, questionText, stretchText } from '#ui/ladder-words';
import { sentenceStarter, wonderQuestions, wordText } from '#ui/lesson-words';
import {
  everyChildCaution,
  extraWords,
  logWords,
  lostWords,
  parseErrorWords,
  quantityWords,
  questionWords,
  stateWords,
  whySuggestions,
  workWords,
  writtenWords,
} from '#ui/words';
import { answerWords, doubtQuestion, doubtWords } from '#ui/doubt-words';
import {
  feedbackWords,
  guessQuestion,
  guessWords,
  helperQuestion,
  helperToTryWords,
} from '#ui/guess';
import * as afterWords from '../../src/lib/ui/today/after-words';
import { todayWords } from '../../src/lib/ui/today/today-words';
import { doubtSamples } from './asking/doubt-samples';
import { foundWords, numbersIn as numbersInWords, togetherWords, whoIsRight } from '#ui/together';
import * as chooseWords from '#ui/graph-words';
import * as boardWords from '../../src/lib/ui/draw/draw-board-words';
import { childSheetWords } from '../../src/lib/ui/lesson-paper/child-sheet-words';
import { sheetTask } from '../../src/lib/ui/paper/paper-words';
import { measureWords } from '../../src/lib/ui/measure/measure-words';
import { howWords, lessonWords } from '../../src/lib/ui/ruler-lessons/lesson-words';
import { paperTaskWords } from '../../src/lib/ui/ruler-lessons/paper-task-words';
import * as slipWords from '../../src/lib/ui/ruler-lessons/slip-words';
import { pointsOn } from '../core/growth/log-points';
import { seriesWith, shadowSeries } from '../core/graphs/small-series';
import { lessonsOfMany } from '../core/questions/lessons-of-many';
import { sampleLessons } from '../core/questions/lessons-of-sample';
import { gradeOf, sentencesOf, syllablesIn, wordsOf } from '../readability';
import { aheadSaid } from './ahead/ahead-said';
import { fairTestSaid } from './fair-test/fair-test-said';
import { reviewSaid } from './review/review-said';
import { talkSaid } from './talk/talk-said';

const today = civilDay('2026-03-13');
const deeds = [
  ...(['read-so', 'look-again', 'other-unit', 'no-plant'] as const),
  ...(['missed', 'no-sun', 'other-plant'] as const),
];
const misses = (['very-close', 'close', 'far'] as const).flatMap((size) =>
  (['exact', 'too-long', 'too-short'] as const).map((direction) => ({ size, direction })),
);
const cm12 = { text: '12', unit: 'cm', mark: '1 cm', exact: 120_000_000 } as const;

const in5 = { text: '5', unit: 'in', mark: '1 in', exact: 127_000_000 } as const;
const onDay = (day: string) =>
  ({ day: civilDay(day), metric: cm12, customary: in5 }) as unknown as StillInInches['from'];
const stayedInInches: StillInInches = {
  ...{ from: onDay('2026-03-11'), to: onDay('2026-03-12') },
  ...{ grewExact: 10_000_000, gapDays: 1 },
};

const questions: Readonly<Record<EntryQuestion['kind'], EntryQuestion>> = {
  'day-not-come-yet': { kind: 'day-not-come-yet', day: civilDay('2026-03-14'), today },
  'before-the-start': { kind: 'before-the-start', day: civilDay('2026-03-01'), startedOn: today },
  'past-the-ruler': { kind: 'past-the-ruler', measured: cm12, rulerExact: 300_000_000 },
  'already-read-today': { kind: 'already-read-today', day: today, readings: 1 },
};
const unreadable: readonly ParseErrorKind[] = [
  ...(['empty', 'too-long', 'not-a-number', 'negative', 'too-big', 'unknown-unit'] as const),
  ...(['ambiguous', 'off-every-mark', 'bad-fraction', 'bad-part', 'unit-mismatch'] as const),
];
const mistakes = { P: 13, B: 16, L: 15, T: 14 };
const mistakeIds = Object.entries(mistakes).flatMap(([letter, count]) =>
  Array.from({ length: count }, (_, index) => `${letter}${index + 1}` as MistakeId),
);
const rightParts = [
  ...(['title', 'key', 'side-label', 'bottom-label', 'scale-from-zero', 'even-scale'] as const),
  ...(['every-place', 'same-size', 'stand-on-base', 'every-value', 'one-mark-each'] as const),
  ...(['every-day', 'joined-in-order', 'gaps-shown', 'unit'] as const),
];
const steps = ['names', 'numbers', 'label', 'key', 'marks', 'joins', 'title'] as const;
const noGraphs = [
  ...(['too-few', 'too-many-kinds', 'no-numbers', 'units-mixed', 'too-tall', 'too-wide'] as const),
  ...(['no-key-fits', 'too-many-marks', 'too-many-series', 'below-zero'] as const),
];

const grown = (values: readonly number[], unit: 'cm' | 'in' = 'cm') =>
  childGrowthWords(
    latestChange(
      pointsOn(
        values.map((_, index) => -7 * (values.length - 1 - index)),
        values,
        unit,
        unit === 'cm' ? '1 cm' : '1 in',
        today,
      ),
    ),
    'plant-height',
    today,
  );
const rain = (values: readonly (number | 'trace')[]) =>
  childRainWords(
    rainTotals(seriesWith(values, { unit: 'mm', mark: '1 mm', quantity: 'rain' }), 'week'),
    'mm',
    today,
  );
const shadow = (clock: readonly (readonly [string, number])[]) =>
  childShadowWords(shadowDays(shadowSeries('2026-03-12', clock).points)[0], today);
const sky = (words: readonly string[]) =>
  childKindWords(
    kindTally({
      ...seriesWith(words.map(() => null)),
      days: words.map((word) => ({ words: [{ word }], planned: true })),
    } as unknown as Series),
  );

/** What components say by themselves, without a catalogue. */
const components = import.meta.glob<string>('/src/lib/ui/**/*.svelte', {
  eager: true,
  query: '?raw',
  import: 'default',
});
const saidInComponents = Object.values(components).flatMap((source) =>
  [...source.matchAll(/<Spoken\b[^>]*?\btext="([^"{]+)"/g)].map(([, text]) => text),
);

const readIdeaKeys = [
  ...['cross-is-one-thing', 'cross-is-one-read', 'cross-is-one-growth', 'cross-is-one-day-of-rain'],
  ...['cross-is-a-unit', 'cross-is-a-day-name', 'dry-is-read-blank-is-not', 'both-mean-no-rain'],
];

const furtherIdeaKeys = [
  ...['probably-not-yet', 'might-be-as-tall', 'seasons-and-chance', 'plants-slow-down'],
  ...['similar-not-same', 'longer-and-further-round', 'shorter-and-further-round', 'soil-line'],
  ...['we-missed-it', 'both-careful', 'smaller-unit', 'one-difference', 'planned-difference'],
  ...['second-difference', 'planned-the-same', 'flaw-P3', 'flaw-B7', 'flaw-L4', 'flaw-T6'],
  ...['look-at-leaves-and-colour', 'our-place-these-dates', 'honest-record', 'a-wish'],
  ...['midpoint-as-fact', 'sure-of-it', 'nothing-changes', 'straight-on', 'exactly-the-same'],
  ...['one-number', 'same-place', 'one-exact-day', 'bottom-of-pot', 'did-not-grow'],
  ...['it-was-nothing', 'older-is-right', 'bigger-unit', 'the-plants', 'neatness'],
  ...['taller-is-healthier', 'everywhere', 'forgot-to-erase'],
];

/** What the ladder asks of the made-up notebook and of many made-up journals. */
const everyAsked = [...Object.values(sampleLessons), ...lessonsOfMany(250)].flatMap(questionsOf);
const saidOf = (templates: RegExp): readonly string[] =>
  everyAsked
    .filter(({ template }) => templates.test(template))
    .flatMap((question) => [questionText, easierText, stretchText].map((text) => text(question)));

/**
 * Every catalogue of words that a child reads: one line each. The value is the catalogue itself
 * (every text in it is read), or a list of what its functions say.
 */
const catalogues: Readonly<Record<string, unknown>> = {
  cautions: everyChildCaution,
  questions: Object.values(questions).map(questionWords),
  tasks: Object.values(quantityWords).map(({ childTask }) => childTask),
  stamps: Object.values(stateWords).map(({ stamp }) => stamp),
  'a lost plant': lostWords,
  'numbers that cannot be read': unreadable.map((kind) =>
    parseErrorWords({ kind, position: 0, read: 'x', choices: [] }),
  ),
  'the log': [logWords, extraWords, whySuggestions, workWords, writtenWords('12 cm', 'Monday')],
  'hints for drawings': mistakeIds.map(hintWords),
  'what is right in a drawing': graphKinds.map((kind) =>
    rightParts.map((part) => rightWords(part, kind)),
  ),
  'choosing a graph': [
    chooseWords.sourceWords,
    chooseWords.tableQuestionWords,
    chooseWords.missingWords({ kind: 'no-repeats' }),
    noGraphs.map((kind) =>
      chooseWords.missingWords({ kind: 'no-graph', why: { kind } } as Parameters<
        typeof chooseWords.missingWords
      >[0]),
    ),
  ],
  'the drawing board': [
    Object.values(boardWords.graphWords).map(({ use }) => use),
    graphKinds.map((kind) => steps.map((step) => boardWords.stepWords(step, kind))),
  ],
  'asking about a number': [
    doubtSamples.map(({ doubt, measured, quantity }) =>
      doubtQuestion(doubt, { measured, quantity }),
    ),
    doubtSamples.flatMap(({ doubt }) => deeds.map((deed) => answerWords(deed, doubt))),
    [doubtWords, doubtWords.keep(cm12)],
  ],
  guesses: [
    guessWords,
    helperQuestion,
    helperLengths.map(helperToTryWords),
    quantities.map((quantity) => [guessQuestion(quantity, 'cm'), guessQuestion(quantity, 'count')]),
    misses.map((miss) => quantities.map((quantity) => feedbackWords(miss, quantity, 'cm'))),
  ],
  'after the reading': [afterWords, afterWords.sealOpensWords(cm12, cm12), todayWords],
  'a guess for later': aheadSaid,
  'a fair test': fairTestSaid,
  'the daily review': reviewSaid,
  'talking about a graph': talkSaid,
  'the components themselves': saidInComponents,
  growth: [
    ...[grown([4, 9]), grown([4, 4]), grown([9, 4]), grown([3, 5], 'in'), grown([4]), grown([])],
    ...[rain([3, 0, 2]), rain([0, 0]), rain(['trace', 'trace']), rain([])],
    shadow([
      ['09:00', 95],
      ['12:00', 40],
      ['15:00', 80],
    ]),
    shadow([['09:00', 95]]),
    ...[sky(['sun', 'sun', 'rain']), sky(['sun', 'rain']), sky([])],
  ],
  'careful measuring': measureWords,
  'both sides of the ruler': [
    ...[bothSidesWords, compareWords],
    (['first', 'then', 'only'] as const).map((turn) => sideTask('cm', turn)),
    (['plant-height', 'shadow', 'length'] as const).map((quantity) =>
      [undefined, stayedInInches].map((stayed) =>
        compareTalk({ metric: cm12, customary: in5 }, quantity, stayed).map(({ ask }) => ask),
      ),
    ),
  ],
  'measuring together': [
    ...[togetherWords, [1, 3].map(numbersInWords), whoIsRight.map(({ ask }) => ask)],
    [0, 20_000_000].map((spreadExact) =>
      ['12 cm', '13 cm'].map((counted) =>
        foundWords(
          {
            ...{ day: today, unit: 'cm', readings: [], spreadExact },
            ...{ smallest: cm12, middle: cm12, largest: cm12 },
          },
          counted,
          'plant-height',
        ),
      ),
    ),
  ],
  'questions to read': [saidOf(/^R/), readIdeaKeys.map(ideaText)],
  'questions between': saidOf(/^C/),
  'questions beyond': [saidOf(/^Y/), furtherIdeaKeys.map(ideaText)],
  'questions behind': saidOf(/^H/),
  'a lesson': [sentenceStarter, wonderQuestions, wordIds.map((id) => wordText(id).says)],
  'a lesson on paper': [childSheetWords, sheetTask],
  'ruler lessons': [...[lessonWords, howWords.map(({ text }) => text), slipWords, paperTaskWords]],
};

/**
 * Words of the trade that a child is taught, hears every day and taps: they count as one syllable.
 * The list is short on purpose; another way to say it comes first.
 */
const taughtWords: ReadonlySet<string> = new Set([
  ...[
    'inches',
    'centimetres',
    'millimetres',
    'ruler',
    'unit',
    'units',
    'number',
    'numbers',
    'measure',
    'measures',
  ],
  ...['measured', 'picture', 'pictures', 'table', 'title', 'shadow', 'grown-up'],
  // The days and months by name.
  ...['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday', 'tomorrow'],
]);

/** Sentences of more than ten words, each with the reason why it stays. */
const longSentences: ReadonlyMap<string, string> = new Map([]);

const textsIn = (found: unknown): readonly string[] => {
  if (typeof found === 'string') return [found];
  return found !== null && typeof found === 'object' ? Object.values(found).flatMap(textsIn) : [];
};

/** The formula is made for sentences: of a label with fewer words, each word must be easy. */
const shortestSentence = 4;
/** A figure is read at a glance, not by its letters: it counts as one syllable. */
const gradeForChild = (text: string): number =>
  gradeOf(text.replace(/\d+(?:[.,:/]\d+)*/g, '1'), taughtWords);

const isEasy = (text: string): boolean => {
  const words = wordsOf(text);
  if (words.length >= shortestSentence) return gradeForChild(text) <= 3;
  return words.every((word) => taughtWords.has(word) || /^\d/.test(word) || syllablesIn(word) <= 2);
};

describe.each(Object.entries(catalogues))('the child’s words of %s', (_name, catalogue) => {
  const texts = [...new Set(textsIn(catalogue))];

  it('are there', () => {
    expect(texts.length).toBeGreaterThan(0);
    for (const text of texts) expect(text).not.toMatch(/undefined|NaN|\[object/);
  });

  // Flesch and Kincaid, grade 3 or lower.
  it('are easy to read', () => {
    const hard = texts.filter((text) => !isEasy(text));
    expect(hard.map((text) => `${gradeForChild(text).toFixed(1)}: ${text}`)).toEqual([]);
  });

  it('have at most ten words in a sentence', () => {
    const long = texts
      .flatMap(sentencesOf)
      .filter((sentence) => wordsOf(sentence).length > 10 && !longSentences.has(sentence));
    expect(long).toEqual([]);
  });

  it('never say that something is wrong', () => {
    expect(texts.filter((text) => /\b(wrong|bad|fail\w*|incorrect|error)\b/i.test(text))).toEqual(
      [],
    );
  });
});

describe('the lists of what is allowed', () => {
  const all = Object.values(catalogues).flatMap(textsIn);

  it('hold no long sentence that is gone', () => {
    const sentences = new Set(all.flatMap(sentencesOf));
    expect([...longSentences.keys()].filter((sentence) => !sentences.has(sentence))).toEqual([]);
  });

  it('find a hard text and a long sentence when there is one', () => {
    expect(isEasy('Determine the approximate elevation of every specimen.')).toBe(false);
    expect(isEasy('Approximation')).toBe(false);
    expect(isEasy('Put the ruler on the soil.')).toBe(true);
  });
});
