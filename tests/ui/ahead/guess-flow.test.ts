import { expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { seriesOf } from '#core/series';
import { foldEntries } from '#core/journal';
import { ReadingDraft } from '../../../src/lib/ui/entry/reading-draft.svelte';
import { GuessFlow } from '../../../src/lib/ui/ahead/guess-flow.svelte';
import { bean, begun, read } from '../../core/journal/entries';

const today = civilDay('2026-03-13');
const { specimen, investigation } = seriesOf(foldEntries(begun), bean, today)!;
const flowOf = () =>
  new GuessFlow(new ReadingDraft(specimen, investigation, 'grade-2', today), today);

it('a guess goes from day to number to because to seal, and back again', () => {
  const flow = flowOf();
  expect(flow.number.text).toBe('');
  flow.chooseDay(civilDay('2026-03-14'));
  flow.sayNumber();
  expect(flow.step).toBe('number');
  flow.number.text = '14';
  flow.sayNumber();
  expect(flow.step).toBe('because');
  flow.sayBecause();
  expect([flow.step, flow.askedWhy]).toEqual(['because', true]);
  flow.addBeginning('it was warm');
  flow.addBeginning('it grew a lot this week');
  flow.sayBecause();
  expect(flow.step).toBe('seal');
  expect(flow.toEntry()).toEqual({
    ...{ kind: 'prediction-sealed', specimen: bean, day: today, forDay: '2026-03-14' },
    ...{ measured: read(14), because: 'it was warm, it grew a lot this week' },
  });
  flow.goBack();
  flow.goBack();
  flow.goBack();
  flow.goBack();
  expect(flow.step).toBe('day');
});

it('nothing is written while a number is missing, and a because of any length fits the journal', () => {
  const flow = flowOf();
  flow.chooseDay(civilDay('2026-03-14'));
  expect(flow.toEntry()).toBeNull();
  flow.number.text = '14';
  flow.because = 'a'.repeat(2000);
  expect(flow.toEntry()?.because).toHaveLength(500);
});
