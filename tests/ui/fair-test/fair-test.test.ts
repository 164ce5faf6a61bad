import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { largestLead, leadTable } from '#core/growth';
import { foldEntries, type EntryId, type SpecimenId } from '#core/journal';
import { seriesOf } from '#core/series';
import { talkWords } from '../../../src/lib/ui/fair-test/fair-test-words';
import { largestLeadWords, leaderWords } from '../../../src/lib/ui/fair-test/lead-words';
import { looksByDay } from '../../../src/lib/ui/fair-test/looks-by-day';
import { PlanDraft } from '../../../src/lib/ui/fair-test/plan-draft.svelte';
import { anId, bean, begun, heights, read, takenBack, written } from '../../core/journal/entries';

const beanB = anId<SpecimenId>(902);
const today = civilDay('2026-03-13');
const took = (number: number, specimen: SpecimenId, day: string, value: number, leaves?: number) =>
  written(number, {
    ...{ kind: 'reading-taken', specimen, day: civilDay(day), measured: read(value) },
    ...(leaves === undefined ? {} : { leaves }),
  });
const looked = (number: number, look: object) =>
  written(number, {
    ...{ kind: 'looks-noted', specimen: bean, day: civilDay('2026-03-10') },
    ...look,
  });
const notebook = foldEntries([
  ...begun,
  written(5, {
    ...{ kind: 'specimen-added', specimen: beanB, investigation: heights, name: 'Bean B' },
    startedOn: civilDay('2026-03-02'),
  }),
  took(6, bean, '2026-03-09', 3, 2),
  took(7, beanB, '2026-03-09', 5),
  took(8, bean, '2026-03-10', 4),
  took(9, beanB, '2026-03-10', 6),
  took(10, bean, '2026-03-11', 6),
  took(11, beanB, '2026-03-11', 6),
  looked(12, { colour: 'pale-green' }),
  looked(13, { colour: 'green', stands: 'leans' }),
  looked(14, { stands: 'lies-down' }),
  takenBack(15, 14),
]);
const [a, b] = [seriesOf(notebook, bean, today)!, seriesOf(notebook, beanB, today)!];

describe('a plan', () => {
  it('needs its one difference, and its words where it is something else', () => {
    const draft = new PlanDraft(heights, null);
    expect([draft.toEntry(), draft.missing]).toEqual([null, 'different']);
    draft.choose('something-else');
    expect([draft.toEntry(), draft.missing]).toEqual([null, 'own-words']);
    draft.ownWords = '  music  ';
    expect(draft.toEntry()).toEqual({
      ...{ kind: 'fair-test-planned', investigation: heights, different: 'music' },
      ...{ same: [], second: [] },
    });
  });

  it('of light looks at more than height from the start, and at one thing at least', () => {
    const draft = new PlanDraft(heights, null);
    draft.choose('light');
    expect(draft.second).toEqual(['leaves', 'colour', 'stands']);
    draft.second = [];
    expect([draft.toEntry(), draft.missing]).toEqual([null, 'second']);
  });

  it('never names its one difference among what is the same', () => {
    const draft = new PlanDraft(heights, null);
    draft.same = ['seed', 'water', 'pot'];
    draft.choose('water');
    expect(draft.toEntry()?.same).toEqual(['seed', 'pot']);
    expect(draft.unticked).toEqual(['soil', 'depth', 'light', 'place']);
  });

  it('is taken up again as it was written', () => {
    const draft = new PlanDraft(heights, {
      ...{ id: anId<EntryId>(1), at: begun[0]!.at, author: null, different: 'music' },
      ...{ same: ['seed', 'window'], second: ['colour'], expect: 'It dances.' },
    });
    expect(draft.toEntry()).toMatchObject({
      ...{ different: 'music', same: ['seed'], second: ['colour'], expect: 'It dances.' },
    });
  });
});

describe('two plants side by side', () => {
  it('have looks by day, the last word counting and what was taken back left out', () => {
    const days = looksByDay(notebook, [a, b]).map(({ day, bySpecimen }) => [
      day,
      bySpecimen.get(bean),
      bySpecimen.get(beanB),
    ]);
    expect(days).toEqual([
      ['2026-03-09', { leaves: 2, colour: null, stands: null }, undefined],
      ['2026-03-10', { leaves: null, colour: 'green', stands: 'leans' }, undefined],
    ]);
  });

  it('have a leader each day, and days that tie for the largest lead are all named', () => {
    const rows = leadTable(a, b);
    expect(rows.map((row) => leaderWords(row, 'Bean A', 'Bean B'))).toEqual([
      ...['Bean B by 2 cm', 'Bean B by 2 cm', 'the same'],
    ]);
    expect(largestLeadWords(largestLead(rows))).toBe(
      'The lead was largest on Mon 9 Mar and Tue 10 Mar: 2 cm.',
    );
    expect(largestLeadWords([])).toBe('');
  });

  it('are talked about in order, and as no more than themselves', () => {
    const talk = talkWords({ pots: 2, day: today, severalDays: true });
    expect(talk[0]).toMatch(/^Tell about one plant/);
    expect(talk.at(-1)).toBe('Our two pots tell about our two pots.');
    expect(talk.join(' ')).not.toMatch(/prove|always|significan/i);
  });
});
