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
