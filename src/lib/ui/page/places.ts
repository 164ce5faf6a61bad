import type { IconName } from '#ui/icons';

/** A page of the notebook, and whose side of it the page is on. */
export interface Place {
  readonly path: `/${string}`;
  readonly name: string;
  readonly icon: IconName;
  readonly side: 'child' | 'grown-up';
}

export const places: readonly Place[] = [
  { path: '/today', name: 'Today', icon: 'today', side: 'child' },
  { path: '/log', name: 'Log', icon: 'log', side: 'child' },
  { path: '/measure', name: 'Measure', icon: 'ruler', side: 'child' },
  { path: '/draw', name: 'Draw', icon: 'draw', side: 'child' },
  { path: '/talk', name: 'Talk', icon: 'talk', side: 'child' },
  { path: '/lessons', name: 'Lessons', icon: 'lessons', side: 'grown-up' },
  { path: '/growth', name: 'Growth', icon: 'growth', side: 'grown-up' },
  { path: '/records', name: 'Records', icon: 'records', side: 'grown-up' },
  { path: '/set-up', name: 'Set-up', icon: 'set-up', side: 'grown-up' },
];
