import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import {
  decodeTableChoice,
  notRightFor,
  rightGraphOf,
  standardsOf,
  tableChoicesOf,
  tableOf,
  type TableOffer,
  type TableSource,
  type TableVariant,
  type ValueTable,
} from '#core/graphs';
import { stages, type Notebook, type Quantity, type Stage } from '#core/journal';
import { exactPerUnit } from '#core/measure';
import { sampleNotebook, sampleToday } from './sample-logs';
import { notebookOf, sibling, specimenId, thing, type Line } from './small-notebook';

const investigationOf = (quantity: Quantity) =>
  [...sampleNotebook.investigations.values()].find((each) => each.quantity === quantity)!.id;

const sampleOffers = (quantity: Quantity, stage: Stage): readonly TableOffer[] =>
  tableChoicesOf(
    ...([
      sampleNotebook,
      { investigation: investigationOf(quantity) },
      stage,
      sampleToday,
    ] as const),
  );

const offersIn = (notebook: Notebook, stage: Stage): readonly TableOffer[] =>
  tableChoicesOf(notebook, { investigation: thing }, stage, civilDay('2026-03-31'));

const offerOf = (offers: readonly TableOffer[], source: TableSource): TableOffer => {
  const found = offers.find((offer) => offer.source === source);
  if (!found) throw new Error(`${source} is not offered`);
  return found;
};

const missing = ({ graphs }: TableVariant) => graphs.map((graph) => [graph.graph, graph.missing]);

/** Heights on days that follow one another, from 2 March on. */
const heights = (...read: readonly string[]): readonly Line[] =>
  read.map((text, index) => ({ day: addDays(civilDay('2026-03-02'), index), read: text }));

const skies = (...words: readonly string[]): Notebook =>
  notebookOf(
    { Sky: words.map((word, index) => ({ day: addDays(civilDay('2026-03-02'), index), word })) },
    { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['sun', 'cloud', 'rain', 'snow'] },
  );

describe('what a log can be made into today', () => {
  it('is nothing for an investigation that is not there', () => {
    expect(
      tableChoicesOf(notebookOf({}), { investigation: thing }, 'grade-2', sampleToday),
    ).toEqual([]);
  });

  it('is told for the made-up beans, the ready ones first', () => {
    expect(sampleOffers('plant-height', 'grade-2').map(({ source }) => source)).toEqual([
      ...['day-values', 'growth-days', 'growth-amounts', 'weather-days', 'days-in-order'],
      'values-side-by-side',
      // Two beans are too few for a line plot of many, and three reads of one day for one of reads.
      ...['state-days', 'specimen-readings', 'each-specimen', 'reads-of-one'],
    ]);
  });

  it('answers the question its graph answers', () => {
    const questions = new Map(
      (['plant-height', 'rain', 'shadow'] as const)
        .flatMap((quantity) => sampleOffers(quantity, 'grade-3'))
        .map(({ source, question }) => [source, question]),
    );
    expect(Object.fromEntries(questions)).toMatchObject({
      ...{ 'weather-days': 'which-came-most', 'day-values': 'which-had-most' },
      ...{ 'rain-amounts': 'how-often', 'days-in-order': 'how-did-it-change' },
      'hours-in-order': 'how-did-it-change',
    });
  });

  it('never offers rain as a joined line, nor a height as pictures or piles', () => {
    // Nothing existed between two readings of rain (common practice); P13, and line plots lose order.
    const rain = sampleOffers('rain', 'grade-3');
    expect(rain.some(({ form }) => form === 'times')).toBe(false);
    expect(offerOf(rain, 'day-values').notRight).toContainEqual({
      ...{ graph: 'line-graph', why: 'nothing-in-between' },
    });
    const plant = offerOf(sampleOffers('plant-height', 'grade-3'), 'day-values');
    expect(plant.notRight).toEqual([
      { graph: 'picture-graph', why: 'lengths-are-not-counted' },
      { graph: 'line-plot', why: 'order-would-be-lost' },
    ]);
  });

  it('never says of one graph both that it may be and that it is not right', () => {
    for (const quantity of ['plant-height', 'rain', 'shadow'] as const) {
      for (const { variants, notRight } of sampleOffers(quantity, 'grade-3')) {
        const may = variants.flatMap(({ graphs }) => graphs.map(({ graph }) => graph));
        expect(notRight.filter(({ graph }) => may.includes(graph))).toEqual([]);
      }
    }
    expect(notRightFor('counts', 'rain').map(({ graph }) => graph)).toEqual([
      ...['line-plot', 'line-graph'],
    ]);
  });

  it('is ready exactly where a right graph can be made of its table', () => {
    for (const quantity of ['plant-height', 'rain', 'shadow'] as const) {
      for (const stage of stages) {
        for (const { choice, graphs } of sampleOffers(quantity, stage).flatMap((o) => o.variants)) {
          expect(decodeTableChoice(JSON.parse(JSON.stringify(choice)))).toEqual({
            ...{ ok: true, value: choice },
          });
          const table = tableOf(choice, sampleNotebook, sampleToday)!;
          for (const each of graphs) {
            const right = rightGraphOf(each.graph, table, stage);
            if (each.missing.length === 0) expect(right.ok).toBe(true);
            if (!right.ok) expect(each.missing).not.toEqual([]);
          }
        }
      }
    }
  });
});

