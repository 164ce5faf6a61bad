import { describe, expect, it } from 'vitest';
import { tableChoicesOf, tableOf } from '#core/graphs';
import { lessonFactsOf, questionsOf } from '#core/questions';
import { inCm, sampleChoice, sampleNotebook, sampleToday } from './sample-logs';

const both = sampleChoice(
  ...([
    'values-side-by-side',
    ['Window bean', 'Shelf bean'],
    ['2026-03-16', '2026-03-20'],
  ] as const),
  inCm,
);

describe('two logs side by side', () => {
  it('have a bar each on the days that both were measured, and no place on others', () => {
    const table = tableOf(both, sampleNotebook, sampleToday);
    // Read off demo/sample-log.csv: both were missed on the 18th; 21 was put right to 12.
    expect(table?.form === 'values' && table.rows.map(({ label, text }) => [label, text])).toEqual([
      ...[
        ['Mon 16 Window bean', '7'],
        ['Mon 16 Shelf bean', '4'],
        ['Tue 17 Window bean', '9'],
        ['Tue 17 Shelf bean', '6'],
      ],
      ...[
        ['Thu 19 Window bean', '12'],
        ['Thu 19 Shelf bean', '9'],
        ['Fri 20 Window bean', '14'],
        ['Fri 20 Shelf bean', '11'],
      ],
    ]);
  });

  it('are asked how far one is ahead, each day by itself', () => {
    const facts = lessonFactsOf(sampleNotebook, both, 'bar-graph', 'grade-2', sampleToday);
    if (!facts.ok) throw new Error(JSON.stringify(facts.error));
    const asked = questionsOf(facts.value).filter(({ template }) => template === 'C13');
    // 7 - 4, 9 - 6, 12 - 9 and 14 - 11; which day it led most has no one answer.
    expect(asked.map(({ answer }) => answer.kind === 'length' && answer.exact / 1e7)).toEqual([
      ...[3, 3, 3, 3],
    ]);
  });

  it('are offered for plants only where there are two with numbers', () => {
    const offered = (name: string): readonly string[] => {
      const [specimen] = sampleChoice('day-values', [name], ['2026-03-16', '2026-03-20']).specimens;
      const { investigation } = sampleNotebook.specimens.get(specimen!)!;
      return tableChoicesOf(
        sampleNotebook,
        { investigation, specimen: specimen! },
        ...(['grade-2', sampleToday] as const),
      ).map(({ source }) => source);
    };
    expect(offered('Shelf bean')).toContain('values-side-by-side');
    expect(offered('Yard gauge')).not.toContain('values-side-by-side');
  });
});
