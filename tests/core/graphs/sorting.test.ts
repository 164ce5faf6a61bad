import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import {
  isTallyTable,
  keptTally,
  sortCards,
  sortingStep,
  tableChoicesOf,
  tableOf,
  tableOfDrawing,
  tallyTable,
  tallyToSort,
  withoutLastPick,
  withPick,
  type ChildTally,
  type CountTable,
  type SortCard,
  type TableChoice,
} from '#core/graphs';
import type { Notebook } from '#core/journal';
import { sampleChoice, sampleNotebook, sampleToday } from './sample-logs';
import { notebookOf, specimenId, thing, type Line } from './small-notebook';

const march = ['2026-03-02', '2026-03-30'] as const;
const cardsOf = (choice: TableChoice, notebook: Notebook, today: string) => {
  const table = tableOf(choice, notebook, civilDay(today)) as CountTable;
  return { table, cards: sortCards(choice, table, notebook, civilDay(today)) };
};
const inSample = (...how: Parameters<typeof sampleChoice>) =>
  cardsOf(sampleChoice(...how), sampleNotebook, sampleToday);

const smallChoice = (source: TableChoice['source'], more: Partial<TableChoice> = {}) => ({
  ...{ source, investigation: thing, specimens: [specimenId(0)], told: null, mostKinds: null },
  ...{ from: civilDay('2026-03-02'), to: civilDay('2026-03-31') },
  ...more,
});

const countsOf = (cards: readonly SortCard[], { rows }: CountTable) =>
  rows.map(({ label }) => cards.filter(({ kind }) => kind === label).length);

describe('the cards to be sorted', () => {
  it('are there for every table of counts of the made-up notebook, and add up to it', () => {
    let tables = 0;
    for (const investigation of sampleNotebook.investigations.keys()) {
      for (const { form, variants } of tableChoicesOf(
        sampleNotebook,
        { investigation },
        'grade-2',
        sampleToday,
      )) {
        if (form !== 'counts') continue;
        for (const { choice } of variants) {
          const { table, cards } = cardsOf(choice, sampleNotebook, sampleToday);
          expect(countsOf(cards, table)).toEqual(table.rows.map(({ count }) => count));
          tables += 1;
        }
      }
    }
    expect(tables).toBeGreaterThan(5);
  });

  it('show the height of the day before and of the day, as they were read', () => {
    // By hand from the story of the bean: 9 cm on the 17th, none on the 18th, 12 cm on the 19th,
    // 14 cm on the 20th; 21 cm on the 26th and on the 27th.
    const { cards } = inSample('growth-days', ['Window bean'], march);
    expect(cards.map(({ day }) => day)).not.toContain('2026-03-19');
    expect(cards.find(({ day }) => day === '2026-03-20')).toEqual({
      ...{ thing: '2026-03-20', day: '2026-03-20', label: 'Fri 20 Mar', kind: 'grew' },
      says: '12 cm, then 14 cm',
      strips: [
        { label: 'Thu 19 Mar', says: '12 cm', share: 12 / 14 },
        { label: 'Fri 20 Mar', says: '14 cm', share: 1 },
      ],
    });
    expect(cards.find(({ day }) => day === '2026-03-27')).toMatchObject({
      says: '21 cm, then 21 cm',
      kind: 'did not grow',
    });
  });

  it('tell a stem that got shorter', () => {
    const lines = [
      { day: '2026-03-10', read: '6' },
      { day: '2026-03-11', read: '5' },
    ];
    const choice = smallChoice('growth-days');
    const { cards } = cardsOf(choice, notebookOf({ Bean: lines }), '2026-03-31');
    expect(cards).toMatchObject([
      { kind: 'got shorter', strips: [{ share: 1 }, { share: 5 / 6 }] },
    ]);
  });

  it('say the rain of a day and leave it to the child whether that is wet', () => {
    const lines: Line[] = [
      { day: '2026-03-10', read: '0' },
      { day: '2026-03-11', read: '3' },
      { day: '2026-03-11', read: '4', time: '18:00' },
      { day: '2026-03-12', state: 'trace' },
      { day: '2026-03-14', read: '5', spanDays: 2 },
    ];
    const plan = { quantity: 'rain', unit: 'mm', mark: '1 mm' } as const;
    const { cards } = cardsOf(
      smallChoice('wet-days'),
      notebookOf({ Gauge: lines }, plan),
      '2026-03-31',
    );
    expect(cards.map(({ says, kind }) => [says, kind])).toEqual([
      ...[['0 mm', 'dry'] as const, ['7 mm', 'wet'] as const, ['a trace', 'a trace'] as const],
    ]);
  });

  it('are one for each reading where readings are counted, each with its name', () => {
    const lines = [
      { day: '2026-03-10', read: '6' },
      { day: '2026-03-10', read: '6', time: '09:00' },
    ];
    const notebook = notebookOf({ Bean: lines, Pea: [{ day: '2026-03-10', read: '4' }] });
    const choice = smallChoice('specimen-readings', { specimens: [specimenId(0), specimenId(1)] });
    const { cards } = cardsOf(choice, notebook, '2026-03-31');
    expect(cards.map(({ says, kind }) => [says, kind])).toEqual([
      ...[['Bean: 6 cm', 'Bean'] as const, ['Bean: 6 cm', 'Bean'] as const],
      ['Pea: 4 cm', 'Pea'],
    ]);
    expect(new Set(cards.map((card) => card.thing)).size).toBe(3);
  });

  it('are one for a day with two of the kinds that are put together, and it says both', () => {
    const birds = ['wren', 'wren', 'crow', 'crow', 'owl', 'jay'];
    const lines = birds.map((word, index) => ({ day: `2026-03-1${index}`, word }));
    const both = [...lines, { day: '2026-03-15', word: 'owl' }];
    const notebook = notebookOf(
      { Window: both },
      { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: [] },
    );
    const { table, cards } = cardsOf(
      smallChoice('kind-days', { mostKinds: 3 }),
      notebook,
      '2026-03-31',
    );
    expect(table.rows.map(({ label, count }) => [label, count])).toEqual([
      ...[['wren', 2] as const, ['crow', 2] as const, ['other', 2] as const],
    ]);
    expect(cards.at(-1)).toMatchObject({ says: 'jay, owl', kind: 'other' });
    expect(countsOf(cards, table)).toEqual([2, 2, 2]);
  });
});

