import { addDays } from '#core/calendar';
import type { InvestigationId, SpecimenId } from '#core/journal';
import type { Family } from './sample-family';
import { onDay, said, type StoryWriter } from './story-writer';

/**
 * A month of mornings at the gauge, in millimetres: `T` a trace, `m` missed, `8/2` eight
 * millimetres gathered over two days.
 */
const april = '0 0 3 T 0 0 12 5 0 0 0 m 8/2 0 1 T 0 0 0 21 6 0 0 2 0 0 T 0 4 0'.split(' ');

/** Mornings with a little water after a dry sky: dew, or the neighbour's sprinkler. */
const underDrySky: readonly number[] = [14, 23];

/** Rain over a month: dry days that are 0, traces, and a total of two days. */
export function tellRain(story: StoryWriter, { wren, grownUp }: Family): void {
  const investigation = story.id<InvestigationId>('2026-04-01T07:00Z');
  const gauge = story.id<SpecimenId>('2026-04-01T07:01Z');
  const first = onDay('2026-04-01');
  story.write('2026-04-01', '07:00', grownUp, {
    kind: 'investigation-begun',
    investigation,
    title: 'April rain',
    question: 'How much rain falls in our yard in April?',
    quantity: 'rain',
    unit: 'mm',
    mark: '1 mm',
    kinds: [],
    weekdays: [1, 2, 3, 4, 5, 6, 7],
    where: 'From the flat bottom of the gauge to the top of the water.',
    tool: 'A straight clear plastic cup and the short ruler.',
    when: 'Every morning at eight; then we empty it.',
    origin: 'made-up',
  });
  story.write('2026-04-01', '07:01', grownUp, {
    ...{ kind: 'specimen-added', specimen: gauge, investigation, name: 'Yard gauge' },
    startedOn: first,
  });
  april.forEach((mark, index) => {
    const day = addDays(first, index);
    const at = [day, '08:00', wren] as const;
    const marked = { kind: 'day-marked', specimen: gauge, day } as const;
    if (mark === 'T') story.write(...at, { ...marked, state: 'trace' });
    else if (mark === 'm')
      story.write(...at, { ...marked, state: 'missed', why: 'We slept late.' });
    else {
      const [amount = '', days = '1'] = mark.split('/');
      story.write(...at, {
        kind: 'reading-taken',
        specimen: gauge,
        day,
        measured: said(amount, 'mm', '1 mm'),
        ...(days === '1' ? {} : { spanDays: Number(days) }),
        weather: skyOf(amount, index),
      });
    }
  });
  story.write('2026-04-30', '16:00', wren, {
    ...{ kind: 'investigation-ended', investigation, day: onDay('2026-04-30') },
    found: 'Most mornings the gauge was dry. One morning had the most: 21 mm.',
  });
}

const skyOf = (amount: string, index: number): 'sun' | 'cloud' | 'rain' => {
  if (underDrySky.includes(index)) return 'sun';
  if (amount !== '0') return 'rain';
  return index % 3 === 0 ? 'cloud' : 'sun';
};
