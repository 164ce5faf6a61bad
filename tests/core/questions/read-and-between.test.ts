import { describe, expect, it } from 'vitest';
import type { AskedQuestion } from '#core/questions';
import { answerText, questionText } from '#ui/ladder-words';
import { daily, factsOf, kinds, notebookOf, ofTemplate, type Asking } from './facts-of-lines';
import type { Notebook } from '#core/journal';

/** What is asked and answered, worked out by hand from the few numbers of each log. */
const said = (questions: readonly AskedQuestion[]): readonly string[] =>
  questions.map((question) => `${questionText(question)} ${answerText(question.answer)}`);

const bean = (
  written: Parameters<typeof daily>[0],
  plan: Parameters<typeof notebookOf>[1] = {},
): Notebook => notebookOf({ Bean: daily(written) }, plan);
const bars = { source: 'day-values', graph: 'bar-graph' } as const satisfies Asking;
const kindBars = { source: 'kind-days', graph: 'bar-graph' } as const satisfies Asking;
const kindPictures = { source: 'kind-days', graph: 'picture-graph' } as const satisfies Asking;
const rain = (written: Parameters<typeof daily>[0]) =>
  notebookOf({ Gauge: daily(written) }, { quantity: 'rain', unit: 'mm', mark: '1 mm' });
