import { describe, expect, test } from 'vitest';
import {
  lessonPaperRequest,
  sheetGroups,
  withGroup,
} from '../../../src/lib/ui/lesson-paper/lesson-paper-request';

const asked = (text: string) => lessonPaperRequest(new URLSearchParams(text));

describe('the address of a lesson on paper', () => {
  test('names what is wanted, and leaves open what it does not name', () => {
    expect(asked('')).toEqual({ size: null, groups: sheetGroups, frame: null });
    expect(asked('size=a4&sheets=words,child&frame=scale-given')).toEqual({
      ...{ size: 'a4', groups: ['child', 'words'], frame: 'scale-given' },
    });
  });

  test('passes over what it does not know', () => {
    expect(asked('size=folio&sheets=poster&frame=painted')).toEqual(asked(''));
  });

  test('puts a group of sheets in or leaves it out, but never the last', () => {
    expect(withGroup(sheetGroups, 'grown-up')).toEqual(['child', 'words']);
    expect(withGroup(['words'], 'child')).toEqual(['child', 'words']);
    expect(withGroup(['words'], 'words')).toEqual(['words']);
  });
});
