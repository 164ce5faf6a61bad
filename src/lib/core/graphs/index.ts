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
