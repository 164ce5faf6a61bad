import type { CivilDay, ClockTime } from '#core/calendar';
import type { GraphKind } from '#core/graphs';
import type { MarkId, Unit } from '#core/measure';
import type { LessonFacts } from './lesson-facts';
import type { SlipId } from './slip-id';

/**
 * How far a question goes: read the data, look between them, beyond them, or behind them to where
 * they came from. (Curcio 1987; Friel, Curcio and Bright 2001, JRME 32(2); the fourth level from
 * Shaughnessy 2007, from memory.)
 */
export const levels = ['read', 'between', 'beyond', 'behind'] as const;
export type Level = (typeof levels)[number];

export const questionIds = [
  ...(['R1', 'R2', 'R3', 'R4', 'R5', 'R6', 'R7', 'R8', 'R9', 'R10'] as const),
  ...(['C1', 'C2', 'C3', 'C4', 'C5', 'C6', 'C7', 'C8', 'C9', 'C10'] as const),
  ...(['C11', 'C12', 'C13', 'C14'] as const),
  ...(['Y1', 'Y2', 'Y3', 'Y4', 'Y5', 'Y6', 'Y7', 'Y8', 'Y9', 'Y10'] as const),
  ...(['H1', 'H2', 'H3', 'H4', 'H5', 'H6', 'H7', 'H8', 'H9', 'H10'] as const),
] as const;
export type QuestionId = (typeof questionIds)[number];

/**
 * Number ranges: G1 within 20; G2a within 100, no regrouping; G2b with; G2c within 1000; G3 within
 * 1000, times and shared within 100, halves and quarters to count and compare.
 */
export const numberRanges = ['G1', 'G2a', 'G2b', 'G2c', 'G3'] as const;
export type NumberRange = (typeof numberRanges)[number];

/** What stands in a question's blanks, and what an answer is: typed, never text to be parsed. */
export type Told =
  /** Told in the table's unit, as read. */
  | { readonly kind: 'length'; readonly exact: number; readonly unit: Unit; readonly mark: MarkId }
  /** 5 "days". */
  | { readonly kind: 'count'; readonly count: number; readonly of: string }
  | { readonly kind: 'day'; readonly day: CivilDay }
  | { readonly kind: 'days'; readonly days: readonly CivilDay[] }
  | { readonly kind: 'time'; readonly time: ClockTime }
  /** A category, a name, a weather word. */
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'order'; readonly things: readonly Told[] }
  /**
   * Any answer in it is accepted, both ends too. With something left over it is a share that does
   * not come out even, and is told as its low end "and a bit more".
   */
  | {
      readonly kind: 'between';
      readonly low: Told;
      readonly high: Told;
      readonly hasLeftOver?: true | undefined;
    }
  | {
      readonly kind: 'interval';
      readonly from: CivilDay;
      readonly to: CivilDay;
      readonly gapDays: number;
    }
  /** An answer in words, judged by the grown-up: a key into the catalogue of words. */
  | { readonly kind: 'idea'; readonly idea: string };

export interface AskedQuestion {
  readonly template: QuestionId;
  readonly level: Level;
  /** The narrowest range it fits. */
  readonly range: NumberRange;
  /** Named blanks of the wording. */
  readonly blanks: Readonly<Record<string, Told>>;
  readonly answer: Told;
  /** Typical wrong answers, each with what it shows; never equal to the answer. */
  readonly slips: readonly Slip[];
  /** About the whole set of data. */
  readonly wholeSet: boolean;
}

export interface Slip {
  readonly told: Told;
  readonly shows: SlipId;
}

export interface QuestionTemplate {
  readonly id: QuestionId;
  readonly level: Level;
  /** Where it belongs. */
  readonly graphs: readonly GraphKind[];
  /** Where it may be asked. */
  readonly ranges: readonly NumberRange[];
  /** Every valid way to ask it of these facts, in a fixed order; empty when a rule forbids all. */
  ask(facts: LessonFacts): readonly AskedQuestion[];
}
