export { calendarTicks } from './calendar-ticks';
export { clockGraphOf, type ClockGraphOptions } from './clock-graph';
export { kindTally, type KindTally } from './kind-tally';
export type {
  Axis,
  AxisTick,
  BaseMark,
  GraphJoin,
  GraphLine,
  GraphPoint,
  GraphTrend,
  LineGraph,
} from './line-graph';
export { niceRange, niceStep, type NiceRange, type NiceStep } from './nice-step';
export { timeGraphOf, type TimeGraphLine, type TimeGraphOptions } from './time-graph';
export { valueAxis } from './value-axis';
export {
  drawingLevels,
  symbolNames,
  type DrawnBar,
  type DrawnCross,
  type DrawnJoin,
  type DrawnKey,
  type DrawnPoint,
  type DrawnSide,
  type DrawnSymbol,
  type Drawing,
  type DrawingLevel,
  type SymbolName,
} from './drawing';
export type { FoundMistake, Look, LookAt, MistakeId, RightPart } from './found-mistake';
export {
  graphKinds,
  type CountTable,
  type GraphKind,
  type GraphTable,
  type MeasureTable,
  type TimeTable,
  type ValueRow,
  type ValueTable,
} from './graph-table';
export type { GraphScale, RightGraph } from './right-graph';
export { drawRight, type DrawRightOptions } from './draw-right';
export { exactOfLabel } from './exact-of-label';
export { labelsOf, stepsOf, type StepRange } from './labels-of';
export { mostPicturesAtEase, mostPlacesAcross, mostSquaresUp, mostStepsAcross } from './paper-room';
export { keyIsRight, keyValues, pictureKey } from './picture-key';
export { mostKindsByStage } from './count-parts';
export type { NoGraph } from './no-graph';
export { rightGraphOf } from './right-graph-of';
export { countScale, lengthScale, plotScale, type TooTall, type TooWide } from './scale-for';
export { unitWords } from './unit-words';
export { barsInSteps, type BarsInSteps } from './bars-in-steps';
export { acrossOf, alongOf, boardSlots, type BoardSheet, type BoardSlot } from './board-slots';
export { decodeDrawing, type DrawingError } from './decode-drawing';
export {
  turned,
  withBar,
  withCross,
  withKey,
  withoutBar,
  withoutCross,
  withPlace,
  withSeriesKey,
  withSideLabel,
  withTick,
  withTitle,
  type NumberSide,
} from './drawing-edits';
export { drawnRow, drawnRows, type DrawnRow } from './drawn-rows';
export { begunDrawing, emptyDrawing } from './empty-drawing';
export { middleOfSquare, snapToPaper, squaresText } from './paper-lines';
export {
  indexOfPoint,
  pointsInOrder,
  withJoin,
  withNextJoin,
  withoutJoin,
  withoutPoint,
  withPoint,
} from './point-edits';
export {
  withLastHalved,
  withNextSymbol,
  withoutLastSymbol,
  withSymbol,
  withSymbolName,
} from './symbol-edits';
export { drawingSteps, isStepBegun, type DrawingStep } from './drawing-steps';
export { clearedAt, halvedAt, loweredAt, raisedAt, tappedAt, type DrawingHand } from './slot-edits';
export { decodeTableChoice, type ChoiceError } from './decode-table-choice';
export { dayLabels } from './place-labels';
export { tableSources, type TableChoice, type TableSource, type ToldIn } from './table-choice';
export { tableOf } from './table-of';
export { toldValue, type ToldValue } from './told-value';
export { nextLabel } from './next-label';
export { isBeingDrawn, isDrawingFinished } from './being-drawn';
export { lastDrawing } from './last-drawing';
export { stepToLookAt } from './step-to-look-at';
export { graphFit, graphsByForm, type GraphFit } from './graph-fit';
export { notRightFor, type NotRight, type NotRightReason } from './not-right-for';
export { fewestByForm, fewestForTable, numbersIn, readinessOf } from './readiness-of';
export { standardCodes, standardsOf, type StandardCode, type Subject } from './standards-of';
export { tableChoicesOf } from './table-choices-of';
export type * from './table-offer';
export { sortCards, type SortCard, type SortStrip } from './sort-cards';
export {
  isTallyTable,
  sortedOtherwise,
  tallyTable,
  tallyUses,
  type ChildTally,
  type SortedOtherwise,
  type TallyCard,
  type TallyTable,
  type TallyUse,
} from './child-tally';
export {
  sortingStep,
  tallyToSort,
  withoutLastPick,
  withPick,
  type SortingStep,
} from './sorting-steps';
export { keptTally, type TallyError } from './kept-tally';
export { tableOfDrawing, type TableOfDrawing } from './table-of-drawing';
export { lookAtBarGraph } from './look-at-bar-graph';
export { lookAtDrawing } from './look-at-drawing';
export { lookAtLineGraph } from './look-at-line-graph';
export { lookAtLinePlot } from './look-at-line-plot';
export { lookAtPictureGraph } from './look-at-picture-graph';
