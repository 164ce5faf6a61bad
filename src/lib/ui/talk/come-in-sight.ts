/** Brings a question to the top of what can be seen: right under the graph, where that stands above. */
export function comeInSight(panel: HTMLElement): void {
  const graph = panel.parentElement?.querySelector<HTMLElement>('[data-beside]');
  const isStacked = graph !== null && graph !== undefined && graph.offsetWidth >= panel.offsetWidth;
  const above = isStacked && getComputedStyle(graph).position === 'sticky' ? graph.offsetHeight : 0;
  panel.style.scrollMarginTop = `${above + 12}px`;
  panel.scrollIntoView({ block: isStacked ? 'start' : 'nearest' });
}
