import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import {
  foldEntries,
  type EntryId,
  type JournalEntry,
  type PersonId,
  type Quantity,
} from '#core/journal';
import { rulerPairs, seriesOf } from '#core/series';
import { newPair, pairAgain } from '../../../src/lib/ui/both-sides/pair-drafts';
import { pairsByAuthor } from '../../../src/lib/ui/both-sides/pairs-by-author';
import { sidesOf } from '../../../src/lib/ui/both-sides/sides-of';
import { readToday } from '../../../src/lib/ui/both-sides/todays-readings';
import { anId, bean, begun, child, read, took, written } from '../../core/journal/entries';

const today = civilDay('2026-03-10');
const brother = anId<PersonId>(702);

function logOf(...entries: readonly JournalEntry[]) {
  const notebook = foldEntries([...begun, ...entries]);
  const series = seriesOf(notebook, bean, today)!;
  return { series, pairs: rulerPairs(notebook, series) };
}

const otherSide = (number: number, of: number, inches: number, author: PersonId | null = child) =>
  written(
    number,
    {
      kind: 'other-side-read',
      reading: anId<EntryId>(of),
      measured: read(inches, 'in', '1 in'),
    },
    { author },
  );

describe('what was read today', () => {
  const of = (author: PersonId | null, ...entries: readonly JournalEntry[]) => {
    const { series, pairs } = logOf(...entries);
    const { pair, alone } = readToday(series, pairs, today, author);
    return [pair?.reading ?? null, alone?.id ?? null];
  };

  it('is nothing before anything was read, whatever was read before today', () => {
    expect(of(child, took(10, '2026-03-09', 13), otherSide(11, 10, 5))).toEqual([null, null]);
  });

  it('is the last pair, and no reading waits then', () => {
    const entries = [took(10, today, 13), otherSide(11, 10, 5), took(12, today, 14)];
    expect(of(child, ...entries)).toEqual([anId(10), null]);
  });

  it('is the last reading without its other side', () => {
    expect(of(child, took(10, today, 13), took(11, today, 14))).toEqual([null, anId(11)]);
  });

  it('leaves to each their own: the brother reads for himself', () => {
    const entries = [took(10, today, 13), otherSide(11, 10, 5)];
    expect(of(brother, ...entries)).toEqual([null, null]);
    expect(of(null, ...entries)).toEqual([anId(10), null]);
  });

  it('takes what nobody signed for anybody’s', () => {
    expect(of(brother, took(10, today, 13, { author: null }))).toEqual([null, anId(10)]);
  });

  it('has no shadow waiting: it has moved on', () => {
    const { series, pairs } = logOf(took(10, today, 13));
    const investigation = { ...series.investigation, quantity: 'shadow' as const };
    expect(readToday({ ...series, investigation }, pairs, today, child).alone).toBeNull();
  });
});

describe('what is written of two numbers', () => {
  const numbers = { own: read(13), other: read(5, 'in', '1 in') };
  const about = { id: anId<EntryId>(10), specimen: bean, day: today, time: null };

  it('is a reading and the other side that names it', () => {
    expect(newPair(numbers, about)).toEqual([
      { id: anId(10), kind: 'reading-taken', specimen: bean, day: today, measured: read(13) },
      { kind: 'other-side-read', reading: anId(10), measured: numbers.other },
    ]);
  });

  it('has the time of a shadow with it', () => {
    const [reading] = newPair(numbers, { ...about, time: '09:30' as never });
    expect(reading).toHaveProperty('time', '09:30');
  });

  const again = (first: number, own: number) =>
    pairAgain(
      { ...numbers, own: read(own) },
      logOf(took(10, today, first)).series.days.at(-1)!.readings[0]!,
    ).map(({ kind }) => kind);

  it('crosses out a number that was read another way the second time', () => {
    expect(again(13, 14)).toEqual(['reading-corrected', 'other-side-read']);
  });

  it('crosses out nothing when the number stayed', () => {
    expect(again(13, 13)).toEqual(['other-side-read']);
  });

  it('read again, folds to one reading with one pair that tells the last numbers', () => {
    const entries = [took(10, today, 13), otherSide(11, 10, 8)];
    const [reading] = logOf(...entries).series.days.at(-1)!.readings;
    const drafts = pairAgain({ own: read(14), other: read(5, 'in', '1 in') }, reading!);
    const after = drafts.map((draft, index) => written(20 + index, draft as never));
    const { series, pairs } = logOf(...entries, ...after);
    expect(series.days.at(-1)!.readings.map(({ counted }) => counted.text)).toEqual(['14']);
    expect(pairs.map(({ metric, customary }) => [metric.text, customary.text])).toEqual([
      ['14', '5'],
    ]);
  });
});

describe('pairs by who read them', () => {
  it('stay in their order, whoever read first comes first, and nobody’s are their own', () => {
    const { pairs } = logOf(
      ...[took(10, '2026-03-03', 3, { author: brother }), otherSide(11, 10, 1, brother)],
      ...[took(12, '2026-03-04', 5), otherSide(13, 12, 2)],
      ...[took(14, '2026-03-05', 5, { author: null }), otherSide(15, 14, 2, null)],
      ...[took(16, '2026-03-06', 8, { author: brother }), otherSide(17, 16, 3, brother)],
    );
    expect(
      pairsByAuthor(pairs).map(({ author, pairs: own }) => [author, own.map((each) => each.day)]),
    ).toEqual([
      [brother, ['2026-03-03', '2026-03-06']],
      [child, ['2026-03-04']],
      [null, ['2026-03-05']],
    ]);
  });
});

describe('the two sides of a ruler', () => {
  it('are the log’s own and one of the other family', () => {
    expect(sidesOf({ quantity: 'plant-height', unit: 'cm', mark: '1 cm' }, 'grade-2')).toEqual({
      own: { unit: 'cm', mark: '1 cm' },
      other: { unit: 'in', mark: '1 in' },
    });
    expect(
      sidesOf({ quantity: 'plant-height', unit: 'in', mark: '1/2 in' }, 'grade-3')?.other.unit,
    ).toBe('cm');
  });

  it.each<Quantity>(['rain', 'daily-kind'])('are not asked for of %s', (quantity) => {
    expect(sidesOf({ quantity, unit: 'cm', mark: '1 cm' }, 'grade-2')).toBeNull();
  });

  it('are not asked for of counts', () => {
    expect(
      sidesOf({ quantity: 'length', unit: 'count', mark: '1' as never }, 'grade-2'),
    ).toBeNull();
  });
});
