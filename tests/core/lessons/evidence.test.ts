import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { foldEntries, type EntryId, type JournalEntry, type Stage } from '#core/journal';
import { evidenceOf, keptSamples, type SkillId } from '#core/lessons';
import { anId, bean, child, heights, read, takenBack, took, written } from '../journal/entries';
import {
  answered,
  drawing,
  drawn,
  noted,
  oneChild,
  questionItem,
  reviewed,
  rulerItem,
  sumItem,
  sister,
  twoChildren,
} from './evidence-journals';

const seenOf = (
  journal: readonly JournalEntry[],
  person = child,
  { stage = 'grade-2' as Stage, zone = 'UTC' } = {},
) => evidenceOf(foldEntries(journal), person, stage, zone);

/** What is there for a skill, told in one line a piece: day, how, what. */
const told = (evidence: ReturnType<typeof seenOf>, id: SkillId): readonly string[] =>
  evidence.skills
    .find(({ skill }) => skill.id === id)!
    .pieces.map(({ day, how, of, note }) =>
      [day, how, ...of.map(({ kind }) => kind), ...(note ? ['note'] : [])].join(' '),
    );

const seen = (evidence: ReturnType<typeof seenOf>, id: SkillId) =>
  evidence.skills.find(({ skill }) => skill.id === id)?.seen;

describe('what a grown-up noted', () => {
  it('is a piece of its skill, with its day and how', () => {
    const evidence = seenOf([
      ...oneChild,
      written(10, noted('estimates-first', '2026-03-03', 'with-help', { note: 'with the hand' })),
    ]);
    expect(told(evidence, 'estimates-first')).toEqual(['2026-03-03 with-help note']);
    expect(seen(evidence, 'estimates-first')).toBe('sometimes');
    expect(seen(evidence, 'looks-beyond')).toBe('not-yet');
  });

  it('about another child is not this child’s', () => {
    const journal = [
      ...twoChildren,
      written(10, noted('estimates-first', '2026-03-03', 'alone', { person: sister })),
    ];
    expect(told(seenOf(journal), 'estimates-first')).toEqual([]);
    expect(told(seenOf(journal, sister), 'estimates-first')).toEqual(['2026-03-03 alone note']);
  });

  it('stands in place of the answer or drawing it is attached to', () => {
    const journal = [
      ...oneChild,
      written(10, answered('R1', '2026-03-03', 'seen')),
      ...drawn(20, 'bar-graph'),
      written(30, noted('reads-a-graph', '2026-03-03', 'alone', { answer: anId<EntryId>(10) })),
      written(31, noted('draws-bar-graph', '2026-03-02', 'with-help', { drawing: drawing(20) })),
    ];
    const evidence = seenOf(journal);
    expect(told(evidence, 'reads-a-graph')).toEqual(['2026-03-03 alone answer note']);
    expect(told(evidence, 'draws-bar-graph')).toEqual(['2026-03-02 with-help drawing note']);
    const without = seenOf([...journal, takenBack(40, 30), takenBack(41, 31)]);
    expect(told(without, 'reads-a-graph')).toEqual(['2026-03-03 seen answer']);
    expect(told(without, 'draws-bar-graph')).toEqual(['2026-03-02 seen drawing']);
  });

  it('of a skill that a later program knows is left out and told', () => {
    const evidence = seenOf([...oneChild, written(10, noted('juggles', '2026-03-03', 'alone'))]);
    expect(evidence.unread).toEqual([{ id: anId(10), why: 'not-a-skill' }]);
    expect(evidence.skills.flatMap(({ pieces }) => pieces)).toEqual([]);
  });

  it('with a drawing is a kept sample, once, by its newest note', () => {
    const evidence = seenOf([
      ...oneChild,
      ...drawn(20, 'bar-graph'),
      written(30, noted('draws-bar-graph', '2026-03-04', 'with-help', { drawing: drawing(20) })),
      written(31, noted('compares-lengths', '2026-03-05', 'alone', { drawing: drawing(20) })),
      written(32, noted('compares-lengths', '2026-03-06', 'alone')),
    ]);
    expect(keptSamples(evidence).map(({ day, how }) => [day, how])).toEqual([
      ['2026-03-05', 'alone'],
    ]);
  });
});

