import type { DrawnKey } from '#core/graphs';

/**
 * What one picture stands for: "1 day", "? days". What is written may hold the number already, as
 * on the computer's own drawing; it is said once.
 */
export function keyWords({ value, text }: Pick<DrawnKey, 'value' | 'text'>): string {
  if (/^\d/.test(text)) return text;
  return `${value ?? '?'} ${text}`.trim();
}
