import { describe, expect, it } from 'vitest';
import { questionIds, type QuestionId } from '#core/questions';
import { stages, type Stage } from '#core/journal';
import { madeLog } from './made-log';
import { askedOf, lineOf, withOffers, wrongOf } from './whole-reading';

const logsRead = 10_000;

/** In how many logs each template was asked, by the stage of the child. */
type HowOften = ReadonlyMap<QuestionId, Record<Stage, number>>;

/** One reading of all the logs, for all that is expected of it. */
const readAll = (): { readonly wrong: readonly string[]; readonly howOften: HowOften } => {
  const wrong: string[] = [];
  const howOften: HowOften = new Map(
    questionIds.map((id) => [id, { 'grade-1': 0, 'grade-2': 0, 'grade-3': 0 }]),
  );
  for (let seed = 1; seed <= logsRead; seed += 1) {
    const log = madeLog(seed);
    const asked = askedOf(log);
    wrong.push(...wrongOf(seed, asked).map(lineOf));
    for (const id of new Set(asked.map(({ question }) => question.template))) {
      howOften.get(id)![log.stage] += 1;
    }
  }
  return { wrong, howOften };
};

const tableOf = (howOften: HowOften): string =>
  [
    `In how many of ${logsRead} made-up logs each template could be asked, of one or two graphs each`,
    ['id  ', ...stages.map((stage) => stage.padStart(8)), '     all'].join(' '),
    ...[...howOften].map(([id, counts]) => {
      const numbers = stages.map((stage) => counts[stage]);
      const all = numbers.reduce((sum, each) => sum + each, 0);
      return [id.padEnd(4), ...[...numbers, all].map((each) => String(each).padStart(8))].join(' ');
    }),
    '',
  ].join('\n');

describe(
  'ten thousand made-up journals, read anew from their entries',
  { timeout: 600_000 },
  () => {
    let read: ReturnType<typeof readAll> | undefined;
    const allRead = () => (read ??= readAll());

    it('have every answer of every question as the program has it, and every rule kept', () => {
      expect(allRead().wrong).toEqual([]);
    });

    it('have them so in every graph that the program offers, of every hundredth journal', () => {
      const wrong: string[] = [];
      let questions = 0;
      for (let seed = 100; seed <= logsRead; seed += 100) {
        const asked = askedOf(withOffers(madeLog(seed)));
        questions += asked.length;
        wrong.push(...wrongOf(seed, asked).map(lineOf));
      }
      expect(wrong).toEqual([]);
      expect(questions).toBeGreaterThan(4000);
    });

    it('ask every one of the 44 templates, as often as their golden file says', async () => {
      const { howOften } = allRead();
      const never = [...howOften].filter(([, counts]) =>
        stages.every((each) => counts[each] === 0),
      );
      expect(never).toEqual([]);
      await expect(tableOf(howOften)).toMatchFileSnapshot('./how-often.golden.txt');
    });
  },
);