// Table 3 or more, value bars 4, line graph 5, kinds of day 8, line plot 8 with some repeats:
// common practice of the trade, no source.
describe('what is still missing', () => {
  it.each([
    [['sun', 'cloud'], false, 2, true],
    [['sun', 'cloud', 'sun'], true, 3, true],
    [['sun', 'cloud', 'sun', 'rain', 'sun', 'sun', 'rain'], true, 7, true],
    [['sun', 'cloud', 'sun', 'rain', 'sun', 'sun', 'rain', 'sun'], true, 8, false],
  ] as const)('of days sorted into kinds: %j', (words, tableReady, have, isMissing) => {
    const [best] = offerOf(offersIn(skies(...words), 'grade-2'), 'kind-days').variants;
    const wanted = isMissing ? [{ kind: 'more-needed', have, need: 8 }] : [];
    expect(best.tableReady).toBe(tableReady);
    expect(missing(best)).toEqual([
      ['picture-graph', wanted],
      ['bar-graph', wanted],
    ]);
  });

  it('of value bars is a fourth value, and of a line graph a fifth', () => {
    const three = offersIn(notebookOf({ Bean: heights('1', '2', '3') }), 'grade-3');
    expect(missing(offerOf(three, 'day-values').variants[0])).toEqual([
      ['bar-graph', [{ kind: 'more-needed', have: 3, need: 4 }]],
    ]);
    const four = offersIn(notebookOf({ Bean: heights('1', '2', '3', '4') }), 'grade-3');
    expect(missing(offerOf(four, 'day-values').variants[0])).toEqual([['bar-graph', []]]);
    expect(missing(offerOf(four, 'days-in-order').variants[0])).toEqual([
      ['line-graph', [{ kind: 'more-needed', have: 4, need: 5 }]],
    ]);
    const five = offersIn(notebookOf({ Bean: heights('1', '2', '3', '4', '5') }), 'grade-3');
    expect(missing(offerOf(five, 'days-in-order').variants[0])).toEqual([['line-graph', []]]);
  });

  const seedlings = (...read: readonly string[]): Notebook =>
    notebookOf(
      Object.fromEntries(
        read.map((text, index) => [`Seedling ${index + 1}`, [{ day: '2026-03-10', read: text }]]),
      ),
    );

  it('of a line plot is eight marks, some of them alike', () => {
    const plotOf = (notebook: Notebook) =>
      missing(offerOf(offersIn(notebook, 'grade-2'), 'each-specimen').variants[0])[0]?.[1];
    expect(plotOf(seedlings('3', '4', '3', '5'))).toEqual([
      { kind: 'more-needed', have: 4, need: 8 },
    ]);
    expect(plotOf(seedlings('3', '4', '5', '6', '7', '8', '9', '10'))).toEqual([
      { kind: 'no-repeats' },
    ]);
    expect(plotOf(seedlings('3', '4', '5', '6', '7', '8', '9', '3'))).toEqual([]);
  });

  it('of an empty log is all of it', () => {
    const offers = offersIn(notebookOf({ Bean: [] }), 'grade-2');
    expect(offers.map(({ source }) => source)).toEqual([
      ...['day-values', 'growth-days', 'growth-amounts', 'days-in-order'],
    ]);
    for (const { variants } of offers) {
      expect(variants[0].have).toBe(0);
      expect(variants[0].graphs.every((each) => each.missing[0]?.kind === 'more-needed')).toBe(
        true,
      );
    }
  });
});

