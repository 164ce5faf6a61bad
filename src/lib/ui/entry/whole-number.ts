/**
 * The whole number in a small field: null while the field is empty, and 'odd' where what stands
 * there is no whole number between the least and the most.
 */
export function wholeNumberIn(text: string, least: number, most: number): number | null | 'odd' {
  const written = text.trim();
  if (written === '') return null;
  if (!/^\d{1,4}$/.test(written)) return 'odd';
  const value = Number(written);
  return value >= least && value <= most ? value : 'odd';
}
