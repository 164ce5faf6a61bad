import { civilDay } from '#core/calendar';
import { graphKinds, tableSources } from '#core/graphs';
import type { Notebook } from '#core/journal';
import { describe, expect, test } from 'vitest';
import { sourceWords } from '#ui/graph-words';
import { offerDetail } from '../../../src/lib/ui/paper/offer-words';
import { paperOffers, sheetAddress } from '../../../src/lib/ui/paper/paper-offers';
import { paperRequest } from '../../../src/lib/ui/paper/paper-request';
import { paperWork } from '../../../src/lib/ui/paper/paper-work';
import { sampleLog, sampleNotebook, weekOf } from './sample-paper';

const today = civilDay('2026-05-01');
const offersOf = (log: string, notebook: Notebook = sampleNotebook) =>
  paperOffers(notebook, sampleLog(log), 'grade-2', today);
const logs = [...sampleNotebook.specimens.values()].map(({ name }) => name);

describe('what a log offers for paper', () => {
  test('is every graph it can become, in the order in which they are learnt', () => {
    expect(offersOf('Window bean').map(({ graph }) => graph)).toEqual([...graphKinds]);
    // The rain of a day is over with the day: there is no line from one day to the next.
    expect(offersOf('Yard gauge').map(({ graph }) => graph)).toEqual(graphKinds.slice(0, 3));
  });

  test('is only what is ready: each sheet of it can be made', () => {
    for (const log of logs)
      for (const { tables, otherWays } of offersOf(log))
        for (const offer of [...tables, ...otherWays]) {
          const url = new URL(sheetAddress(offer, 'grade-2', 'finished'), 'http://localhost');
          const request = paperRequest(url.searchParams);
          expect(request.sheet).toBe('finished');
          expect(request.chosen).toEqual({
            ...{ choice: offer.choice, graph: offer.graph, stage: 'grade-2' },
          });
          const work = paperWork(sampleNotebook, request, { today, author: null });
          expect(work?.ok).toBe(true);
        }
  });

  test('is each table once, with the other ways to get it apart', () => {
    for (const log of logs)
      for (const { tables, otherWays } of offersOf(log)) {
        const sources = tables.map(({ source }) => source);
        expect(new Set(sources).size).toBe(sources.length);
        expect(otherWays.every(({ source }) => sources.includes(source))).toBe(true);
      }
  });

  test('is nothing for a log without measures', () => {
    const empty = { ...sampleNotebook, logBySpecimen: new Map() };
    expect(offersOf('Yard stick', empty)).toEqual([]);
  });
});

describe('the name of an offer', () => {
  test('is another for every table', () => {
    expect(new Set(tableSources.map((source) => sourceWords[source])).size).toBe(
      tableSources.length,
    );
  });

  test('says its days, how many are together, and a mark that was not the one read to', () => {
    const choice = weekOf('Window bean');
    expect(offerDetail({ choice, told: 'as-read' })).toBe('Wed 11 Mar to Tue 17 Mar');
    expect(offerDetail({ choice: weekOf('Window bean', 'Shelf bean'), told: 'as-read' })).toBe(
      'Wed 11 Mar to Tue 17 Mar, 2 together',
    );
    expect(offerDetail({ choice: { ...choice, to: choice.from }, told: 'as-read' })).toBe(
      'Wed 11 Mar',
    );
    const inches = { ...choice, told: { unit: 'in', mark: '1/2 in', converts: true } } as const;
    expect(offerDetail({ choice: inches, told: 'other-unit' })).toBe(
      'Wed 11 Mar to Tue 17 Mar, to the nearest half inch',
    );
    expect(offerDetail({ choice: { ...choice, told: null }, told: null })).toBe(
      'Wed 11 Mar to Tue 17 Mar',
    );
  });

  test('tells the other ways of a table from each other', () => {
    for (const log of logs)
      for (const { tables, otherWays } of offersOf(log)) {
        const names = [...tables, ...otherWays].map(
          (offer) => `${offer.source} ${offerDetail(offer)}`,
        );
        expect(names).toEqual([...new Set(names)]);
      }
  });
});
