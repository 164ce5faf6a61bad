import { describe, expect, test } from 'vitest';
import { askedOtherwise, paperRequest } from '../../../src/lib/ui/paper/paper-request';
import { weekOf } from './sample-paper';

const asked = (search: Record<string, string>) => paperRequest(new URLSearchParams(search));
const nothing = { drawing: null, chosen: null, sheet: null, size: null, upright: null };
const week = weekOf('Window bean');
const table = { choice: JSON.stringify(week), graph: 'bar-graph', stage: 'grade-2' };

describe('what an address asks for', () => {
  test('is left open where it says nothing', () => {
    expect(asked({})).toEqual(nothing);
  });

  test('is a table with its graph and stage, and none of it where one is missing', () => {
    expect(asked(table).chosen).toEqual({ choice: week, graph: 'bar-graph', stage: 'grade-2' });
    for (const name of ['choice', 'graph', 'stage'])
      expect(asked({ ...table, [name]: 'nonsense' }).chosen).toBeNull();
    expect(asked({ ...table, choice: '{"source":"day-values"}' }).chosen).toBeNull();
  });

  test('is a sheet, a paper and a way, as far as they are known', () => {
    expect(asked({ sheet: 'finished', size: 'a4', way: 'lying' })).toEqual({
      ...{ ...nothing, sheet: 'finished', size: 'a4', upright: false },
    });
    expect(asked({ sheet: 'answers', size: 'a3', way: 'askew' })).toEqual(nothing);
    expect(asked({ way: 'standing' }).upright).toBe(true);
  });

  test('is a drawing only where the text can be an id', () => {
    expect(asked({ drawing: week.investigation }).drawing).toBe(week.investigation);
    expect(asked({ drawing: '../elsewhere' }).drawing).toBeNull();
  });

  test('can be asked otherwise in one thing, with all else as it was', () => {
    const url = new URL('http://localhost/draw/paper?size=a4&sheet=finished');
    expect(askedOtherwise(url, 'size', 'letter')).toBe('/draw/paper?size=letter&sheet=finished');
    expect(askedOtherwise(url, 'way', 'lying')).toBe(
      '/draw/paper?size=a4&sheet=finished&way=lying',
    );
  });
});
