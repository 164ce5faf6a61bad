import { formatExact, formatExactNumber, parseMeasured } from '#core/measure';
import { exactOfLabel } from './exact-of-label';

/**
 * The ticks of a side with the numbers a child meant: `11/2` is eleven halves, and it is how many
 * children write one and a half. Where it stands says which: the one that lies nearer to the line
 * through the two closest numbers that can be but one. A scale of such fractions alone is read as
 * it stands. Not part of the public door.
 */
export const meantTicks = <Tick extends { readonly at: number; readonly text: string }>(
  ticks: readonly Tick[],
  table: Parameters<typeof exactOfLabel>[1],
): readonly Tick[] => {
  if (!ticks.some(({ text }) => mayBeSqueezed.test(text))) return ticks;
  const clear = ticks.flatMap(({ at, text }): readonly ClearTick[] => {
    const exact = squeezedIn(text, table) ? null : exactOfLabel(text, table);
    return exact === null ? [] : [{ at, exact }];
  });
  return ticks.map((tick) => {
    const squeezed = squeezedIn(tick.text, table);
    const written = exactOfLabel(tick.text, table);
    const wanted = squeezed && wantedAt(tick.at, clear);
    if (!squeezed || written === null || wanted === null) return tick;
    const isNearer = Math.abs(squeezed.exact - wanted) < Math.abs(written - wanted);
    return isNearer ? { ...tick, text: squeezed.text } : tick;
  });
};

interface ClearTick {
  readonly at: number;
  readonly exact: number;
}

/** Two digits or more above the line. */
const mayBeSqueezed = /\d\d\s*[/\u2044\u2215]/;

/** `11/2` as `1 1/2`, where it can be read so. */
const squeezedIn = (
  text: string,
  table: Parameters<typeof exactOfLabel>[1],
): { readonly text: string; readonly exact: number } | null => {
  if (table.form === 'counts' || !mayBeSqueezed.test(text)) return null;
  const read = parseMeasured(text, { unit: table.unit });
  if (read.ok || read.error.kind !== 'ambiguous') return null;
  const written = exactOfLabel(text, table);
  const meant = read.error.choices?.find(({ exact }) => exact !== written);
  if (written === null || !meant) return null;
  const { exact, unit, mark } = meant;
  const write = unit === table.unit ? formatExactNumber : formatExact;
  return { exact, text: write(exact, unit, mark) };
};

/** What a number would be here, by the two closest clear ones; null with fewer. */
const wantedAt = (at: number, clear: readonly ClearTick[]): number | null => {
  const [near, far] = clear.toSorted(
    (one, other) => Math.abs(one.at - at) - Math.abs(other.at - at),
  );
  if (!near || !far || near.at === far.at) return null;
  return near.exact + ((at - near.at) * (far.exact - near.exact)) / (far.at - near.at);
};
