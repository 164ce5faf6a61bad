import type { DrawingLevel, TableChoice } from '#core/graphs';

/** A scale by fives and more is given by a grown-up: it never begins as empty paper. */
export const levelFor = (choice: TableChoice, chosen: DrawingLevel): DrawingLevel =>
  choice.givenSteps && chosen === 'empty-paper' ? 'scale-given' : chosen;
