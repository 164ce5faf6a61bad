import { describe, expect, it } from 'vitest';
import { failed, type Result } from '#core/base';
import { civilDay } from '#core/calendar';
import type { EntryDraft, EntryId } from '#core/journal';
import { DeviceMemory, NotebookState, type Clock } from '#notebook';
import { newMemoryShelf, openMemoryJournalStore, type JournalStore, type StoreError } from '#store';
import { bean, begun, child, read } from '../core/journal/entries';

const morning = Date.UTC(2026, 2, 10, 13);

/** A clock that stands still until it is set, and bytes that never repeat. */
function aClock(nowMs = morning): Clock & { set(ms: number): void } {
  let made = 0;
  return {
    nowMs: () => nowMs,
    timeZone: () => 'America/New_York',
    randomBytes: (count) => {
      made += 1;
      return Uint8Array.from({ length: count }, (_, at) => (made >> ((at % 4) * 8)) & 0xff);
    },
    set: (ms) => (nowMs = ms),
  };
}

async function aNotebook(store: JournalStore = openMemoryJournalStore(), clock = aClock()) {
  await store.append(begun);
  const notebook = new NotebookState(store, clock, new DeviceMemory());
  await notebook.open();
  return { notebook, clock, store };
}

const reading = (value: number): EntryDraft => ({
  kind: 'reading-taken',
  specimen: bean,
  day: civilDay('2026-03-10'),
  measured: read(value),
});

const anotherChild: EntryDraft = {
  kind: 'person-added',
  person: '018f0000-0000-7000-8000-00000000c0de' as typeof child,
  ...{ name: 'Robin', shape: 'drop', colour: 3, role: 'child', stage: 'grade-1', hand: 'left' },
};

const readingsIn = (notebook: NotebookState): string[] =>
  (notebook.contents.logBySpecimen.get(bean)?.readings ?? [])
    .filter((each) => each.takenBack === null)
    .map((each) => each.counted.text);

