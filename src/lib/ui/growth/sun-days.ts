import { checkShadow, noonShadow, type NoonShadowError, type ShadowDay } from '#core/growth';
import type { NoonShadow, ShadowCheck } from '#core/growth';
import type { Series, SeriesPoint } from '#core/series';

/** One day's shortest shadow beside what the sun makes of the stick, or why there is none. */
export interface SunDay {
  readonly day: ShadowDay['day'];
  readonly shortest: SeriesPoint;
  readonly found:
    | { readonly ok: true; readonly expected: NoonShadow; readonly check: ShadowCheck | null }
    | { readonly ok: false; readonly error: NoonShadowError };
}

/** The newest day first. Loaded when it is asked for: the sun's table stays off the page. */
export const sunDaysOf = (
  days: readonly ShadowDay[],
  { specimen }: Series,
  latitudeDegrees: number,
): readonly SunDay[] =>
  days.toReversed().flatMap(({ day, shortest: [shortest] }): readonly SunDay[] => {
    if (!shortest) return [];
    const stickExact = specimen.standHeight?.exact ?? 0;
    const noon = noonShadow(day, latitudeDegrees, stickExact, shortest.mark);
    if (!noon.ok) return [{ day, shortest, found: noon }];
    const check = checkShadow(shortest.exact, noon.value.exact);
    const found = { ok: true, expected: noon.value, check: check.ok ? check.value : null } as const;
    return [{ day, shortest, found }];
  });