const { table: weather, cards: sky } = inSample(
  'weather-days',
  ['Window bean', 'Shelf bean'],
  march,
);
const kinds = weather.rows.map(({ label }) => label);
const sortAll = (kindOf: (card: SortCard, index: number) => string): ChildTally =>
  sky.reduce(
    (tally, card, index) => withPick(tally, index, kindOf(card, index)),
    tallyToSort(sky, kinds, null),
  );

describe('sorting', () => {
  it('asks for each card in turn, and is done when the tally says what the log says', () => {
    const tally = sortAll((card) => card.kind);
    expect(sortingStep(tallyToSort(sky, kinds, null), sky)).toEqual({ kind: 'sort', index: 0 });
    expect(sortingStep(tally, sky)).toEqual({ kind: 'done', keptOwn: 0 });
    // 8 days of sun, 5 of cloud, 2 of rain: counted by hand from the story.
    expect(tallyTable(tally, 'days').rows.map(({ count }) => count)).toEqual([8, 5, 2]);
  });

  it('asks once to look again at what differs, and then lets the child keep its own', () => {
    const wrongAt = [2, 6];
    const other = (card: SortCard) => kinds.find((kind) => kind !== card.kind)!;
    const tally = sortAll((card, index) => (wrongAt.includes(index) ? other(card) : card.kind));
    expect(sortingStep(tally, sky)).toEqual({ kind: 'look-again', index: 2 });
    const keptMine = withPick(tally, 2, tally.cards[2]!.picks[0]!);
    expect(sortingStep(keptMine, sky)).toEqual({ kind: 'look-again', index: 6 });
    const mended = withPick(keptMine, 6, sky[6]!.kind);
    expect(sortingStep(mended, sky)).toEqual({ kind: 'done', keptOwn: 1 });
    // The second look is taken back first, also where it had mended the day.
    const back = withoutLastPick(mended);
    expect(sortingStep(back, sky)).toEqual({ kind: 'look-again', index: 6 });
    expect(sortingStep(withoutLastPick(withoutLastPick(back)), sky)).toEqual({
      ...{ kind: 'sort', index: sky.length - 1 },
    });
  });

  it('counts every card once, wherever it was put, and goes all the way back', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(kinds.length - 1), { maxLength: 40 }), (picks) => {
        let tally = tallyToSort(sky, kinds, null);
        let done = 0;
        for (const pick of picks) {
          const step = sortingStep(tally, sky);
          if (step.kind === 'done') break;
          tally = withPick(tally, step.index, kinds[pick]!);
          done += 1;
        }
        const sorted = Math.min(done, sky.length);
        const sum = tallyTable(tally, 'days').rows.reduce((all, { count }) => all + count, 0);
        expect(sum).toBe(sorted);
        for (let back = 0; back < done; back += 1) tally = withoutLastPick(tally);
        expect(tally).toEqual(tallyToSort(sky, kinds, null));
      }),
      { seed: 7 },
    );
  });

  it('goes on with what was sorted where the log still says the same', () => {
    const half = withPick(withPick(tallyToSort(sky, kinds, null), 0, kinds[0]!), 1, kinds[1]!);
    const changed = sky.map((card, index) => (index === 1 ? { ...card, says: 'snow' } : card));
    const again = tallyToSort(changed, kinds, half);
    expect(again.cards.slice(0, 3).map(({ picks }) => picks)).toEqual([[kinds[0]], [], []]);
    expect(tallyToSort(sky, ['sun'], half).cards[1]!.picks).toEqual(
      kinds[1] === 'sun' ? ['sun'] : [],
    );
  });
});