describe('the running notebook', () => {
  it('shows an entry when it is durable, and knows the day where the family is', async () => {
    const { notebook, store } = await aNotebook();
    expect(notebook.today).toBe('2026-03-10');
    await notebook.write(reading(4));
    expect(readingsIn(notebook)).toEqual(['4']);
    const kept = await store.readAll();
    expect(kept.ok && kept.value.entries).toHaveLength(begun.length + 1);
  });

  it('shows nothing that could not be saved, and says why', async () => {
    const { notebook, store } = await aNotebook();
    const append = store.append.bind(store);
    const full: Result<never, StoreError> = failed({ kind: 'no-room', detail: 'full' });
    store.append = () => Promise.resolve(full);
    expect((await notebook.write(reading(4))).ok).toBe(false);
    expect([readingsIn(notebook), notebook.trouble?.kind]).toEqual([[], 'no-room']);
    store.append = append;
    await notebook.write(reading(4));
    expect([readingsIn(notebook), notebook.trouble]).toEqual([['4'], null]);
  });

  it('undoes the last deed as a whole and brings it back, by new entries only', async () => {
    const { notebook } = await aNotebook();
    await notebook.write(reading(4), reading(5));
    expect(notebook.lastDeed).toBe('done');
    await notebook.undo();
    expect([readingsIn(notebook), notebook.lastDeed]).toEqual([[], 'undone']);
    await notebook.redo();
    expect([readingsIn(notebook), notebook.lastDeed]).toEqual([['4', '5'], 'done']);
    expect(notebook.entries).toHaveLength(begun.length + 6);
  });

  it('writes two entries of which one names the other together, or neither', async () => {
    const { notebook, store } = await aNotebook();
    const both = (value: number) => {
      const id = notebook.newId<EntryId>();
      const measured = read(5, 'in', '1 in');
      return [
        { ...reading(value), id },
        { kind: 'other-side-read', reading: id, measured } as const,
      ];
    };
    const append = store.append.bind(store);
    store.append = () => Promise.resolve(failed({ kind: 'no-room', detail: 'full' }));
    await notebook.writeAll(both(12));
    expect([readingsIn(notebook), notebook.contents.otherSides.size]).toEqual([[], 0]);
    store.append = append;
    const done = await notebook.writeAll(both(13));
    const [first] = notebook.contents.logBySpecimen.get(bean)!.readings;
    expect(done.ok && done.value[0]).toBe(first?.id);
    expect(notebook.contents.otherSides.get(first!.id)?.measured.text).toBe('5');
    await notebook.undo();
    expect([readingsIn(notebook), notebook.contents.otherSides.size]).toEqual([[], 0]);
  });

  it('offers no undo for what has its own way back', async () => {
    const { notebook } = await aNotebook();
    await notebook.write(reading(4));
    await notebook.writeQuietly(reading(5));
    expect(notebook.lastDeed).toBe('nothing');
    expect(readingsIn(notebook)).toEqual(['4', '5']);
  });

  it('is settled when what was written is kept and shown', async () => {
    const { notebook } = await aNotebook();
    void notebook.write(reading(4));
    void notebook.writeQuietly(reading(5));
    await notebook.settled();
    expect(readingsIn(notebook)).toEqual(['4', '5']);
  });

  it('gives every entry a later stamp, also when two are written at once or the clock is set back', async () => {
    const { notebook, clock } = await aNotebook();
    await Promise.all([notebook.write(reading(4)), notebook.write(reading(5))]);
    clock.set(morning - 400 * 86_400_000);
    await notebook.write(reading(6));
    const stamps = notebook.entries.slice(begun.length).map((entry) => entry.at);
    expect([...new Set(stamps)].sort()).toEqual(stamps);
    expect(readingsIn(notebook)).toEqual(['4', '5', '6']);
  });

  it('notices a clock that stands before the last entry', async () => {
    const { notebook, clock } = await aNotebook();
    await notebook.write(reading(4));
    expect(notebook.clockIsBehind).toBe(false);
    clock.set(morning - 7 * 86_400_000);
    expect(notebook.clockIsBehind).toBe(true);
  });

  it('moves on to the next day when the calendar is looked at again', async () => {
    const { notebook, clock } = await aNotebook();
    clock.set(morning + 86_400_000);
    notebook.lookAtCalendar();
    expect(notebook.today).toBe('2026-03-11');
  });

  it('takes in what another window appended', async () => {
    const shelf = newMemoryShelf();
    const here = await aNotebook(openMemoryJournalStore(shelf));
    const there = await aNotebook(openMemoryJournalStore(shelf));
    await there.notebook.write(reading(7));
    await expect.poll(() => readingsIn(here.notebook)).toEqual(['7']);
  });

  it('signs a reading with who is writing', async () => {
    const { notebook } = await aNotebook();
    await notebook.write(anotherChild);
    await notebook.write(reading(3));
    expect(notebook.entries.at(-1)?.author).toBeNull();
    notebook.chooseAuthor(child);
    await notebook.write(reading(4));
    expect(notebook.entries.at(-1)?.author).toBe(child);
    notebook.chooseAuthor('nobody-here' as typeof child);
    await notebook.write(reading(5));
    expect(notebook.entries.at(-1)?.author).toBeNull();
  });

  it('signs with the only person there is, unless that person says it is somebody else', async () => {
    const { notebook } = await aNotebook();
    await notebook.write(reading(4));
    expect(notebook.entries.at(-1)?.author).toBe(child);
    notebook.chooseAuthor(null);
    await notebook.write(reading(5));
    expect(notebook.entries.at(-1)?.author).toBeNull();
  });

  it('counts entries brought in that were here already', async () => {
    const { notebook } = await aNotebook();
    const again = await notebook.bringIn(begun);
    expect(again.ok && again.value).toEqual({ added: 0, known: begun.length });
  });
});
