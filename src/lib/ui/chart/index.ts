export { default as BarGraphFigure } from './BarGraphFigure.svelte';
export { default as LineGraphFigure } from './LineGraphFigure.svelte';
