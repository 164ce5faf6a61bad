export { default as Ruler } from './Ruler.svelte';
export { default as RulerFace } from './RulerFace.svelte';
export {
  nearestMark,
  rulerTicks,
  wholeStepExact,
  type RulerShape,
  type RulerTick,
  type TickRank,
} from './ruler-ticks';