const rainBars = { ...bars, told: ['mm', '1 mm'] } as const satisfies Asking;
const rainPlot = {
  ...{ source: 'rain-amounts', graph: 'line-plot', told: ['mm', '1 mm'] },
} as const satisfies Asking;
const shadow = notebookOf(
  {
    Stick: [
      { day: '2026-03-02', time: '09:00', read: '60' },
      { day: '2026-03-02', time: '12:00', read: '25' },
      { day: '2026-03-02', time: '15:00', read: '48' },
    ],
  },
  { quantity: 'shadow' },
);
const shadowBars = { source: 'hour-values', graph: 'bar-graph', stage: 'grade-3' } as const;
const skies = kinds({ sun: 7, cloud: 3, rain: 2 });
const piles = rain([2, 3, 2, 6, 3, 5, 2, 6]);
const asked: Readonly<Record<string, readonly [Notebook, Asking, readonly string[]]>> = {
  R1: [
    bean([5, null, 9]),
    bars,
    [
      'Find Monday 2 March. How tall was Bean? 5 cm',
      'Find Wednesday 4 March. How tall was Bean? 9 cm',
    ],
  ],
  R2: [
    skies,
    kindBars,
    [
      'How many sunny days did we mark? 7 days',
      'How many cloudy days did we mark? 3 days',
      'How many rainy days did we mark? 2 days',
    ],
  ],
  R3: [bean([5, 9, 9]), bars, ['Bean was 5 cm one day. Which day? Monday 2 March']],
  R4: [skies, kindPictures, ['What does each picture stand for? 1 day']],
  R5: [piles, rainPlot, ['What does each X mean? The rain of one day.']],
  // At 3 mm there are 2, at 5 mm 1, at 6 mm 2; at 2 mm there are 3.
  R6: [
    piles,
    rainPlot,
    [2, 3, 5, 6].map(
      (value, index) =>
        `How many times was the rain ${value} mm? ${['3 times', '2 times', '1 time', '2 times'][index]}`,
    ),
  ],
  R7: [skies, kindBars, ['The numbers on the side go up. By how much each time? 1 day']],
  R8: [
    bean([5, 'missed', 9, null, 11]),
    bars,
    ['Which days have no number for Bean? How can you tell? Tuesday 3 March and Thursday 5 March'],
  ],
  R9: [
    rain([0, null, 4]),
    rainBars,
    [
      'Find a dry day we read. Find a day with no number. How are they not the same? We read the dry day: no rain. The other day we do not know.',
    ],
  ],
  R10: [
    shadow,
    shadowBars,
    [
      'How long was the shadow at 9 o’clock? Say it in cm. 60 cm',
      'How long was the shadow at 12 o’clock? Say it in cm. 25 cm',
      'How long was the shadow at 3 o’clock? Say it in cm. 48 cm',
    ],
  ],
  C1: [
    skies,
    kindBars,
    [
      'Count the sunny days. Count the cloudy days. How many more sunny days are there? 4 days',
      'Count the sunny days. Count the rainy days. How many more sunny days are there? 5 days',
      'Count the cloudy days. Count the rainy days. How many more cloudy days are there? 1 day',
    ],
  ],
  // Three days apart at least: from 2 to 5 March 11 - 4 = 7.
  C2: [
    bean([4, 6, 8, 11]),
    bars,
    [
      'Look at Monday 2 March and Thursday 5 March. That is 3 days. How much taller did Bean get? 7 cm',
    ],
  ],
  C3: [
    skies,
    kindBars,
    [
      'Count the sunny days. Count the cloudy days. How many is that together? 10 days',
      'Count the sunny days. Count the rainy days. How many is that together? 9 days',
      'Count the cloudy days. Count the rainy days. How many is that together? 5 days',
    ],
  ],
  C4: [skies, kindBars, ['How many days did we mark in all? 12 days']],
  // The steps are 2, 1, 2: only that of 1 cm comes once.
  C5: [
    bean([4, 6, 7, 9]),
    bars,
    [
      'Find two days in a row. They are 1 cm apart. Which days are they? Tuesday 3 March and Wednesday 4 March',
    ],
  ],
  C6: [
    rain([6, 2, 9]),
    rainBars,
    [
      'Look at the rain. See Monday 2 March, Tuesday 3 March and Wednesday 4 March. Which had the least? Put all in order. Tuesday 3 March, Monday 2 March, Wednesday 4 March',
    ],
  ],
  // The steps are 1, 4, 1: 4 leads by 3.
  C7: [
    bean([4, 5, 9, 10]),
    bars,
    [
      'When did Bean grow most? Name the two days. How many days was that? Tuesday 3 March to Wednesday 4 March, 1 day',
    ],
  ],
  // 6 cm in 2 days is 3 each day.
  C8: [
    bean([4, 7, 10]),
    bars,
    [
      'Look from Monday 2 March to Wednesday 4 March. That is 2 days. About how much did Bean grow each day? 3 cm',
    ],
  ],
  C9: [piles, rainPlot, ['Which rain came most often? 2 mm']],
  C10: [piles, rainPlot, ['How far is it from the smallest X to the largest? 4 mm']],
  // 5 are at 3 mm or more, 3 at 5 or more, 2 at 6.
  C11: [
    piles,
    rainPlot,
    [
      'How many X marks are at 3 mm or more? 5 crosses',
      'How many X marks are at 5 mm or more? 3 crosses',
      'How many X marks are at 6 mm or more? 2 crosses',
    ],
  ],
  // 7 + 3 + 2 = 12: to 15 it takes 3, and to 20 it takes 8. Where 3 is said, 3 is not asked.
  C12: [
    skies,
    { ...kindBars, stage: 'grade-3' },
    [
      'Two kinds are 3 cloudy days and 2 rainy days. Find the sunny days on the graph. How many more of those make 20 days in all? 8 days',
      'Two kinds are 7 sunny days and 2 rainy days. Find the cloudy days on the graph. How many more of those make 15 days in all? 3 days',
      'Two kinds are 7 sunny days and 2 rainy days. Find the cloudy days on the graph. How many more of those make 20 days in all? 8 days',
      'Two kinds are 7 sunny days and 3 cloudy days. Find the rainy days on the graph. How many more of those make 20 days in all? 8 days',
    ],
  ],
  // Leads of 3, 5 and 1 cm; on 3 March the 3 would not be told away, for the lead is 5.
  C13: [
    notebookOf({ Bean: daily([5, 9, 9]), Pea: daily([2, 4, 8]) }),
    { source: 'days-in-order', graph: 'line-graph' },
    [
      'Find Monday 2 March. How far was Bean ahead of Pea? 3 cm',
      'Find Tuesday 3 March. How far was Bean ahead of Pea? 5 cm',
      'Find Wednesday 4 March. How far was Bean ahead of Pea? 1 cm',
      'When was Bean most ahead of Pea? Name the day. Tuesday 3 March',
    ],
  ],
  C14: [
    kinds({ sun: 17, cloud: 6 }),
    { ...kindPictures, stage: 'grade-3' },
    [
      'Each picture means 2 days. Half a picture counts too. How many sunny days are there? 17 days',
      'Each picture means 2 days. Half a picture counts too. How many cloudy days are there? 6 days',
    ],
  ],
};

describe('each template', () => {
  it.each(Object.entries(asked))(
    '%s asks what a hand works out',
    (id, [notebook, asking, texts]) => {
      expect(said(ofTemplate(factsOf(notebook, asking), id))).toEqual(texts);
    },
  );
});