describe('too many kinds for the stage', () => {
  const fourKinds = skies('sun', 'sun', 'sun', 'cloud', 'cloud', 'rain', 'rain', 'snow');

  it('are put together as a child of the stage can sort them, only as a choice', () => {
    const [best, ...others] = offerOf(offersIn(fourKinds, 'grade-1'), 'kind-days').variants;
    expect(best).toMatchObject({ together: true, choice: { mostKinds: 3 } });
    // The three days of sun, the two of cloud; rain and snow together are three.
    expect(tableOf(best.choice, fourKinds, sampleToday)).toMatchObject({
      rows: [
        { label: 'sun', count: 3 },
        { label: 'cloud', count: 2 },
        { label: 'other', count: 3 },
      ],
    });
    expect(others.map(({ together }) => together)).toEqual([false]);
    expect(others[0]?.graphs[0]?.missing).toEqual([
      { kind: 'no-graph', why: { kind: 'too-many-kinds', have: 4, most: 3 } },
    ]);
  });

  it('are left alone in a stage that sorts so many', () => {
    const { variants } = offerOf(offersIn(fourKinds, 'grade-2'), 'kind-days');
    expect(variants.map(({ together }) => together)).toEqual([false]);
  });
});

describe('heights too tall for the page', () => {
  const { variants } = offerOf(sampleOffers('plant-height', 'grade-2'), 'day-values');

  it('are offered as a shorter record first, and in inches after it', () => {
    // 22 cm by single units need 22 squares; the bean was 15 cm on the 21st and 18 on the 23rd.
    expect(variants[0]).toMatchObject({
      ...{ span: 'first-that-fit', told: 'as-read', aboutCount: 0 },
      choice: { from: '2026-03-11', to: '2026-03-21' },
    });
    expect(variants[1]).toMatchObject({ span: 'whole', told: 'other-unit', aboutCount: 15 });
    expect(variants[1]?.choice.told).toEqual({ unit: 'in', mark: '1/2 in', converts: true });
  });

  it('say why not the whole log as it was read', () => {
    expect(variants.at(-1)).toMatchObject({ span: 'whole', told: 'as-read' });
    expect(variants.at(-1)?.graphs[0]?.missing).toEqual([
      { kind: 'no-graph', why: { kind: 'too-tall', need: 22, room: 16 } },
    ]);
  });

  it('go by twos in grade 3', () => {
    const [best] = offerOf(sampleOffers('plant-height', 'grade-3'), 'day-values').variants;
    expect(best).toMatchObject({ span: 'whole', told: 'as-read' });
  });

  it('are never told in a unit in which some height would be 0', () => {
    for (const { variants } of stages.flatMap((stage) => sampleOffers('plant-height', stage))) {
      for (const { choice } of variants.filter(({ told }) => told === 'other-unit')) {
        const table = tableOf(choice, sampleNotebook, sampleToday);
        if (table?.form !== 'values') continue;
        expect(table.rows.some(({ exact }) => exact === 0)).toBe(false);
      }
    }
  });
});