describe('answers in talk', () => {
  it('show the skills of their question, as they were given', () => {
    const evidence = seenOf([
      ...oneChild,
      written(10, answered('R1', '2026-03-03', 'alone')),
      written(11, answered('C14', '2026-03-04', 'with-help')),
    ]);
    expect(told(evidence, 'reads-a-graph')).toEqual(['2026-03-03 alone answer']);
    expect(told(evidence, 'reads-key-and-scale')).toEqual(['2026-03-04 with-help answer']);
    expect(told(evidence, 'compares-and-combines')).toEqual(['2026-03-04 with-help answer']);
  });

  it('that cannot be read are skipped and told', () => {
    const evidence = seenOf([
      ...oneChild,
      written(10, answered('broken', '2026-03-03', 'alone')),
      written(11, answered('R1', '2026-03-04', 'alone')),
    ]);
    expect(evidence.unread).toEqual([{ id: anId(10), why: 'not-a-question' }]);
    expect(told(evidence, 'reads-a-graph')).toEqual(['2026-03-04 alone answer']);
  });

  it('of a sister are hers; those of nobody are nobody’s until a note says whose', () => {
    const journal = [
      ...twoChildren,
      written(10, answered('R1', '2026-03-03', 'alone'), { author: sister }),
      written(11, answered('R2', '2026-03-04', 'alone'), { author: null }),
    ];
    expect(told(seenOf(journal), 'reads-a-graph')).toEqual([]);
    expect(told(seenOf(journal, sister), 'reads-a-graph')).toEqual(['2026-03-03 alone answer']);
    expect(seenOf(journal).nobodys).toMatchObject([
      { id: anId(11), how: 'alone', skills: ['reads-a-graph'], of: { kind: 'answer' } },
    ]);
    const given = [
      ...journal,
      written(12, noted('reads-a-graph', '2026-03-04', 'alone', { answer: anId<EntryId>(11) })),
    ];
    expect(told(seenOf(given), 'reads-a-graph')).toEqual(['2026-03-04 alone answer note']);
    expect(seenOf(given).nobodys).toEqual([]);
    expect(seenOf(given, sister).nobodys).toEqual([]);
  });

  it('are theirs whom the notes are about, whoever was chosen on the device', () => {
    const journal = [
      ...twoChildren,
      written(10, answered('R1', '2026-03-03', 'alone')),
      written(
        11,
        noted('reads-a-graph', '2026-03-03', 'alone', {
          answer: anId<EntryId>(10),
          person: sister,
        }),
      ),
    ];
    expect(told(seenOf(journal), 'reads-a-graph')).toEqual([]);
    expect(told(seenOf(journal, sister), 'reads-a-graph')).toEqual([
      '2026-03-03 alone answer note',
    ]);
    const both = written(
      12,
      noted('reads-a-graph', '2026-03-03', 'with-help', { answer: anId<EntryId>(10) }),
    );
    expect(told(seenOf([...journal, both]), 'reads-a-graph')).toEqual([
      '2026-03-03 with-help answer note',
    ]);
  });

  it('to a question in somebody’s own words show the skill of its level', () => {
    const own = { level: 'beyond', text: 'How tall will it be?', answer: '' };
    const evidence = seenOf([
      ...oneChild,
      written(10, {
        ...{ kind: 'question-answered', question: { own }, answer: 'Taller', how: 'seen' },
        day: civilDay('2026-03-03'),
      }),
    ]);
    expect(told(evidence, 'looks-beyond')).toEqual(['2026-03-03 seen own-answer']);
  });

  it('of nobody are those of the only child there is', () => {
    const evidence = seenOf([
      ...oneChild,
      written(11, answered('R2', '2026-03-04', 'alone'), { author: null }),
    ]);
    expect(told(evidence, 'reads-a-graph')).toEqual(['2026-03-04 alone answer']);
    expect(evidence.nobodys).toEqual([]);
  });
});

