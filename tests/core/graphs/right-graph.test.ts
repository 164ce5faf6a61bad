import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  countScale,
  drawRight,
  exactOfLabel,
  graphKinds,
  keyIsRight,
  labelsOf,
  lengthScale,
  mostKindsByStage,
  mostSquaresUp,
  pictureKey,
  plotScale,
  rightGraphOf,
  stepsOf,
  unitWords,
  type GraphTable,
  type RightGraph,
} from '#core/graphs';
import { stages, type Stage } from '#core/journal';
import { exactPerUnit, formatExactNumber, type MarkId } from '#core/measure';
import {
  countsTable,
  goldenLogs,
  goldenRight,
  measuresTable,
  timesTable,
  valuesTable,
} from './golden-logs';
import graphs from '../../reference/graphs.json';

const inch = exactPerUnit('in');
const cm = exactPerUnit('cm');

const right = (...how: Parameters<typeof rightGraphOf>): RightGraph => {
  const result = rightGraphOf(...how);
  if (!result.ok) throw new Error(`No right graph: ${result.error.kind}`);
  return result.value;
};

const refusal = (...how: Parameters<typeof rightGraphOf>) => {
  const result = rightGraphOf(...how);
  return result.ok ? null : result.error;
};

/** `13/4` of an inch, in whole nanometres. */
const inches = (text: string): number => {
  const [over, under = '1'] = text.split('/') as [string, string?];
  return (Number(over) * inch) / Number(under);
};

describe('a number written beside a tick', () => {
  const inInches = { form: 'measures', unit: 'in' } as const;

  // Wholes and parts by hand: 13/4 is 3 1/4, 5/2 is 2 1/2 (3.NF.A.3 and 4.NF.B.3 write such).
  it.each([
    ...[['13/4', '13/4'] as const, ['13/4 in', '13/4'] as const, ['13/4"', '13/4'] as const],
    ...[['5/2', '5/2'] as const, ['5/2 inches', '5/2'] as const, [' 5 / 2 ', '5/2'] as const],
    ...[['2 1/2', '5/2'] as const, ['2 1/2 in', '5/2'] as const, ['2½', '5/2'] as const],
    ...[['2½ in', '5/2'] as const, ['12/4', '3'] as const, ['21/8', '21/8'] as const],
    ...[['3/3', '1'] as const, ['5⁄2', '5/2'] as const, ['1/4', '1/4'] as const],
  ])('says %j for %s inches', (text, exact) => {
    expect(exactOfLabel(text, inInches)).toBe(inches(exact));
  });

  it('says parts of a centimetre too, and of an inch where the table is in centimetres', () => {
    expect(exactOfLabel('5/2', { form: 'values', unit: 'cm' })).toBe(2.5 * cm);
    expect(exactOfLabel('13/4 in', { form: 'values', unit: 'cm' })).toBe(3.25 * inch);
  });

  it.each([
    ...['', ' ', 'ten', '7/3', '5/0', '0/0', '2 5/2', '1/2/3', '13/4/2', '13/4.5', '-5/2'],
    ...['13/4 seeds', '1/2 of it', '13/', '/4', '9999999/2'],
  ])('says nothing where it is %j', (text) => {
    expect(exactOfLabel(text, inInches)).toBeNull();
  });

  it('says a whole number of things or nothing', () => {
    const ofThings = ['12/4', '4/2', '13/4', '5/2'].map((text) =>
      exactOfLabel(text, { form: 'counts' }),
    );
    expect(ofThings).toEqual([3, 2, null, null]);
  });

  it('is the same however the fraction is written', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2000 }),
        fc.constantFrom(2, 4, 8, 16),
        (over, under) => {
          const [whole, rest] = [Math.floor(over / under), over % under];
          const mixed = [whole || '', rest ? `${rest}/${under}` : ''].join(' ').trim();
          const exact = inches(`${over}/${under}`);
          expect(exactOfLabel(`${over}/${under}`, inInches)).toBe(exact);
          expect(exactOfLabel(`${mixed} in`, inInches)).toBe(exact);
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });
});

