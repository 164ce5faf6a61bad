import type { GraphKind, StandardCode } from '#core/graphs';
import type { Stage } from '#core/journal';
import type { QuestionId } from '#core/questions';
import type { PurposeId } from './lesson-purpose';

/** What a child learns by measuring and graphing, in the trade's words. Ids; the face has the sentences. */
export const skillIds = [
  ...(['measures-from-zero', 'reads-between-marks', 'keeps-a-log', 'estimates-first'] as const),
  ...(['compares-two-units', 'keeps-a-tally', 'draws-picture-graph', 'draws-bar-graph'] as const),
  ...(['draws-line-plot', 'draws-line-graph', 'reads-a-graph', 'reads-key-and-scale'] as const),
  ...(['compares-and-combines', 'compares-lengths', 'adds-and-subtracts-lengths'] as const),
  ...(['tells-growth-with-its-days', 'looks-beyond', 'knows-a-blank-from-zero'] as const),
  ...(['knows-where-data-came-from', 'plans-a-fair-test', 'asks-own-questions'] as const),
  'says-what-a-graph-tells',
] as const;
export type SkillId = (typeof skillIds)[number];

/**
 * A code of a standard that a skill serves: those of graphs, and further ones of reckoning (Common
 * Core State Standards for Mathematics, 2010) and of the practices of science (Next Generation
 * Science Standards, appendix F: practices 1, 3 and 4, here `SEP 1`, `SEP 3`, `SEP 4`). From memory.
 */
export type SkillStandard = StandardCode | FurtherStandard;
export type FurtherStandard = (typeof furtherStandards)[number];

export const furtherStandards = ['1.OA.A.1', '3.NBT.A.2', 'SEP 1', 'SEP 3', 'SEP 4'] as const;

/** An item of the daily review that shows a skill by itself; items that hold a question show its. */
export type ReviewSign = 'off-zero' | 'between-marks' | 'sum';

/** What a child does with the log that shows a skill, with no question asked. */
export type DeedId =
  | ('reading' | 'estimate' | 'both-sides' | 'prediction')
  | ('tally' | 'fair-test-plan' | 'own-question');

export interface Skill {
  readonly id: SkillId;
  /** The stages it belongs to, each with the standards it serves there: none for some. */
  readonly serves: Readonly<Partial<Record<Stage, readonly SkillStandard[]>>>;
  readonly questions: readonly QuestionId[];
  readonly reviews: readonly ReviewSign[];
  /** Drawing one of these to its end shows it. */
  readonly graphs: readonly GraphKind[];
  readonly deeds: readonly DeedId[];
  /** Lessons that are made for it. */
  readonly purposes: readonly PurposeId[];
  /** Every graph lesson has a part in which it is done. */
  readonly inEveryLesson: boolean;
}

const ofCounts: Skill['serves'] = {
  'grade-1': ['1.MD.C.4'],
  'grade-2': ['2.MD.D.10'],
  'grade-3': ['3.MD.B.3'],
};
const atAllStages = (...codes: SkillStandard[]): Skill['serves'] => ({
  ...{ 'grade-1': codes, 'grade-2': codes, 'grade-3': codes },
});

