import type { InvestigationId, SpecimenId, WeatherWord } from '#core/journal';
import type { Family } from './sample-family';
import { onDay, said, type StoryWriter } from './story-writer';

/** One morning: the two heights in cm, `-` not up yet, `m` missed, a blank for nothing written. */
const mornings: readonly [day: string, window: string, shelf: string, weather: WeatherWord | ''][] =
  [
    ['2026-03-03', '-', '-', 'cloud'],
    ['2026-03-04', '-', '-', 'rain'],
    ['2026-03-05', '-', '-', 'rain'],
    ['2026-03-06', '-', '-', 'cloud'],
    ['2026-03-09', '-', '-', 'sun'],
    ['2026-03-10', '-', '-', 'sun'],
    ['2026-03-11', '1', '-', 'sun'],
    ['2026-03-12', '2', '-', 'cloud'],
    ['2026-03-13', '3', '1', 'sun'],
    ['2026-03-14', '4', '2', 'sun'],
    ['2026-03-16', '7', '4', 'rain'],
    ['2026-03-17', '9', '6', 'cloud'],
    ['2026-03-18', 'm', 'm', ''],
    ['2026-03-19', '21', '9', 'sun'],
    ['2026-03-20', '14', '11', 'cloud'],
    ['2026-03-21', '15', '12', 'sun'],
    ['2026-03-23', '18', '15', 'sun'],
    ['2026-03-24', '19', '17', 'rain'],
    ['2026-03-25', '20', '', 'cloud'],
    ['2026-03-26', '21', '19', 'sun'],
    ['2026-03-27', '21', '20', 'sun'],
    ['2026-03-30', '22', '22', 'cloud'],
  ];

/** Leaves counted on some mornings, by the window. */
const leavesByDay = new Map([
  ['2026-03-14', 2],
  ['2026-03-19', 4],
  ['2026-03-26', 7],
]);

/** Two beans over four weeks: waiting days, a missed day, a correction, a weekend now and then. */
export function tellSeedlings(story: StoryWriter, { wren, pip, grownUp }: Family): void {
  const investigation = story.id<InvestigationId>('2026-03-02T08:00Z');
  const [window, shelf] = ['08:01', '08:02'].map((time) =>
    story.id<SpecimenId>(`2026-03-02T${time}Z`),
  ) as [SpecimenId, SpecimenId];
  const sown = onDay('2026-03-02');
  story.write('2026-03-02', '08:00', grownUp, {
    kind: 'investigation-begun',
    investigation,
    title: 'Two beans',
    question: 'Does a bean grow taller at the window or on the shelf?',
    quantity: 'plant-height',
    unit: 'cm',
    mark: '1 cm',
    kinds: [],
    weekdays: [1, 2, 3, 4, 5],
    where: 'From the soil to the growing tip, not to the top of the tallest leaf.',
    tool: 'The wooden ruler, standing on the soil, zero end down.',
    when: 'Every school morning, before watering.',
    origin: 'made-up',
  });
  const standHeight = said('11', 'cm', '1 cm');
  story.write('2026-03-02', '08:01', grownUp, {
    ...{ kind: 'specimen-added', specimen: window, investigation, name: 'Window bean' },
    ...{ startedOn: sown, standHeight },
  });
  story.write('2026-03-02', '08:02', grownUp, {
    ...{ kind: 'specimen-added', specimen: shelf, investigation, name: 'Shelf bean' },
    ...{ startedOn: sown, standHeight },
  });
  for (const [text, atWindow, onShelf, weather] of mornings) {
    const day = onDay(text);
    const sky = weather === '' ? {} : { weather };
    for (const [specimen, height, author] of [
      [window, atWindow, wren],
      [shelf, onShelf, pip],
    ] as const) {
      if (height === '') continue;
      if (height === '-' || height === 'm') {
        const state = height === '-' ? 'not-up-yet' : 'missed';
        const why = height === 'm' ? { why: 'We were at the dentist.' } : {};
        story.write(text, '08:10', author, { kind: 'day-marked', specimen, day, state, ...why });
        continue;
      }
      const count = specimen === window ? leavesByDay.get(text) : undefined;
      const reading = story.write(text, '08:10', author, {
        ...{ kind: 'reading-taken', specimen, day, measured: said(height, 'cm', '1 cm') },
        ...sky,
        ...(count === undefined ? {} : { leaves: count }),
      });
      if (height === '21' && text === '2026-03-19') {
        story.write(text, '08:14', author, {
          kind: 'reading-corrected',
          reading,
          to: { day, measured: said('12', 'cm', '1 cm') },
          why: 'The two digits changed places.',
        });
      }
    }
  }
  story.write('2026-03-12', '08:20', wren, {
    ...{ kind: 'note-written', specimen: window, investigation, day: onDay('2026-03-12') },
    text: 'It was bent like a hook. Now it stands up.',
  });
  const day = onDay('2026-03-30');
  for (const specimen of [window, shelf]) {
    story.write('2026-03-30', '15:00', grownUp, {
      ...{ kind: 'specimen-ended', specimen, day, how: 'finished', why: 'Planted out.' },
    });
  }
  story.write('2026-03-30', '15:05', wren, {
    ...{ kind: 'investigation-ended', investigation, day },
    found: 'Our window bean came up first. On the last day our two beans were the same.',
  });
}
