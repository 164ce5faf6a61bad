export { default as Icon } from './Icon.svelte';
export { iconNames, isIconName, type IconName } from './icon-paths';