const skillById: Readonly<Record<SkillId, Partial<Omit<Skill, 'id'>> & Pick<Skill, 'serves'>>> = {
  'measures-from-zero': {
    serves: { 'grade-1': ['1.MD.A.2'], 'grade-2': ['2.MD.A.1'], 'grade-3': ['2.MD.A.1'] },
    ...{ questions: ['H1'], reviews: ['off-zero'] },
  },
  'reads-between-marks': {
    serves: { 'grade-1': ['1.MD.A.2'], 'grade-2': ['2.MD.A.1'], 'grade-3': ['3.MD.B.4'] },
    reviews: ['between-marks'],
  },
  'keeps-a-log': {
    serves: {
      ...{ 'grade-1': ['1.MD.A.2', 'SEP 3'], 'grade-2': ['2.MD.A.1', 'SEP 3'] },
      'grade-3': ['2.MD.A.1', 'SEP 3'],
    },
    ...{ deeds: ['reading'], inEveryLesson: true },
  },
  'estimates-first': {
    serves: { 'grade-1': [], 'grade-2': ['2.MD.A.3'], 'grade-3': ['2.MD.A.3'] },
    ...{ deeds: ['estimate'], purposes: ['guess-before-measuring'], inEveryLesson: true },
  },
  'compares-two-units': {
    serves: { 'grade-2': ['2.MD.A.2'], 'grade-3': ['2.MD.A.2'] },
    ...{ questions: ['H4'], deeds: ['both-sides'], purposes: ['two-units-of-one-thing'] },
  },
  'keeps-a-tally': { serves: ofCounts, deeds: ['tally'] },
  'draws-picture-graph': { serves: ofCounts, graphs: ['picture-graph'] },
  'draws-bar-graph': { serves: ofCounts, graphs: ['bar-graph'] },
  'draws-line-plot': {
    serves: { 'grade-2': ['2.MD.D.9'], 'grade-3': ['3.MD.B.4'] },
    graphs: ['line-plot'],
  },
  'draws-line-graph': { serves: atAllStages('5.G.A.2'), graphs: ['line-graph'] },
  'reads-a-graph': {
    ...{ serves: ofCounts, questions: ['R1', 'R2', 'R3', 'R6', 'R10'] },
  },
  'reads-key-and-scale': { serves: ofCounts, questions: ['R4', 'R5', 'R7', 'C14'] },
  'compares-and-combines': {
    ...{ serves: ofCounts, questions: ['C1', 'C3', 'C4', 'C9', 'C11', 'C12', 'C14'] },
  },
  'compares-lengths': {
    serves: { 'grade-1': ['1.MD.A.1'], 'grade-2': ['2.MD.A.4'], 'grade-3': ['2.MD.A.4'] },
    ...{ questions: ['C2', 'C6', 'C10', 'C13'], purposes: ['how-much-taller', 'two-side-by-side'] },
  },
  'adds-and-subtracts-lengths': {
    serves: {
      ...{ 'grade-1': ['1.OA.A.1'], 'grade-2': ['2.MD.B.5', '2.MD.B.6'] },
      'grade-3': ['3.NBT.A.2'],
    },
    ...{ questions: ['C2', 'C13'], reviews: ['sum'], purposes: ['how-much-taller'] },
  },
  'tells-growth-with-its-days': {
    serves: {
      ...{ 'grade-1': ['SEP 4'], 'grade-2': ['2.MD.A.4', 'SEP 4'] },
      'grade-3': ['2.MD.A.4', 'SEP 4'],
    },
    questions: ['C5', 'C7', 'C8'],
  },
  'looks-beyond': {
    serves: atAllStages('SEP 3', 'SEP 4'),
    questions: ['Y1', 'Y2', 'Y3', 'Y4', 'Y5', 'Y6', 'Y7', 'Y8', 'Y9', 'Y10'],
    deeds: ['prediction'],
  },
  'knows-a-blank-from-zero': { serves: atAllStages('SEP 4'), questions: ['R8', 'R9', 'H2'] },
  'knows-where-data-came-from': {
    ...{ serves: atAllStages('SEP 3'), questions: ['H2', 'H3', 'H6', 'H8', 'H9', 'H10'] },
  },
  'plans-a-fair-test': {
    serves: { 'grade-1': ['SEP 3'], 'grade-2': ['2-LS2-1', 'SEP 3'], 'grade-3': ['SEP 3'] },
    ...{ questions: ['H5', 'H7'], deeds: ['fair-test-plan'], purposes: ['fair-test-of-two'] },
  },
  'asks-own-questions': { serves: atAllStages('SEP 1'), deeds: ['own-question'] },
  'says-what-a-graph-tells': { serves: atAllStages('SEP 4'), inEveryLesson: true },
};

/** Every skill, in the order of `skillIds`. What shows which is common practice, no source. */
export const skills: readonly Skill[] = skillIds.map((id) => ({
  ...{ id, questions: [], reviews: [], graphs: [], deeds: [] },
  ...{ purposes: [], inEveryLesson: false },
  ...skillById[id],
}));
