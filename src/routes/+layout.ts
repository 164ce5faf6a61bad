import { openNotebook } from '#notebook';

// The notebook lives in the browser: there is nothing for a server to draw.
export const ssr = false;
export const prerender = true;

export const load = ({ fetch }) => openNotebook(fetch);
