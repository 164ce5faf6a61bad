import type { GraphKind } from '#core/graphs';
import { askFairly, type ToAsk } from './ask-fairly';
import { reading } from './fits-range';
import type { LessonFacts } from './lesson-facts';
import type { AskedQuestion, NumberRange, QuestionTemplate, Slip } from './question';
import type { SlipId } from './slip-id';
import { anIdea } from './told';

/**
 * A question beyond or behind the data, asked where it is fair. Numbers are read and compared
 * here, never added or shared. Not part of the public door.
 *
 * @param parts its blanks and answer; `numbers` are those a child must say, in their unit
 */
export const askIdea = (
  template: Pick<QuestionTemplate, 'id' | 'level' | 'ranges'>,
  facts: LessonFacts,
  { blanks = {}, numbers = [], ...parts }: IdeaParts,
): readonly AskedQuestion[] =>
  askFairly(template, facts, { ...parts, blanks, fits: reading(...numbers) });

export interface IdeaParts extends Omit<ToAsk, 'fits' | 'blanks'> {
  readonly blanks?: ToAsk['blanks'];
  readonly numbers?: readonly number[];
}

/** A usual answer in words: its key is what it shows. Not part of the public door. */
export const ideaSlip = (shows: SlipId): Slip => ({ told: anIdea(shows), shows });

/** From which grade on a question is asked. Not part of the public door. */
export const fromGrade1: readonly NumberRange[] = ['G1', 'G2a', 'G2b', 'G2c', 'G3'];
export const fromGrade2: readonly NumberRange[] = ['G2a', 'G2b', 'G2c', 'G3'];
export const inGrade3: readonly NumberRange[] = ['G3'];

/** Where a question belongs. None of these is part of the public door. */
export const graphsOverTime: readonly GraphKind[] = ['bar-graph', 'line-plot', 'line-graph'];
export const graphsOfCounts: readonly GraphKind[] = ['picture-graph', 'bar-graph'];
export const anyGraph: readonly GraphKind[] = ['picture-graph', ...graphsOverTime];