describe('the tally kept with a drawing', () => {
  const choice = { ...sampleChoice('weather-days', ['Window bean', 'Shelf bean'], march) };
  const version = (paper: Record<string, unknown>) => ({ at: 'x' as never, paper, ticked: [] });
  const made = (...papers: Record<string, unknown>[]) => {
    const record = { choice, versions: papers.map(version) };
    const result = tableOfDrawing(record, sampleNotebook, sampleToday);
    if (!result.ok) throw new Error(result.error.kind);
    return result.value;
  };
  const mine = (tally: ChildTally): ChildTally => ({ ...tally, use: 'mine' });
  const asKept = (data: unknown): unknown => JSON.parse(JSON.stringify(data));

  it('is what the board draws from, with the days that stand elsewhere in the log', () => {
    const tally = mine(sortAll((card, index) => (index === 0 ? 'rain' : card.kind)));
    expect(sky[0]).toMatchObject({ says: 'sun', label: 'Wed 11 Mar' });
    const { table, inLog, otherwise, sorting } = made({ tally: asKept(tally) }, { kind: 'later' });
    expect(isTallyTable(table)).toBe(true);
    expect((table as CountTable).rows.map(({ count }) => count)).toEqual([7, 5, 3]);
    expect((inLog as CountTable).rows.map(({ count }) => count)).toEqual([8, 5, 2]);
    expect(otherwise).toEqual([{ label: 'Wed 11 Mar', says: 'sun', sorted: 'rain', inLog: 'sun' }]);
    expect(sorting).toBeNull();
  });

  it('stays as it was sorted when the log is corrected later, and the day is told', () => {
    const before = mine(sortAll((card) => card.kind));
    const other = { ...before.cards[3]!, says: 'fog', picks: [kinds[1]!] };
    const tally = { ...before, cards: before.cards.with(3, other) };
    expect(made({ tally }).otherwise).toMatchObject([{ says: 'fog', inLog: null }]);
  });

  it('is gone on with where it was left half done', () => {
    const half = withPick(tallyToSort(sky, kinds, null), 0, kinds[0]!);
    const { sorting, table, inLog } = made({ tally: asKept(half) });
    expect(sorting).toEqual({ cards: sky, tally: half });
    expect(table).toEqual(inLog);
  });

  it('gives way to the log’s table where there is none, or it was put aside', () => {
    const whole = sortAll(() => 'sun');
    for (const { table, isTallyLost, sorting } of [
      made(),
      made({ tally: { ...whole, use: 'log' } }),
    ]) {
      expect((table as CountTable).rows.map(({ count }) => count)).toEqual([8, 5, 2]);
      expect([isTallyLost, sorting]).toEqual([false, null]);
    }
  });

  const whole = mine(sortAll((card) => card.kind));
  it.each([
    ['', 'four and a bit'],
    ['kinds', { ...whole, kinds: [] }],
    ['use', { ...whole, use: 'sold' }],
    ['cards', { ...whole, cards: {} }],
    ['cards.0.day', { ...whole, cards: [{ ...whole.cards[0], day: '2026-02-30' }] }],
    ['cards.0.picks', { ...whole, cards: [{ ...whole.cards[0], picks: ['hail'] }] }],
    ['cards.0.picks', { ...whole, cards: [{ ...whole.cards[0], picks: ['sun', 'sun', 'sun'] }] }],
    ['use', { ...whole, cards: [{ ...whole.cards[0], picks: [] }] }],
  ] as const)('with a wrong %s is not read, and the log’s table stands', (part, tally) => {
    expect(keptTally([{ paper: { tally } }])).toEqual({
      ok: false,
      error: { kind: 'not-a-tally', part },
    });
    const { table, inLog, isTallyLost } = made({ tally });
    expect([table, isTallyLost]).toEqual([inLog, true]);
  });

  it('is read also with parts of a later program, and the last one counts', () => {
    const kept = keptTally([
      { paper: { tally: 7 } },
      { paper: { tally: { ...whole, colour: 2 } } },
      { paper: { kind: 'bar-graph' } },
    ]);
    expect(kept).toEqual({ ok: true, value: whole });
  });
});
