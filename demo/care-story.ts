import { foldEntries, type JournalEntry, type Reading, type SpecimenId } from '#core/journal';
import type { Family } from './sample-family';
import { onDay, said, StoryWriter } from './story-writer';

/** What Wren guessed for the window bean before measuring, in cm: far off at first, closer later. */
const guesses: readonly [day: string, guess: string][] = [
  ['2026-03-11', '3'],
  ['2026-03-12', '4'],
  ['2026-03-13', '5'],
  ['2026-03-14', '7'],
  ['2026-03-16', '10'],
  ['2026-03-17', '7'],
  ['2026-03-20', '12'],
  ['2026-03-23', '17'],
  ['2026-03-24', '19'],
  ['2026-03-26', '20'],
  ['2026-03-27', '22'],
  ['2026-03-30', '22'],
];

/** The other side of the ruler for the window bean, in whole inches. */
const otherSides: readonly [day: string, inches: string][] = [
  ['2026-03-13', '1'],
  ['2026-03-17', '4'],
  ['2026-03-20', '6'],
  ['2026-03-24', '7'],
  ['2026-03-27', '8'],
];

/** How the two beans looked: the taller one may not be the healthier. */
const looks = [
  ['2026-03-14', 'green', 'by-itself', 'pale-green', 'leans'],
  ['2026-03-20', 'green', 'by-itself', 'pale-green', 'leans'],
  ['2026-03-30', 'dark-green', 'by-itself', 'yellow', 'lies-down'],
] as const;

/**
 * How the family measured the two beans with care: a plan, guesses, both sides of the ruler,
 * looks, a sealed guess for the next day, one day measured by
 * all three, and a doubt about the rain gauge that was answered (another is still open). Written by a writer of
 * its own, so that the stories before it stay as they are.
 */
export function careEntries(
  told: readonly JournalEntry[],
  { wren, pip, grownUp }: Family,
): readonly JournalEntry[] {
  const story = new StoryWriter(20260303);
  const { specimens, logBySpecimen, investigations } = foldEntries(told);
  const [investigation] = investigations.keys();
  const [window, shelf, gauge] = specimens.keys();
  if (!investigation || !window || !shelf || !gauge)
    throw new Error('The beans and the gauge come first');
  const readingOn = (specimen: SpecimenId, day: string): Reading => {
    const found = logBySpecimen.get(specimen)?.readings.find((each) => each.day === onDay(day));
    if (!found) throw new Error(`The story has no reading on ${day}`);
    return found;
  };

  story.write('2026-03-02', '08:05', grownUp, {
    ...{ kind: 'fair-test-planned', investigation, different: 'light' },
    ...{ same: ['seed', 'pot', 'soil', 'depth', 'water'], second: ['leaves', 'colour', 'stands'] },
    expect: 'The window bean gets taller. It has more light.',
  });
  story.write('2026-03-02', '08:06', grownUp, {
    ...{ kind: 'ruler-checked', day: onDay('2026-03-02'), zeroAtEdge: true },
  });
  for (const [person, helper, length] of [
    [wren, 'little-finger', '1'],
    [wren, 'hand-span', '13'],
    [wren, 'foot', '20'],
    [pip, 'little-finger', '1'],
    [pip, 'hand-span', '12'],
  ] as const) {
    story.write('2026-03-02', '08:07', person, {
      ...{ kind: 'helper-length-measured', person, helper },
      measured: said(length, 'cm', '1 cm'),
    });
  }
  const days = [...new Set([...guesses, ...otherSides, ...looks].map(([day]) => day))].sort();
  for (const text of days) {
    const day = onDay(text);
    for (const [, guess] of guesses.filter(([on]) => on === text)) {
      story.write(text, '08:05', wren, {
        ...{ kind: 'estimate-made', specimen: window, day, measured: said(guess, 'cm', '1 cm') },
        ...(Number(guess) > 9 ? { helper: 'hand-span' } : { helper: 'little-finger' }),
      });
    }
    for (const [, inches] of otherSides.filter(([on]) => on === text)) {
      story.write(text, '08:16', wren, {
        ...{ kind: 'other-side-read', reading: readingOn(window, text).id },
        measured: said(inches, 'in', '1 in'),
      });
    }
    for (const [, colour, stands, onShelf, leans] of looks.filter(([on]) => on === text)) {
      const noted = { kind: 'looks-noted', day } as const;
      story.write(text, '08:17', wren, { ...noted, specimen: window, colour, stands });
      story.write(text, '08:18', pip, {
        ...{ ...noted, specimen: shelf, colour: onShelf, stands: leans },
      });
    }
    if (text === '2026-03-20') {
      story.write(text, '08:20', grownUp, {
        ...{ kind: 'difference-noticed', investigation, specimen: shelf, day },
        what: 'The shelf bean got two spoons of water, not one.',
      });
    }
    if (text === '2026-03-26') {
      story.write(text, '08:20', wren, {
        ...{ kind: 'prediction-sealed', specimen: window, day, forDay: onDay('2026-03-27') },
        ...{ measured: said('22', 'cm', '1 cm'), because: 'It grew 1 cm since last time.' },
      });
    }
    if (text === '2026-03-30') {
      for (const [author, height] of [
        [pip, '22'],
        [grownUp, '23'],
      ] as const) {
        story.write(text, '08:11', author, {
          ...{ kind: 'reading-taken', specimen: window, day },
          measured: said(height, 'cm', '1 cm'),
        });
      }
    }
  }
  const dew = '2026-04-15';
  story.write(dew, '08:02', wren, {
    ...{ kind: 'doubt-answered', reading: readingOn(gauge, dew).id },
    ...{ doubt: 'rain-though-dry', answer: 'read-so' },
  });
  return story.entries;
}
