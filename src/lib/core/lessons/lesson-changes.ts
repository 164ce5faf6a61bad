import * as v from 'valibot';
import { failed, ok, type Result } from '#core/base';
import type { CivilDay } from '#core/calendar';
import { fieldSchemas, type LessonRecord } from '#core/journal';
import { decodeQuestion, levels, type AskedQuestion, type Level } from '#core/questions';

/** The parts of a plan that a grown-up can put into words of their own. */
export const lessonBlocks = [
  ...(['opener', 'look-and-wonder', 'teach', 'draw', 'talk', 'sentence'] as const),
  ...(['materials', 'words', 'accept', 'if-stuck', 'stop-when', 'watch-for'] as const),
] as const;
export type LessonBlock = (typeof lessonBlocks)[number];

/** What a grown-up changed before printing; null or absent: as the plan has it. */
export interface LessonChanges {
  /** The day its questions were chosen: facts are of that day. */
  readonly madeOn: CivilDay | null;
  /** The grown-up's own name for the lesson. */
  readonly title: string | null;
  /** Own words in place of the plan's; '' leaves the block out. */
  readonly texts: Readonly<Partial<Record<LessonBlock, string>>>;
  /** Kept as asked, so that paper and screen never differ. */
  readonly questions: readonly AskedQuestion[] | null;
  readonly own: readonly OwnLessonQuestion[];
}

/** A question the grown-up put in. */
export interface OwnLessonQuestion {
  readonly level: Level;
  readonly text: string;
  readonly answer: string;
}

/**
 * All changes of a lesson put together, oldest first: later ones win field by field, texts block
 * by block, and a null takes a change back. Fields and blocks that a later program added are left
 * out. Anything of another shape is an error that names the part.
 * @example
 * decodeLessonChanges([{ title: 'Our bean' }, { title: 'Bean bars', texts: { talk: '' } }]).value // => { madeOn: null, title: 'Bean bars', texts: { talk: '' }, questions: null, own: [] }
 * decodeLessonChanges([{ title: 7 }]).error // => { kind: 'not-changes', part: 'title' }
 */
export const decodeLessonChanges = (
  sheets: LessonRecord['changes'],
): Result<LessonChanges, LessonChangesError> => {
  let changes = noChanges;
  for (const sheet of sheets) {
    const read = v.safeParse(changeSchema, sheet);
    if (!read.success) return notChanges(v.getDotPath(read.issues[0]) ?? '');
    const { madeOn, title, texts, questions, own } = read.output;
    const kept = questions?.map((each) => decodeQuestion(each)) ?? null;
    const strange = kept?.findIndex((each) => !each.ok) ?? -1;
    if (strange >= 0) return notChanges(`questions.${strange}`);
    changes = {
      madeOn: madeOn === undefined ? changes.madeOn : madeOn,
      title: title === undefined ? changes.title : title,
      texts: withTexts(changes.texts, texts ?? {}),
      questions:
        questions === undefined
          ? changes.questions
          : (kept?.flatMap((each) => (each.ok ? [each.value] : [])) ?? null),
      own: own === undefined ? changes.own : (own ?? []),
    };
  }
  return ok(changes);
};

const withTexts = (
  before: LessonChanges['texts'],
  texts: Readonly<Partial<Record<LessonBlock, string | null | undefined>>>,
): LessonChanges['texts'] =>
  Object.fromEntries(
    Object.entries({ ...before, ...texts }).filter(([, text]) => typeof text === 'string'),
  );

/** Which part of what was kept is no change of a lesson. */
export interface LessonChangesError {
  readonly kind: 'not-changes';
  readonly part: string;
}

const notChanges = (part: string): Result<never, LessonChangesError> =>
  failed({ kind: 'not-changes', part });

const noChanges: LessonChanges = {
  ...{ madeOn: null, title: null, texts: {}, questions: null, own: [] },
};

const { day } = fieldSchemas;
const mostQuestions = 60;
const line = v.pipe(v.string(), v.maxLength(500));
const prose = v.pipe(v.string(), v.maxLength(10_000));
const own = v.object({ level: v.picklist(levels), text: line, answer: line });

const changeSchema = v.object({
  madeOn: v.optional(v.nullable(day)),
  title: v.optional(v.nullable(line)),
  texts: v.optional(
    v.nullable(v.partial(v.object(v.entriesFromList(lessonBlocks, v.nullable(prose))))),
  ),
  questions: v.optional(v.nullable(v.pipe(v.array(v.unknown()), v.maxLength(mostQuestions)))),
  own: v.optional(v.nullable(v.pipe(v.array(own), v.maxLength(mostQuestions)))),
});
