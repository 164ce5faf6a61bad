import { parseClockTime } from '#core/calendar';
import type { InvestigationId, SpecimenId } from '#core/journal';
import type { Family } from './sample-family';
import { onDay, said, type StoryWriter } from './story-writer';

/** One sunny day, a cloud at three: the time and the shadow in centimetres. */
const hours: readonly [time: string, shadow: string][] = [
  ['09:00', '168'],
  ['10:00', '112'],
  ['11:00', '79'],
  ['12:00', '60'],
  ['13:00', '54'],
  ['14:00', '60'],
  ['16:00', '113'],
];

/** A stick of one metre and its shadow through a day. */
export function tellShadow(story: StoryWriter, { pip, wren, grownUp }: Family): void {
  const text = '2026-04-24';
  const day = onDay(text);
  const investigation = story.id<InvestigationId>(`${text}T08:00Z`);
  const stick = story.id<SpecimenId>(`${text}T08:01Z`);
  story.write(text, '08:30', grownUp, {
    kind: 'investigation-begun',
    investigation,
    title: 'A shadow day',
    question: 'When is the shadow of our stick shortest?',
    quantity: 'shadow',
    unit: 'cm',
    mark: '1 cm',
    kinds: [],
    weekdays: [5],
    where: 'From the foot of the stick to the middle of the fuzzy tip of its shadow.',
    tool: 'A stone to mark the tip, then the tape.',
    when: 'Every hour while the sun shines.',
    origin: 'made-up',
  });
  story.write(text, '08:31', grownUp, {
    ...{ kind: 'specimen-added', specimen: stick, investigation, name: 'Yard stick' },
    ...{ startedOn: day, standHeight: said('100', 'cm', '1 cm') },
  });
  for (const [clock, shadow] of hours) {
    const time = parseClockTime(clock);
    if (!time.ok) throw new Error(`The story has a time that cannot be read: ${clock}`);
    story.write(text, clock, clock < '12:30' ? wren : pip, {
      ...{ kind: 'reading-taken', specimen: stick, day, time: time.value },
      measured: said(shadow, 'cm', '1 cm'),
    });
  }
  story.write(text, '15:05', pip, {
    ...{ kind: 'note-written', specimen: stick, investigation, day },
    text: 'At three a cloud came. There was no shadow.',
  });
  story.write(text, '17:00', wren, {
    ...{ kind: 'investigation-ended', investigation, day },
    found: 'The shadow was long, then short, then long. It was shortest at one.',
  });
}
