import type { JournalEntry, PersonId } from '#core/journal';
import { careEntries } from './care-story';
import { tellRain } from './rain-story';
import { tellSeedlings } from './seedling-story';
import { tellShadow } from './shadow-story';
import { StoryWriter } from './story-writer';
import { teachingEntries } from './teaching-story';

/** The people of the made-up family, as the stories call them. */
export interface Family {
  readonly wren: PersonId;
  readonly pip: PersonId;
  readonly grownUp: PersonId;
}

/**
 * The made-up notebook: an invented family with three finished investigations. Every number in it
 * is invented; nothing was measured.
 */
export function sampleJournal(): readonly JournalEntry[] {
  const story = new StoryWriter();
  const began = '2026-03-01';
  story.write(began, '16:00', null, { kind: 'notebook-begun', title: 'A made-up notebook' });
  const family: Family = {
    wren: story.id<PersonId>(`${began}T16:01Z`),
    pip: story.id<PersonId>(`${began}T16:02Z`),
    grownUp: story.id<PersonId>(`${began}T16:03Z`),
  };
  const people = [
    {
      person: family.wren,
      name: 'Wren',
      shape: 'feather',
      role: 'child',
      stage: 'grade-2',
      hand: 'right',
    },
    {
      person: family.pip,
      name: 'Pip',
      shape: 'snail',
      role: 'child',
      stage: 'grade-1',
      hand: 'left',
    },
    {
      person: family.grownUp,
      name: 'Moss',
      shape: 'boot',
      role: 'grown-up',
      stage: 'grade-3',
      hand: 'right',
    },
  ] as const;
  people.forEach((each, colour) =>
    story.write(began, '16:05', family.grownUp, { kind: 'person-added', ...each, colour }),
  );
  tellSeedlings(story, family);
  tellRain(story, family);
  tellShadow(story, family);
  const told = [...story.entries, ...careEntries(story.entries, family)];
  return [...told, ...teachingEntries(told, family)];
}