describe('bars too tall for the page, with no shorter record and no other unit', () => {
  const shadows = (stage: Stage) => offerOf(sampleOffers('shadow', stage), 'hour-values').variants;
  const weeks = (stage: Stage) => offerOf(sampleOffers('rain', stage), 'week-values').variants;

  // Shadows of up to 168 cm by 20, weeks of up to 29 mm by 5, beside a grown-up.
  it.each([
    ['the shadows of a day', shadows, 20, 180, 168, 'cm'],
    ['the rain of the weeks of April', weeks, 5, 30, 29, 'mm'],
  ] as const)('are offered in a given frame: %s', (_, variantsIn, step, to, largest, unit) => {
    for (const stage of ['grade-1', 'grade-2'] as const) {
      const [best, ...others] = variantsIn(stage);
      expect(best).toMatchObject({ told: 'as-read', aboutCount: 0, choice: { givenSteps: true } });
      expect(best?.graphs).toMatchObject([{ graph: 'bar-graph', fit: 'guided', missing: [] }]);
      const table = tableOf(best!.choice, sampleNotebook, sampleToday)!;
      const right = rightGraphOf('bar-graph', table, stage);
      const one = exactPerUnit(unit);
      expect(right).toMatchObject({ value: { scale: { step: step * one, to: to * one } } });
      // Why not unit by unit stays to be asked.
      expect(others.map(({ choice, graphs }) => [choice.givenSteps, graphs[0]?.missing])).toEqual([
        [undefined, [{ kind: 'no-graph', why: { kind: 'too-tall', need: largest, room: 16 } }]],
      ]);
    }
  });

  it('go by a scale of the child in grade 3, where no frame is needed', () => {
    for (const variants of [shadows('grade-3'), weeks('grade-3')]) {
      expect(variants.map(({ choice }) => choice.givenSteps)).toEqual([undefined]);
      expect(variants[0].graphs[0]).toMatchObject({ fit: 'now', missing: [] });
    }
  });

  it('are given no frame where a shorter record or inches will do', () => {
    for (const stage of stages) {
      const { variants } = offerOf(sampleOffers('plant-height', stage), 'day-values');
      expect(variants.some(({ choice }) => choice.givenSteps)).toBe(false);
    }
  });

  it('are told in a unit that some of them were read in', () => {
    // Feet: 90, 120 and 150 cm are about 3, 4 and 5 of them, and 3 ft was read.
    const read = ['90', '120', '150'].map((each, hour) => ({ time: `1${hour}:00`, read: each }));
    const lines: readonly Line[] = [
      ...read.map((each) => ({ day: '2026-03-02', ...each })),
      { day: '2026-03-02', time: '13:00', read: '3', unit: 'ft' },
    ];
    const notebook = notebookOf({ Stick: lines }, { quantity: 'shadow' });
    const [best] = offerOf(offersIn(notebook, 'grade-2'), 'hour-values').variants;
    expect(best).toMatchObject({ told: 'other-unit', choice: { told: { unit: 'ft' } } });
    const table = tableOf(best.choice, notebook, sampleToday) as ValueTable;
    expect(table.rows.map(({ text }) => text)).toEqual(['about 3', 'about 4', 'about 5', '3']);
  });

  it('want only more readings while there are too few', () => {
    const lines = ['60', '90'].map((read, hour) => ({
      ...{ day: '2026-03-02', time: `1${hour}:00`, read },
    }));
    const notebook = notebookOf({ Stick: lines }, { quantity: 'shadow' });
    const { variants } = offerOf(offersIn(notebook, 'grade-1'), 'hour-values');
    expect(variants.map((each) => missing(each))).toEqual([
      [['bar-graph', [{ kind: 'more-needed', have: 2, need: 4 }]]],
    ]);
  });
});

describe('measures with more marks than fit', () => {
  it('are offered to the nearest coarser mark that fits', () => {
    const read = ['2.1', '3.4', '9.9', '4.2', '3.6', '12.3', '4.4', '5.1', '3.8', '4'];
    const notebook = notebookOf(
      Object.fromEntries(read.map((text, i) => [`Leaf ${i}`, [{ day: '2026-03-10', read: text }]])),
      { quantity: 'length', mark: '1 mm' },
    );
    const [best] = offerOf(offersIn(notebook, 'grade-3'), 'each-specimen').variants;
    // 2.1 to 12.3 cm are 102 millimetres, and 21 half centimetres.
    expect(best).toMatchObject({ told: 'coarser-mark', choice: { told: { mark: '0.5 cm' } } });
    expect(best.aboutCount).toBe(9);
  });

  it('are offered in one unit where two were read', () => {
    const notebook = notebookOf(
      Object.fromEntries(
        Array.from({ length: 9 }, (_, i) => [
          `Leaf ${i}`,
          [
            {
              day: '2026-03-10',
              read: String(2 + (i % 3)),
              ...(i === 8 ? { unit: 'in' as const } : {}),
            },
          ],
        ]),
      ),
      { quantity: 'length', unit: 'cm' },
    );
    const { variants } = offerOf(offersIn(notebook, 'grade-2'), 'each-specimen');
    // As it was read, the leaf in inches has no cross among the others.
    expect(variants.map(({ told, have, aboutCount }) => [told, have, aboutCount])).toEqual([
      ['as-read', 8, 0],
      ['one-unit', 9, 1],
    ]);
  });
});

describe('heights read in two units', () => {
  it('are refused as they were read, and offered in one', () => {
    const [first, ...others] = heights('2', '5', '6', '7', '9');
    const notebook = notebookOf({ Bean: [{ ...first!, unit: 'in' }, ...others] });
    const { variants } = offerOf(offersIn(notebook, 'grade-3'), 'day-values');
    expect(variants.map(({ told }) => told)).toEqual(['one-unit', 'as-read']);
    expect(variants[1]?.graphs[0]?.missing).toEqual([
      { kind: 'no-graph', why: { kind: 'units-mixed', units: ['in', 'cm'] } },
    ]);
  });
});