describe('the kind of graph', () => {
  const tables: Readonly<Record<GraphTable['form'], GraphTable>> = {
    counts: countsTable('days', { sun: 5, rain: 3 }),
    values: valuesTable('height', ['cm', '1 cm'], '2026-03-02', ['1', '2', '4', '5']),
    measures: measuresTable('height', ['cm', '1 cm'], ['3', '4', '4']),
    times: timesTable('height', ['cm', '1 cm'], '2026-03-02', { bean: ['1', '2', '4', '5', '6'] }),
  };

  // What may go where is common practice; heights in a picture graph are mistake P13.
  it.each([
    ['picture-graph', ['counts']],
    ['bar-graph', ['counts', 'values']],
    ['line-plot', ['measures']],
    ['line-graph', ['times']],
  ] as const)('%s is made of %s and of nothing else', (graph, forms) => {
    for (const table of Object.values(tables)) {
      const error = refusal(graph, table, 'grade-3');
      if ((forms as readonly string[]).includes(table.form)) expect(error).toBeNull();
      else expect(error).toEqual({ kind: 'wrong-table-for-kind', graph, form: table.form });
    }
  });

  it('is known for all four displays', () => {
    for (const graph of graphKinds) {
      expect(Object.values(tables).some((table) => refusal(graph, table, 'grade-3') === null)).toBe(
        true,
      );
    }
  });
});

describe('a table that makes no right graph', () => {
  const many = (count: number) =>
    countsTable('days', Object.fromEntries(Array.from({ length: count }, (_, i) => [`k${i}`, 2])));

  // Up to three categories in grade 1 (1.MD.C.4), four in grade 2 (2.MD.D.10), several in grade 3.
  it.each([
    ['grade-1', 3],
    ['grade-2', 4],
    ['grade-3', 8],
  ] as const)('has more kinds than a child of %s sorts: %i', (stage, most) => {
    expect(mostKindsByStage[stage]).toBe(most);
    expect(refusal('bar-graph', many(most), stage)).toBeNull();
    expect(refusal('bar-graph', many(most + 1), stage)).toEqual({
      ...{ kind: 'too-many-kinds', have: most + 1, most },
    });
  });

  it('has one kind only, or none that ever came', () => {
    expect(refusal('picture-graph', many(1), 'grade-2')).toMatchObject({ kind: 'too-few' });
    expect(refusal('bar-graph', countsTable('days', { sun: 0, rain: 0 }), 'grade-2')).toEqual({
      kind: 'no-numbers',
    });
  });

  it('has two units, which share no scale', () => {
    const table = valuesTable('height', ['cm', '1 cm'], '2026-03-02', ['1', '2', '4']);
    const [first, ...others] = table.rows;
    const mixed = { ...table, rows: [{ ...first!, unit: 'in' as const }, ...others] };
    expect(refusal('bar-graph', mixed, 'grade-3')).toEqual({
      ...{ kind: 'units-mixed', units: ['in', 'cm'] },
    });
    const allOther = { ...table, rows: table.rows.map((row) => ({ ...row, unit: 'in' as const })) };
    expect(refusal('bar-graph', allOther, 'grade-3')).toMatchObject({ kind: 'units-mixed' });
  });

  it('has only states, or a single number', () => {
    const states = valuesTable('height', ['cm', '1 cm'], '2026-03-02', ['missed', 'not-up-yet']);
    expect(refusal('bar-graph', states, 'grade-2')).toEqual({ kind: 'no-numbers' });
    const one = measuresTable('height', ['cm', '1 cm'], ['4']);
    expect(refusal('line-plot', one, 'grade-2')).toEqual({ kind: 'too-few', have: 1, need: 2 });
  });

  it('has bars taller than the paper, unit by unit, in grades 1 and 2 only', () => {
    const table = valuesTable('height', ['cm', '1 cm'], '2026-03-02', ['1', '22']);
    expect(refusal('bar-graph', table, 'grade-2')).toEqual({
      ...{ kind: 'too-tall', need: 22, room: mostSquaresUp },
    });
    expect(right('bar-graph', table, 'grade-3').scale.step).toBe(2 * cm);
  });

  it('has more days, ticks or lines than fit across', () => {
    const days = Array.from({ length: 21 }, () => '3');
    const table = valuesTable('height', ['cm', '1 cm'], '2026-03-02', days);
    expect(refusal('bar-graph', table, 'grade-3')).toEqual({
      ...{ kind: 'too-wide', need: 21, room: 20 },
    });
    const plot = measuresTable('length', ['cm', '1 mm'], ['1', '12.5', '4']);
    expect(refusal('line-plot', plot, 'grade-3')).toMatchObject({ kind: 'too-wide', need: 115 });
    const lines = { a: ['1', '2'], b: ['1', '2'], c: ['1', '2'], d: ['1', '2'] };
    const times = timesTable('height', ['cm', '1 cm'], '2026-03-02', lines);
    expect(refusal('line-graph', times, 'grade-3')).toEqual({
      ...{ kind: 'too-many-series', have: 4, most: 3 },
    });
  });

  it('has a pile that is higher than the paper even with small crosses', () => {
    const texts = Array.from({ length: 33 }, () => '4');
    expect(
      refusal('line-plot', measuresTable('length', ['cm', '1 cm'], [...texts, '5']), 'grade-2'),
    ).toEqual({ kind: 'too-many-marks', have: 33, most: 32 });
  });

  it('has an amount below nothing', () => {
    const table = measuresTable('growth', ['cm', '1 cm'], ['1', '2']);
    const drooped = { ...table, values: [...table.values, { ...table.values[0]!, exact: -cm }] };
    expect(refusal('line-plot', drooped, 'grade-3')).toEqual({ kind: 'below-zero' });
  });

  it('has counts that no key shows in whole and half pictures', () => {
    expect(refusal('picture-graph', countsTable('days', { a: 41, b: 17 }), 'grade-3')).toEqual({
      kind: 'no-key-fits',
    });
    expect(refusal('picture-graph', countsTable('days', { a: 23, b: 8 }), 'grade-2')).toEqual({
      ...{ kind: 'too-tall', need: 23, room: mostSquaresUp },
    });
  });
});

