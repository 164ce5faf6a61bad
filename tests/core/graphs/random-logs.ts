import fc from 'fast-check';
import { addDays, civilDay } from '#core/calendar';
import { dayStates, weatherWords, type Notebook, type Quantity } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';
import { notebookOf, sibling, type Line } from './small-notebook';

/** The first day of every random log. */
export const randomFirst = civilDay('2026-03-02');
/** Beyond the last day of any random log. */
export const randomToday = addDays(randomFirst, 60);

const rulers: readonly (readonly [Unit, MarkId])[] = [
  ...[['cm', '1 cm'] as const, ['cm', '0.5 cm'] as const, ['mm', '1 mm'] as const],
  ...[['in', '1 in'] as const, ['in', '1/2 in'] as const, ['in', '1/4 in'] as const],
];

/** Numbers that lie on the mark: small ones, and now and then one too large for any paper. */
const numberOn = (mark: MarkId, most: number): fc.Arbitrary<string> =>
  fc
    .oneof(
      { weight: 12, arbitrary: fc.integer({ min: 0, max: most }) },
      { weight: 1, arbitrary: fc.integer({ min: 0, max: most * 10 }) },
    )
    .map((times) => {
      if (mark === '0.5 cm') return String(times / 2);
      if (!mark.startsWith('1/')) return String(times);
      const under = Number(mark.charAt(2));
      return times < under ? `${times}/${under}` : wholeAndPart(times, under);
    });

const wholeAndPart = (times: number, under: number): string =>
  `${Math.floor(times / under)}${times % under ? ` ${times % under}/${under}` : ''}`;

const weather = fc.option(fc.constantFrom(...weatherWords), { nil: undefined });
const clock = fc
  .record({ hour: fc.integer({ min: 8, max: 17 }), late: fc.constantFrom('00', '00', '00', '30') })
  .map(({ hour, late }) => `${String(hour).padStart(2, '0')}:${late}`);

type Content = Omit<Line, 'day'>;

/** Days that follow one another, most of them with one line. */
const someday = (oneLine: fc.Arbitrary<Content>, mostDays: number) =>
  fc
    .array(
      fc.oneof(
        { weight: 12, arbitrary: fc.array(oneLine, { minLength: 1, maxLength: 1 }) },
        { weight: 1, arbitrary: fc.array(oneLine, { minLength: 2, maxLength: 2 }) },
        { weight: 1, arbitrary: fc.constant([]) },
      ),
      { maxLength: mostDays, size: 'max' },
    )
    .map(dated);

/** Many readings of few days, as a shadow or one thing over and over is measured. */
const fewDays = (oneLine: fc.Arbitrary<Content>) =>
  fc.array(fc.array(oneLine, { maxLength: 14 }), { maxLength: 2 }).map(dated);

const dated = (days: readonly (readonly Content[])[]): readonly Line[] =>
  days.flatMap((lines, index) =>
    lines.map((line): Line => ({ day: addDays(randomFirst, index), ...line })),
  );

/** A log without a slip: a number for every day, of a plant never less than the day before. */
const tidyLines = (quantity: Quantity, mostDays: number): fc.Arbitrary<readonly Line[]> =>
  fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: mostDays, size: 'max' }).map((steps) =>
    steps.map((step, index): Line => {
      const grown = steps.slice(0, index + 1).reduce((sum, each) => sum + each, 0);
      const read = String(quantity === 'plant-height' ? grown : step);
      return { day: addDays(randomFirst, index), read };
    }),
  );

const messyLines = (quantity: Quantity, mark: MarkId, mostDays: number) => {
  const isShadow = quantity === 'shadow';
  const numbers = numberOn(mark, isShadow ? 80 : 14);
  const reading = fc.record(
    {
      ...{ read: numbers, weather, time: clock, author: fc.constant(sibling) },
      again: fc.array(numbers, { maxLength: 4 }),
      spanDays: quantity === 'rain' ? fc.constantFrom(1, 1, 1, 1, 1, 2, 3) : fc.constant(1),
    },
    { requiredKeys: isShadow ? ['read', 'time'] : ['read', 'weather'] },
  );
  const inAnother = fc
    .constantFrom('cm', 'in', 'mm', 'ft')
    .chain((unit) => fc.integer({ min: 0, max: 12 }).map((read) => ({ read: `${read}`, unit })));
  const line = fc.oneof(
    { weight: 20, arbitrary: reading },
    { weight: 2, arbitrary: fc.record({ state: fc.constantFrom(...dayStates) }) },
    { weight: 1, arbitrary: inAnother },
  ) as fc.Arbitrary<Content>;
  return isShadow ? fewDays(line) : fc.oneof(someday(line, mostDays), fewDays(line));
};

/** A notebook of one investigation of a quantity, with one to ten logs that may hold anything. */
export const randomNotebook = (quantity: Quantity): fc.Arbitrary<Notebook> =>
  fc
    .record({
      ruler: fc.constantFrom(...rulers),
      kinds: fc.shuffledSubarray(['sun', 'cloud', 'rain', 'snow', 'wind', 'fog'], { minLength: 1 }),
      weekdays: fc.constantFrom([1, 2, 3, 4, 5, 6, 7], [1, 2, 3, 4, 5], []),
      howMany: fc.constantFrom(1, 1, 1, 2, 10),
      isTidy: fc.boolean(),
    })
    .chain(({ ruler, kinds, weekdays, howMany, isTidy }) => {
      const isOfKinds = quantity === 'daily-kind';
      const [unit, mark] = isOfKinds ? (['count', '1'] as const) : ruler;
      const mostDays = howMany > 2 ? 6 : 30;
      const word = fc.constantFrom(...kinds).map((each) => ({ word: each }));
      const numbers =
        isTidy && quantity !== 'shadow'
          ? tidyLines(quantity, mostDays)
          : messyLines(quantity, mark, mostDays);
      const lines: fc.Arbitrary<readonly Line[]> = isOfKinds ? someday(word, mostDays) : numbers;
      return fc.array(lines, { minLength: howMany, maxLength: howMany }).map((logs) =>
        notebookOf(Object.fromEntries(logs.map((each, index) => [`Log ${index + 1}`, each])), {
          ...{ quantity, unit, mark, kinds, weekdays },
        }),
      );
    });
