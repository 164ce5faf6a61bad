export { default as LineGraphFigure } from './LineGraphFigure.svelte';