describe('a scale of counts', () => {
  // Single units in grades 1 and 2 (2.MD.D.10); 2, 5, 10 in grade 3 (3.MD.B.3).
  it.each([
    [16, 'grade-2', 1],
    [16, 'grade-3', 1],
    [17, 'grade-3', 2],
    [33, 'grade-3', 5],
    [81, 'grade-3', 10],
    [161, 'grade-3', 20],
  ] as const)('to %i goes in %s by %i', (largest, stage, step) => {
    const scale = countScale(largest, stage);
    expect(scale.ok && scale.value.step).toBe(step);
  });

  it('begins at 0, covers every count and never has more steps than the paper', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.constantFrom(...stages),
        (largest, stage) => {
          const scale = countScale(largest, stage);
          if (!scale.ok) {
            expect(stage).not.toBe('grade-3');
            expect(largest).toBeGreaterThan(mostSquaresUp);
            return;
          }
          const { from, to, step } = scale.value;
          expect(from).toBe(0);
          expect(to).toBeGreaterThanOrEqual(largest);
          expect(to / step).toBeLessThanOrEqual(mostSquaresUp);
          expect(to - step).toBeLessThan(Math.max(largest, 1));
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });
});

describe('a scale of lengths', () => {
  const scaleOf = (largest: number, unit: 'in' | 'cm' | 'mm', mark: MarkId, stage: Stage) => {
    const steps = stage === 'grade-3' ? 'any-step' : 'single-unit';
    const scale = lengthScale(largest * exactPerUnit(unit), { unit, mark }, stage, steps);
    return scale.ok ? [scale.value.step, scale.value.to].map((x) => x / exactPerUnit(unit)) : null;
  };

  it.each([
    [12, 'cm', '1 cm', 'grade-2', [1, 12]],
    [7, 'in', '1 in', 'grade-1', [1, 7]],
    [4.5, 'in', '1/2 in', 'grade-3', [0.5, 4.5]],
    [3.75, 'in', '1/4 in', 'grade-3', [0.25, 3.75]],
    [9, 'in', '1/4 in', 'grade-3', [1, 9]],
    [12.5, 'cm', '1 mm', 'grade-3', [1, 13]],
    [168, 'cm', '1 cm', 'grade-3', [20, 180]],
    [21, 'mm', '1 mm', 'grade-3', [2, 22]],
    // Rain in quarter inches is read from grade 1 on; whole inches would leave two squares.
    [1.5, 'in', '1/4 in', 'grade-2', [0.25, 1.5]],
  ] as const)(
    'to %d %s read to %s goes in %s by and to %j',
    (largest, unit, mark, stage, wanted) => {
      expect(scaleOf(largest, unit, mark, stage)).toEqual(wanted);
    },
  );

  // By 5, 10 and on in a frame that a grown-up gives: the made-up shadows of up to 168 cm, the
  // made-up weeks of up to 29 mm of rain, and a bean of 30 cm.
  it.each([
    [168, 'cm', 20, 180],
    [29, 'mm', 5, 30],
    [30, 'cm', 5, 30],
    [66, 'in', 5, 70],
    [150, 'cm', 10, 150],
  ] as const)('to %d %s goes in a given frame by %d to %d', (largest, unit, step, to) => {
    const one = exactPerUnit(unit);
    for (const stage of ['grade-1', 'grade-2'] as const) {
      const mark = `1 ${unit}` as MarkId;
      expect(lengthScale(largest * one, { unit, mark }, stage, 'by-fives')).toMatchObject({
        value: { from: 0, step: step * one, to: to * one },
      });
    }
  });

  it('is 0 to 1 where nothing but dry days was read', () => {
    expect(scaleOf(0, 'mm', '1 mm', 'grade-2')).toEqual([1, 1]);
  });
});

