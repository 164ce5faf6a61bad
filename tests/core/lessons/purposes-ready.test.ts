import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { foldEntries, type JournalEntry, type Stage } from '#core/journal';
import { lessonPurposes, purposesReady, type PurposeId } from '#core/lessons';
import { entriesUntil, sampleEntries } from './made-lessons';

const beans = [...foldEntries(sampleEntries).investigations.values()].find(
  ({ quantity }) => quantity === 'plant-height',
)!.id;
const offerOf = (
  purpose: PurposeId,
  entries: readonly JournalEntry[],
  day: string,
  stage: Stage = 'grade-2',
) =>
  purposesReady(foldEntries(entries), { investigation: beans }, stage, civilDay(day)).find(
    (offer) => offer.purpose.id === purpose,
  );
const without = (...kinds: readonly string[]) =>
  sampleEntries.filter(({ kind }) => !kinds.includes(kind));
const end = '2026-05-01';

describe('what a lesson is for', () => {
  it('is offered with the codes of what it serves beside its drawing', () => {
    const codes = (purpose: PurposeId) => offerOf(purpose, sampleEntries, end)?.standards;
    // Common Core 2.MD and NGSS 2-LS2-1; wording of 2.MD.D and 2-LS2-1 checked, the rest from memory.
    expect(codes('how-much-taller')).toEqual(['2.MD.A.4', '2.MD.B.5', '2.MD.B.6']);
    expect(codes('two-units-of-one-thing')).toContain('2.MD.A.2');
    expect(codes('guess-before-measuring')).toContain('2.MD.A.3');
    expect(codes('fair-test-of-two')).toContain('2-LS2-1');
    expect(codes('line-plot-of-one-thing')).toEqual(['2.MD.D.9', '2.MD.A.1']);
    expect(offerOf('value-bars', sampleEntries, end, 'grade-1')?.standards).toEqual([
      '1.MD.A.1',
      '1.MD.A.2',
    ]);
  });

  it('is ready of the whole sample, for the purposes that need more than a graph', () => {
    for (const { id, needs } of lessonPurposes) {
      if (needs) expect(offerOf(id, sampleEntries, end)?.missing).toEqual([]);
    }
  });

  it('says that readings on both sides of the ruler are missing', () => {
    expect(offerOf('two-units-of-one-thing', without('other-side-read'), end)?.missing).toEqual([
      { kind: 'more-pairs', have: 0, need: 2 },
    ]);
  });

  it('says that guesses are missing', () => {
    expect(offerOf('guess-before-measuring', without('estimate-made'), end)?.missing).toEqual([
      { kind: 'more-guesses', have: 0, need: 3 },
    ]);
    // On 12 March two heights had been guessed and measured, and too few were there to draw.
    const early = offerOf('guess-before-measuring', entriesUntil('2026-03-12'), '2026-03-12');
    expect(early?.missing).toContainEqual({ kind: 'more-guesses', have: 2, need: 3 });
    expect(early?.missing).toContainEqual({ kind: 'more-needed', have: 2, need: 4 });
  });

  it('says that nobody planned a fair test, or that there is one log only', () => {
    expect(offerOf('fair-test-of-two', without('fair-test-planned'), end)?.missing).toEqual([
      { kind: 'no-fair-test' },
    ]);
    const shelf = [...foldEntries(sampleEntries).specimens.values()].find(
      ({ name }) => name === 'Shelf bean',
    )!.id;
    const one = sampleEntries.filter((entry) => !JSON.stringify(entry).includes(shelf));
    expect(offerOf('fair-test-of-two', one, end)?.missing).toContainEqual({ kind: 'one-log' });
  });

  it('says that nothing grew', () => {
    const flat = sampleEntries.map((entry) =>
      entry.kind === 'reading-taken' || entry.kind === 'reading-corrected'
        ? (JSON.parse(
            JSON.stringify(entry).replace(
              /"measured":\{[^}]*\}/g,
              '"measured":{"text":"5","unit":"cm","mark":"1 cm","exact":50000000}',
            ),
          ) as JournalEntry)
        : entry,
    );
    expect(offerOf('how-much-taller', flat, end)?.missing).toEqual([{ kind: 'no-growth' }]);
  });

  it('takes days without an open doubt where counts hang on numbers, or says so', () => {
    // On 24 April the sample has rain on a day without a cloud, and nobody settled it yet.
    const sample = foldEntries(sampleEntries);
    const rain = [...sample.investigations.values()].find(({ quantity }) => quantity === 'rain')!;
    const tablesOn = (day: string) =>
      purposesReady(sample, { investigation: rain.id }, 'grade-2', civilDay(day)).flatMap(
        ({ otherTables, ...best }) => [best, ...otherTables],
      );
    const wet = tablesOn(end).filter(({ choice }) => choice.source === 'wet-days');
    expect(wet.length).toBeGreaterThan(0);
    for (const { choice, missing } of wet) {
      const isDoubted = missing.some(({ kind }) => kind === 'open-doubts');
      expect(choice.to < civilDay('2026-04-24') || isDoubted).toBe(true);
    }
  });

  it('is never for grade 1 where its standard is of grade 2', () => {
    for (const { needs, stages } of lessonPurposes) {
      if (needs) expect(stages).not.toContain('grade-1');
    }
  });

  it('offers the best table first and those from elsewhere beside it', () => {
    const offer = offerOf('picture-graph-of-kinds', sampleEntries, end)!;
    const sources = [offer, ...offer.otherTables].map(({ choice }) => choice.source);
    expect(sources).toContain('weather-days');
    expect(sources).toContain('growth-days');
    expect(new Set(sources).size).toBe(sources.length);
  });
});