describe('whose log it is about', () => {
  const notebook = notebookOf({
    Fern: heights('1', '2'),
    Moss: heights('1', '2', '3', '4', '5', '6'),
  });

  it('is the fullest one, unless another is asked for', () => {
    const namesOf = (specimen?: ReturnType<typeof specimenId>) =>
      offerOf(
        tableChoicesOf(
          notebook,
          { investigation: thing, ...(specimen ? { specimen } : {}) },
          ...(['grade-3', civilDay('2026-03-31')] as const),
        ),
        'day-values',
      ).variants[0].choice.specimens;
    expect(namesOf()).toEqual([specimenId(1)]);
    expect(namesOf(specimenId(0))).toEqual([specimenId(0)]);
  });

  it('is also both in one line graph', () => {
    const both = notebookOf({
      Fern: heights('1', '2', '3', '4', '5', '6'),
      Moss: heights('1', '2', '3', '4', '5', '6'),
    });
    const { variants } = offerOf(offersIn(both, 'grade-3'), 'days-in-order');
    expect(variants.map(({ choice }) => choice.specimens.length)).toEqual([1, 2]);
  });
});

describe('the same thing measured again and again', () => {
  it('makes a line plot of the day with most reads', () => {
    const notebook = notebookOf({
      Bean: [
        { day: '2026-03-09', read: '7' },
        { day: '2026-03-10', read: '8', again: ['8', '9', '8'] },
        { day: '2026-03-10', read: '8', again: ['7', '8', '9'], author: sibling },
      ],
    });
    const [best] = offerOf(offersIn(notebook, 'grade-2'), 'reads-of-one').variants;
    expect(best).toMatchObject({ span: 'one-day', have: 8, choice: { from: '2026-03-10' } });
    expect(missing(best)).toEqual([['line-plot', []]]);
  });
});

describe('the standards', () => {
  const inches = (mark: '1 in' | '1/4 in') => ({ form: 'measures', unit: 'in', mark }) as const;

  // Common Core (2010) 1.MD.C.4, 2.MD.D.9-10, 3.MD.B.3-4.
  it.each([
    ['picture-graph', { form: 'counts' }, 'grade-1', 'other', ['1.MD.C.4']],
    ['bar-graph', { form: 'counts' }, 'grade-2', 'other', ['2.MD.D.10']],
    ['bar-graph', { form: 'counts' }, 'grade-3', 'weather', ['3.MD.B.3', '3-ESS2-1']],
    ['line-plot', inches('1 in'), 'grade-2', 'other', ['2.MD.D.9']],
    ['line-plot', inches('1/4 in'), 'grade-3', 'other', ['3.MD.B.4']],
    ['line-graph', { form: 'times' }, 'grade-3', 'shadow', ['5-ESS1-2', '5.G.A.2']],
  ] as const)('of a %s of %j in %s about %s are %j', (graph, table, stage, subject, codes) => {
    expect(standardsOf(graph, table, stage, subject)).toEqual(codes);
  });

  it('put line plots of half inches off until grade 3, and any until grade 2', () => {
    const halves = notebookOf(
      Object.fromEntries(
        ['3', '3 1/2', '4', '3', '5', '5 1/2', '3', '4'].map((text, i) => [
          ...([`Pot ${i}`, [{ day: '2026-03-10', read: text }]] as const),
        ]),
      ),
      { unit: 'in', mark: '1/2 in' },
    );
    const fits = stages.map((stage) =>
      offerOf(offersIn(halves, stage), 'each-specimen').variants.map(({ told, graphs }) => [
        ...[told, graphs[0]?.fit],
      ]),
    );
    expect(fits[0]).toEqual([['as-read', 'later']]);
    // In grade 2 to the nearest whole inch.
    expect(fits[1]).toEqual([
      ['coarser-mark', 'now'],
      ['as-read', 'later'],
    ]);
    expect(fits[2]).toEqual([['as-read', 'now']]);
  });
});

describe('a long log', () => {
  it('offers the latest ten days and the first ten', () => {
    const words = Array.from({ length: 40 }, (_, i) => ['sun', 'rain', 'cloud'][i % 3]!);
    const { variants } = offerOf(offersIn(skies(...words), 'grade-3'), 'kind-days');
    expect(variants.map(({ span, have }) => [span, have])).toEqual([
      ['whole', 40],
      ['latest-ten', 10],
      ['first-ten', 10],
    ]);
  });
});