const ask = (id: string, notebook: Notebook, asking: Asking): number =>
  ofTemplate(factsOf(notebook, asking), id).length;

describe('a question is withdrawn', () => {
  it('where two days tie and one is asked for', () => {
    expect(ask('R3', bean([9, 9]), bars)).toBe(0);
    expect(ask('C9', rain([2, 3, 2, 6, 2, 6, 1, 6]), rainPlot)).toBe(0);
    expect(ask('C5', bean([4, 5, 6]), bars)).toBe(0);
    expect(ask('C7', bean([4, 8, 12]), bars)).toBe(0);
  });

  it('where the lead is less than two units, or the gaps differ', () => {
    expect(ask('C7', bean([4, 6, 9]), bars)).toBe(0);
    expect(ask('C7', bean([4, 5, null, 12]), bars)).toBe(0);
  });

  it('where a value is missing', () => {
    const texts = said(ofTemplate(factsOf(bean([5, 'missed', 9]), bars), 'R1'));
    expect(texts.filter((text) => text.includes('3 March'))).toEqual([]);
    const leads = notebookOf({ Bean: daily([5, 9, 9]), Pea: daily([2, null, 8]) });
    const two = { source: 'days-in-order', graph: 'line-graph' } as const;
    expect(said(ofTemplate(factsOf(leads, two), 'C13'))).toEqual([
      'Find Monday 2 March. How far was Bean ahead of Pea? 3 cm',
      'Find Wednesday 4 March. How far was Bean ahead of Pea? 1 cm',
    ]);
  });

  it('where a value is doubted', () => {
    // 40 cm after 6 cm is beyond what a plant does in a day (15 cm of room at most).
    const notebook = bean([4, 5, 6, 40, 7, 8]);
    const facts = factsOf(notebook, { ...bars, stage: 'grade-3' });
    expect(facts.doubted.size).toBeGreaterThan(0);
    const texts = ['R1', 'R3', 'C2', 'C5', 'C7', 'C8'].flatMap((id) => said(ofTemplate(facts, id)));
    expect(texts.filter((text) => text.includes('40 cm'))).toEqual([]);
    expect(texts.filter((text) => text.includes('Thursday 5 March'))).toEqual([]);
    // The same rain twice: was the gauge emptied? Nothing is asked about the whole, or that pile.
    const plot = factsOf(rain([1, 3, 7, 7, 3, 1, 4, 1, 3]), rainPlot);
    expect(plot.doubted.size).toBe(1);
    expect(said(ofTemplate(plot, 'R6')).some((text) => text.includes('7 mm'))).toBe(false);
    expect(ofTemplate(plot, 'C9')).toEqual([]);
  });

  it('where units are mixed: there is no graph to ask about', () => {
    const mixed = notebookOf({
      Bean: [...daily([5, 6]), { day: '2026-03-04', read: '3', unit: 'in' }],
    });
    expect(() => factsOf(mixed, bars)).toThrow('units-mixed');
  });

  it('where the days are too near for growth, or too far to be shared out', () => {
    expect(ask('C2', bean([4, 6, 8]), bars)).toBe(0);
    expect(ask('C8', bean([4, 7]), bars)).toBe(0);
    expect(ask('C8', bean([4, null, null, null, null, null, 10]), bars)).toBe(0);
  });

  it('where the answer is 0', () => {
    expect(said(ofTemplate(factsOf(rain([0, 4]), rainBars), 'R1'))).toEqual([
      'Find Tuesday 3 March. How much rain was there? 4 mm',
    ]);
    expect(ask('R2', kinds({ sun: 3, cloud: 2, rain: 0 }), kindBars)).toBe(2);
    expect(ask('C9', rain([0, 3, 0, 6, 0, 5, 0, 6]), rainPlot)).toBe(0);
  });

  it('where the answer is a number in the question', () => {
    // 3 cm on 3 March; and 3 cm of growth in 3 days.
    expect(said(ofTemplate(factsOf(bean([5, 3]), bars), 'R1'))).toEqual([
      'Find Monday 2 March. How tall was Bean? 5 cm',
    ]);
    expect(ask('C2', bean([4, 5, 6, 7]), bars)).toBe(0);
    expect(ask('R6', rain([1, 2, 4, 2]), rainPlot)).toBe(1);
  });

  it('where there are too few points', () => {
    expect(ask('C9', rain([2, 3, 2]), rainPlot)).toBe(0);
    expect(ask('C10', rain([2, 3, 2, 6]), rainPlot)).toBe(0);
    expect(ask('C6', rain([6, 2]), rainBars)).toBe(0);
  });

  it('where there are more kinds than the stage sorts', () => {
    const many = kinds({ sun: 3, cloud: 2, rain: 2, snow: 1 });
    expect(() => factsOf(many, { ...kindBars, stage: 'grade-1' })).toThrow('too-many-kinds');
  });

  it('where the numbers are beyond the stage', () => {
    const tall = bean([4, 9, 14, 19, 21, 23]);
    const given = { ...bars, source: 'days-in-order', graph: 'line-graph' } as const;
    const texts = said(ofTemplate(factsOf(tall, { ...given, stage: 'grade-1' }), 'R1'));
    expect(texts.some((text) => /2[13] cm/.test(text))).toBe(false);
    expect(ask('R1', tall, { ...given, stage: 'grade-2' })).toBe(6);
  });

  it('where a number has a part of a unit, up to grade 2', () => {
    const halves = notebookOf(
      { Bean: daily(['1 1/2', '2', '2 1/2']) },
      { unit: 'in', mark: '1/2 in' },
    );
    const inHalves = { ...bars, told: ['in', '1/2 in'] } as const;
    expect(said(ofTemplate(factsOf(halves, inHalves), 'R1'))).toEqual([
      'Find Tuesday 3 March. How tall was Bean? 2 inches',
    ]);
    expect(ask('R1', halves, { ...inHalves, stage: 'grade-3' })).toBe(3);
    expect(ask('C5', halves, { ...inHalves, stage: 'grade-3' })).toBe(0);
  });

  it('where it is of grade 3 only, or comes out with some left', () => {
    expect(ask('C8', bean([4, 6, 9]), bars)).toBe(0);
    // 5 cm in 2 days: 2 each day, and 1 left; but the 2 stands in the question.
    expect(said(ofTemplate(factsOf(bean([4, 6, 9]), { ...bars, stage: 'grade-3' }), 'C8'))).toEqual(
      [],
    );
    // 7 cm in 2 days from 5 March on: 3 each day, and 1 left.
    expect(
      said(
        ofTemplate(
          factsOf(bean([null, null, null, 5, 8, 12]), { ...bars, stage: 'grade-3' }),
          'C8',
        ),
      ),
    ).toHaveLength(1);
  });

  it('where rain is a total of several days', () => {
    const total = notebookOf(
      {
        Gauge: [
          ...daily([4, 7]),
          { day: '2026-03-05', read: '9', spanDays: 2 },
          { day: '2026-03-06', read: '2' },
        ],
      },
      { quantity: 'rain', unit: 'mm', mark: '1 mm' },
    );
    const facts = factsOf(total, rainBars);
    const texts = ['R1', 'R3', 'C2', 'C6'].flatMap((id) => said(ofTemplate(facts, id)));
    expect(texts.filter((text) => /5 March|9 mm/.test(text))).toEqual([]);
    expect(ofTemplate(facts, 'R8')).toEqual([]);
  });

  it('where a day is of two kinds and rows are put together', () => {
    const both = notebookOf(
      {
        Sky: [
          { day: '2026-03-02', word: 'sun' },
          { day: '2026-03-02', word: 'rain' },
          { day: '2026-03-03', word: 'sun' },
        ],
      },
      { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['sun', 'rain'] },
    );
    expect(ask('R2', both, kindBars)).toBe(2);
    expect(['C3', 'C4', 'C12'].map((id) => ask(id, both, kindBars))).toEqual([0, 0, 0]);
  });
});

describe('the narrowest range', () => {
  it('regroups only where the ones do not suffice', () => {
    const ranges = ofTemplate(
      factsOf(bean([4, 9, 14, 21, 28, 30]), {
        ...bars,
        source: 'days-in-order',
        graph: 'line-graph',
      }),
      'C2',
    ).map(({ blanks, range }) => [answerText(blanks['less']!), answerText(blanks['more']!), range]);
    // 21 - 4 regroups (1 < 4), 28 - 4 does not; 28 - 9 regroups.
    expect(ranges).toContainEqual(['Monday 2 March', 'Thursday 5 March', 'G2b']);
    expect(ranges).toContainEqual(['Monday 2 March', 'Friday 6 March', 'G2a']);
    expect(ranges).toContainEqual(['Tuesday 3 March', 'Friday 6 March', 'G2b']);
  });
});