describe('another step of a scale', () => {
  // Ticks and nice ends of npm d3-array 3.2.5, kept in tests/reference/graphs.json: those cases
  // that begin at 0 and whose steps lie on whole millimetres of a centimetre.
  const cases = graphs.ticks.filter(
    ({ min, max, tickStep }) => min === 0 && max > 0 && Number.isInteger(tickStep * 10),
  );

  it.each(cases)('for 0 to $max has the ticks of d3 to its nice end', (each) => {
    const texts = [String(each.max), '0'];
    const mark = Number.isInteger(each.max * 10) ? '1 mm' : '0.1 mm';
    const table = valuesTable('height', ['cm', mark], '2026-03-02', texts);
    const drawing = drawRight(right('bar-graph', table, 'grade-3'), {
      step: Math.round(each.tickStep * cm),
    });
    const ticks = drawing.side.ticks.map(({ text }) => Number(text));
    expect([ticks[0], ticks.at(-1)]).toEqual(each.nice_d3array);
    expect(ticks.filter((tick) => tick <= each.max)).toEqual(each.ticks);
  });
});

describe('the number line of a line plot', () => {
  // Axes rounded outward to whole steps, kept in tests/reference/graphs.json.
  const axes = graphs['fraction_axis (rule: round outward to whole steps)'];

  it.each(axes)('from $data_min to $data_max by $step has $tick_count ticks', (axis) => {
    const mark = `${axis.step} in` as MarkId;
    const scale = plotScale([inches(axis.data_max), inches(axis.data_min)], mark);
    if (!scale.ok) throw new Error(scale.error.kind);
    const ticks = stepsOf(scale.value);
    expect(ticks).toEqual(axis.ticks.map(inches));
    expect(ticks).toHaveLength(axis.tick_count);
    const table = { form: 'measures', unit: 'in', mark } as const;
    const labels = labelsOf(scale.value, table);
    expect(labels.map((label) => exactOfLabel(label, table))).toEqual(ticks);
  });

  it('writes mixed numbers as a child does', () => {
    const scale = plotScale([inches('3/4'), inches('9/4')], '1/4 in');
    if (!scale.ok) throw new Error(scale.error.kind);
    expect(labelsOf(scale.value, { form: 'measures', unit: 'in', mark: '1/4 in' })).toEqual([
      ...['3/4', '1', '1 1/4', '1 1/2', '1 3/4', '2', '2 1/4'],
    ]);
  });
});

describe('line plots of published measurements', () => {
  // Sepal and petal lengths (Anderson 1935, Fisher 1936; R datasets::iris) taken to the nearest
  // quarter and eighth of an inch and half centimetre, kept in tests/reference/graphs.json.
  const plots = graphs.line_plots.flatMap((plot) =>
    (
      [
        ['in', '1/4 in', plot['nearest_1/4_in']],
        ['in', '1/8 in', plot['nearest_1/8_in']],
        ['cm', '0.5 cm', plot['nearest_1/2_cm']],
      ] as const
    ).map(([unit, mark, { rounded, counts }]) => ({
      ...{ name: `${plot.species} ${plot.column} ${mark}`, unit, mark, rounded, counts },
    })),
  );

  it.each(plots)('of $name pile up as they were counted', ({ unit, mark, rounded, counts }) => {
    const texts = rounded.map((text) =>
      formatExactNumber((inches(text) / inch) * exactPerUnit(unit), unit, mark),
    );
    const graph = right('line-plot', measuresTable('length', [unit, mark], texts), 'grade-3');
    const drawing = drawRight(graph);
    const found = drawing.bottom.ticks.flatMap(({ at, text }) => {
      const count = drawing.crosses.filter((cross) => cross.at === at).length;
      return count > 0 ? [[exactOfLabel(text, graph.table), count]] : [];
    });
    const wanted = Object.entries(counts).map(([text, count]) => [
      (inches(text) / inch) * exactPerUnit(unit),
      count,
    ]);
    expect(found).toEqual(wanted.sort(([one], [other]) => (one as number) - (other as number)));
    expect(drawing.crosses).toHaveLength(rounded.length);
  });
});