describe('the daily review', () => {
  it('shows what went right alone; what was missed is no evidence', () => {
    const evidence = seenOf([
      ...oneChild,
      written(10, reviewed(rulerItem, '2026-03-03', 'rest')),
      written(11, reviewed(sumItem, '2026-03-03', 'again')),
      written(12, reviewed(questionItem, '2026-03-04', 'rest')),
    ]);
    expect(told(evidence, 'measures-from-zero')).toEqual(['2026-03-03 alone review']);
    expect(seen(evidence, 'adds-and-subtracts-lengths')).toBe('not-yet');
    expect(told(evidence, 'reads-a-graph')).toEqual(['2026-03-04 alone review']);
  });

  it('that was right only after it was missed on that day was right with help', () => {
    const evidence = seenOf([
      ...oneChild,
      written(10, reviewed(rulerItem, '2026-03-03', 'again')),
      written(11, reviewed(rulerItem, '2026-03-03', 'rest')),
      written(12, reviewed(rulerItem, '2026-03-04', 'rest')),
    ]);
    expect(told(evidence, 'measures-from-zero')).toEqual([
      '2026-03-04 alone review',
      '2026-03-03 with-help review',
    ]);
  });

  it('that cannot be read is skipped and told', () => {
    const broken = [{}, { ...questionItem, question: { template: 'Z' } }];
    const evidence = seenOf([
      ...oneChild,
      ...broken.map((item, index) => written(10 + index, reviewed(item, '2026-03-03', 'rest'))),
    ]);
    expect(evidence.unread.map(({ why }) => why)).toEqual(['not-a-review', 'not-a-review']);
  });
});

describe('finished drawings', () => {
  it('are seen, on the day they were done where the family is', () => {
    // Entry 22 is written 22 minutes after 08:00 UTC on 2 March 2026: still 1 March in Honolulu.
    const journal = [...oneChild, ...drawn(20, 'line-graph')];
    expect(told(seenOf(journal), 'draws-line-graph')).toEqual(['2026-03-02 seen drawing']);
    expect(told(seenOf(journal, child, { zone: 'Pacific/Honolulu' }), 'draws-line-graph')).toEqual([
      '2026-03-01 seen drawing',
    ]);
  });

  it('with days sorted by hand show the tally too', () => {
    const tally = {
      ...{ kinds: ['sun'], use: 'mine' },
      cards: [{ thing: 'a', day: '2026-03-02', says: 'sun', picks: ['sun'] }],
    };
    const evidence = seenOf([...oneChild, ...drawn(20, 'bar-graph', { tally })]);
    expect(told(evidence, 'keeps-a-tally')).toEqual(['2026-03-02 seen tally']);
  });

  it('that are not done yet, or done by somebody else, show nothing', () => {
    const open = drawn(20, 'bar-graph').slice(0, 2);
    const hers = drawn(30, 'bar-graph', { author: sister });
    const evidence = seenOf([...twoChildren, ...open, ...hers]);
    expect(seen(evidence, 'draws-bar-graph')).toBe('not-yet');
    expect(evidence.nobodys).toEqual([]);
  });

  it('of a later program’s graph are skipped and told', () => {
    const evidence = seenOf([...oneChild, ...drawn(20, 'hologram')]);
    expect(evidence.unread).toEqual([{ id: drawing(20), why: 'not-a-graph' }]);
  });
});

describe('the log itself', () => {
  const day = civilDay('2026-03-10');
  const log = [
    ...oneChild,
    took(10, '2026-03-10', 7),
    written(11, { kind: 'other-side-read', reading: anId(10), measured: read(3, 'in', '1 in') }),
    written(12, { kind: 'estimate-made', specimen: bean, day, measured: read(6) }),
    written(13, {
      ...{ kind: 'prediction-sealed', specimen: bean, day, forDay: civilDay('2026-03-12') },
      ...{ measured: read(9), because: 'it grows' },
    }),
    written(14, {
      ...{ kind: 'fair-test-planned', investigation: heights, different: 'light' },
      ...{ same: ['seed'], second: ['leaves'] },
    }),
    written(15, {
      ...{ kind: 'question-written', level: 'read', day, text: 'How tall was it on Monday?' },
    }),
  ] as const;
  const expected = [
    ['keeps-a-log', '2026-03-10 seen reading'],
    ['compares-two-units', '2026-03-10 seen both-sides'],
    ['estimates-first', '2026-03-10 seen estimate'],
    ['looks-beyond', '2026-03-10 seen prediction'],
    ['plans-a-fair-test', '2026-03-02 seen fair-test-plan'],
    ['asks-own-questions', '2026-03-10 seen own-question'],
  ] as const;

  it('shows readings, both sides, estimates, guesses, plans and own questions as seen', () => {
    const evidence = seenOf(log);
    expect(expected.map(([skill]) => [skill, ...told(evidence, skill)])).toEqual(expected);
  });

  it('shows nothing of what was taken back', () => {
    const back = [10, 12, 13, 14, 15].map((number) => takenBack(50 + number, number));
    const evidence = seenOf([...log, ...back]);
    expect(expected.map(([skill]) => told(evidence, skill))).toEqual(expected.map(() => []));
  });

  it('shows nothing of an investigation that was removed', () => {
    const removed = written(60, { kind: 'investigation-removed', investigation: heights });
    const evidence = seenOf([...log, removed]);
    expect(told(evidence, 'keeps-a-log')).toEqual([]);
    expect(told(evidence, 'asks-own-questions')).toHaveLength(1);
  });

  it('does not keep the seal open: a guess says only that it was made', () => {
    const piece = seenOf(log).skills.find(({ skill }) => skill.id === 'looks-beyond')!.pieces[0];
    expect(JSON.stringify(piece)).not.toMatch(/it grows|"9"/);
  });
});

