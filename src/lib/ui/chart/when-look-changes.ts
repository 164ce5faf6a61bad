/**
 * Calls back whenever a canvas has to be drawn in other colours or letters: the theme changed, the
 * page's letters have arrived, or it goes to the printer and comes back. Returns the way to stop.
 */
export function whenLookChanges(redraw: (isForPaper: boolean) => void): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  const onScreen = (): void => {
    if (!signal.aborted) redraw(false);
  };
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', onScreen, { signal });
  addEventListener('beforeprint', () => redraw(true), { signal });
  addEventListener('afterprint', onScreen, { signal });
  const chosenTheme = new MutationObserver(onScreen);
  chosenTheme.observe(document.documentElement, { attributeFilter: ['data-theme'] });
  signal.addEventListener('abort', () => chosenTheme.disconnect());
  if (document.fonts.status === 'loading') void document.fonts.ready.then(onScreen);
  return () => stop.abort();
}