describe('the key of a picture graph', () => {
  // Whole pictures and what is left over, kept in tests/reference/graphs.json.
  const cases = [
    ...graphs.picture_graph,
    ...graphs.weather_counts.flatMap((month) => [
      ...[month.picture_graph_key_2, month.picture_graph_key_5],
    ]),
  ];

  it.each(cases)('of $key for $values is right when halves are enough', (each) => {
    const isEven = each.key % 2 === 0;
    expect(keyIsRight(each.values, each.key)).toBe(
      // Half of an odd number of things is no thing: that no case here has.
      each.needs_only_halves && (isEven || each.leftover_fraction.every((part) => part === '0')),
    );
  });

  it.each(cases.filter(({ needs_only_halves }) => needs_only_halves))(
    'of $key for $values is drawn in $whole whole pictures and the halves left over',
    ({ values, key, whole, leftover_fraction }) => {
      const table = countsTable(
        'days',
        Object.fromEntries(values.map((value, index) => [`kind ${index}`, value])),
      );
      // Not every key is the one this stage would begin with.
      const graph = { ...right('bar-graph', table, 'grade-3'), kind: 'picture-graph' } as const;
      const { symbols, places } = drawRight(graph, { keyValue: key });
      const rows = places.map(({ at }) => symbols.filter(({ row }) => row === at));
      expect(rows.map((row) => row.filter(({ part }) => part === 'whole').length)).toEqual(whole);
      expect(rows.map((row) => row.filter(({ part }) => part === 'half').length)).toEqual(
        leftover_fraction.map((part) => (part === '1/2' ? 1 : 0)),
      );
    },
  );

  it('never stands for 5 where a half would be needed', () => {
    expect(keyIsRight([5, 10], 5)).toBe(true);
    expect(keyIsRight([5, 12], 5)).toBe(false);
    expect(keyIsRight([5, 15], 10)).toBe(true);
    expect(keyIsRight([4, 15], 10)).toBe(false);
  });

  it('is 1 in grades 1 and 2, and grows in grade 3 only when rows grow long', () => {
    expect(pictureKey([12, 3], 'grade-2')).toBe(1);
    expect(pictureKey([10, 3], 'grade-3')).toBe(1);
    expect(pictureKey([12, 3], 'grade-3')).toBe(2);
    expect(pictureKey([90, 45], 'grade-3')).toBe(10);
  });
});

describe('a label beside a tick', () => {
  const quarter = { form: 'measures', unit: 'in' } as const;

  it.each([
    ['1 1/2', 1.5],
    ['1½', 1.5],
    ['3/2', 1.5],
    ['0', 0],
    ['2 in', 2],
    ['2.5', 2.5],
  ] as const)('%s of an inch is read', (text, value) => {
    expect(exactOfLabel(text, quarter)).toBe(value * inch);
  });

  it.each(['', 'sun', '1/3', '-1', '2 dogs', '1,5'])('%j is no such number', (text) => {
    expect(exactOfLabel(text, quarter)).toBeNull();
  });

  it('of counts is a whole number', () => {
    expect(exactOfLabel('12', { form: 'counts' })).toBe(12);
    expect(exactOfLabel(' 0 ', { form: 'counts' })).toBe(0);
    for (const text of ['2.5', '1/2', '3 cm', 'six']) {
      expect(exactOfLabel(text, { form: 'counts' })).toBeNull();
    }
  });

  it.each(goldenLogs)('of $name means its place on the scale', ({ name }) => {
    const { scale, table } = goldenRight(name);
    expect(scale.labels.map((label) => exactOfLabel(label, table))).toEqual(stepsOf(scale));
  });
});

describe('the words of a right graph', () => {
  it.each(goldenLogs)('of $name are in small letters, and there', ({ name }) => {
    const { titleWords, sideWords } = goldenRight(name);
    for (const words of [titleWords, sideWords]) {
      expect(words.length).toBeGreaterThan(0);
      expect(words).toEqual(words.map((word) => word.toLowerCase()));
    }
  });

  it('name the unit along the number line of a line plot: five what?', () => {
    expect(goldenRight('ten seedlings in whole inches').sideWords).toEqual(unitWords('in'));
  });

  it('say what was counted, or a kind of it', () => {
    expect(goldenRight('three kinds of weather').titleWords).toEqual([
      ...['days', 'day', 'how many', 'sun', 'cloud', 'rain'],
    ]);
  });
});