describe('how often a skill was seen', () => {
  const alone = (number: number, day: string) => written(number, answered('R1', day, 'alone'));

  it('is often when it was alone on three different days; a day counts once', () => {
    const twoDays = [alone(10, '2026-03-03'), alone(11, '2026-03-04'), alone(12, '2026-03-04')];
    expect(seen(seenOf([...oneChild, ...twoDays]), 'reads-a-graph')).toBe('sometimes');
    const third = alone(13, '2026-03-05');
    expect(seen(seenOf([...oneChild, ...twoDays, third]), 'reads-a-graph')).toBe('often');
    expect(seen(seenOf([...oneChild, ...twoDays, third, takenBack(14, 13)]), 'reads-a-graph')).toBe(
      'sometimes',
    );
  });

  it('is sometimes however often it was only seen, or done with help', () => {
    const days = ['03', '04', '05', '06'].map((day, index) =>
      written(10 + index, answered('R1', `2026-03-${day}`, index % 2 ? 'seen' : 'with-help')),
    );
    expect(seen(seenOf([...oneChild, ...days]), 'reads-a-graph')).toBe('sometimes');
  });

  it('is asked of the skills of the stage, and of others that were shown', () => {
    const ids = (stage: Stage, more: readonly JournalEntry[] = []) =>
      seenOf([...oneChild, ...more], child, { stage }).skills.map(({ skill }) => skill.id);
    expect(ids('grade-1')).not.toContain('draws-line-plot');
    expect(ids('grade-2')).toContain('draws-line-plot');
    expect(ids('grade-1', drawn(20, 'line-plot'))).toContain('draws-line-plot');
  });
});

describe('evidence of the same entries', () => {
  const journal: readonly JournalEntry[] = [
    ...twoChildren,
    took(10, '2026-03-10', 7),
    took(11, '2026-03-11', 8, { author: null }),
    written(12, answered('R1', '2026-03-03', 'alone')),
    written(13, answered('C2', '2026-03-04', 'with-help'), { author: null }),
    written(14, answered('broken', '2026-03-04', 'seen')),
    written(15, noted('reads-a-graph', '2026-03-03', 'alone', { answer: anId<EntryId>(12) })),
    written(16, reviewed(sumItem, '2026-03-05', 'rest')),
    takenBack(17, 16),
    ...drawn(20, 'bar-graph'),
    written(30, noted('draws-bar-graph', '2026-03-06', 'alone', { drawing: drawing(20) })),
  ];

  it('is the same in whatever order and however often they come', () => {
    const once = seenOf(journal);
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...journal], { minLength: journal.length }),
        fc.subarray([...journal]),
        (shuffled, again) => {
          expect(seenOf([...shuffled, ...again])).toEqual(once);
        },
      ),
      { seed: 20260302, numRuns: 60 },
    );
  });

  it('loses exactly what is taken back', () => {
    const counted = (entries: readonly JournalEntry[]) =>
      seenOf(entries).skills.flatMap(({ pieces }) => pieces.map(({ id }) => id));
    const before = counted(journal);
    for (const number of [10, 12, 15, 30]) {
      const after = counted([...journal, takenBack(90, number)]);
      expect(after).not.toContain(anId(number));
      // What the note stood in place of comes out again.
      const uncovered = after.filter((id) => !before.includes(id));
      expect(uncovered).toEqual(number === 15 ? [anId(12)] : number === 30 ? [drawing(20)] : []);
    }
  });
});
