import { getPosition, getTimes } from 'suncalc';
import { failed, ok, type Result } from '#core/base';
import { civilDay, daysBetween, type CivilDay } from '#core/calendar';
import { markById, type MarkId } from '#core/measure';

/** What the shortest shadow of a day should about be, for a grown-up who wants to check. */
export interface NoonShadow {
  /** How high the sun stands at its highest, in degrees above the horizon, as it is seen. */
  readonly sunHeightDegrees: number;
  /** Whole nanometres, as are the ends of the range a reading can be expected in. */
  readonly exact: number;
  readonly lowExact: number;
  readonly highExact: number;
}

/**
 * The shortest shadow of an upright stick on level ground on a day: stick / tan(sun's greatest
 * height). A latitude is enough and the place stays private: longitude only moves the clock time
 * of the greatest height, and with it the moment of the sun's slow yearly way, by at most half a
 * day and 0.2 degrees. `exact` is for the middle longitude; the range holds every longitude and,
 * where the mark of the reading is given, half a step of it. A latitude to the nearest degree is
 * good to about 2 % of the shadow at a sun 45 degrees high.
 *
 * Latitude in degrees, north above 0; the stick in whole nanometres. Errors:
 * `latitude-out-of-range` (not from -90 to 90), `no-stick` (no height above 0); and, where no
 * number is worth checking, the reason: `sun-does-not-rise`, `sun-too-low` (below 5 degrees: more
 * than eleven sticks long, and a hill is in the way), `sun-nearly-overhead` (above 80 degrees:
 * under a fifth of the stick, so that a lean nobody sees decides; and at noon between the tropics
 * it may point the other way).
 * Source: positions by the formulas of J. Meeus, Astronomical Algorithms, with refraction, from
 * the library suncalc, which counts in degrees.
 * @example
 * noonShadow('2024-12-21', 70, 300_000_000).error.kind // => 'sun-does-not-rise'
 * Math.round(noonShadow('2024-12-21', 40.7128, 300_000_000).value.exact / 1_000_000) // => 618
 */
export const noonShadow = (
  day: CivilDay,
  latitudeDegrees: number,
  stickExact: number,
  mark?: MarkId,
): Result<NoonShadow, NoonShadowError> => {
  if (!(Math.abs(latitudeDegrees) <= 90)) return failed({ kind: 'latitude-out-of-range' });
  if (!(stickExact > 0 && Number.isFinite(stickExact))) return failed({ kind: 'no-stick' });
  const [sunHeightDegrees, ...others] = [0, -180, 180].map((longitude) =>
    greatestSunHeight(day, latitudeDegrees, longitude),
  ) as [number, number, number];
  const reason = reasonAgainst(sunHeightDegrees);
  if (reason) return failed({ kind: reason, sunHeightDegrees });
  const halfStep = mark ? markById(mark).exact / 2 : 0;
  const exact = shadowOf(stickExact, sunHeightDegrees);
  const lengths = [exact, ...others.map((height) => shadowOf(stickExact, height))];
  return ok({
    ...{ sunHeightDegrees, exact },
    lowExact: Math.max(0, Math.min(...lengths) - halfStep),
    highExact: Math.max(...lengths) + halfStep,
  });
};

/**
 * A measured shadow beside the expected one: it `fits` within a tenth, or is `longer` or
 * `shorter`; `ratio` is measured by expected. Errors: `not-a-length`, when either is not above 0.
 *
 * Why a tenth (our own rule, no source): with the sun 45 degrees high a stick that leans by 3
 * degrees changes the shadow by 5 %, ground that slopes by 2 degrees by 3 %, the half degree that
 * the sun is wide blurs the tip by 1 %, and a quarter of an hour from noon adds less than 1 %.
 * Together that is a tenth, with nothing done carelessly; a stick read in the other unit, or a
 * shadow of another hour, is far more.
 * @example
 * checkShadow(640_000_000, 618_000_000).value.kind // => 'fits'
 * checkShadow(900_000_000, 618_000_000).value.kind // => 'longer'
 */
export const checkShadow = (
  measuredExact: number,
  expectedExact: number,
): Result<ShadowCheck, { readonly kind: 'not-a-length' }> => {
  const ratio = measuredExact / expectedExact;
  if (!(measuredExact > 0 && expectedExact > 0 && Number.isFinite(ratio))) {
    return failed({ kind: 'not-a-length' });
  }
  if (Math.abs(measuredExact - expectedExact) * 10 <= expectedExact) {
    return ok({ ratio, kind: 'fits' });
  }
  return ok({ ratio, kind: ratio > 1 ? 'longer' : 'shorter' });
};

export interface ShadowCheck {
  readonly ratio: number;
  readonly kind: 'fits' | 'longer' | 'shorter';
}

/** The moment is made from the day alone, so that no clock and no time zone takes part. */
const greatestSunHeight = (day: CivilDay, latitude: number, longitude: number): number => {
  const daysSince1970 = daysBetween(civilDay('1970-01-01'), day);
  const noonByLongitude = (daysSince1970 + 0.5 - longitude / 360) * 86_400_000;
  const { solarNoon } = getTimes(new Date(noonByLongitude), latitude, longitude);
  return getPosition(solarNoon, latitude, longitude).altitude;
};

const shadowOf = (stickExact: number, sunHeightDegrees: number): number =>
  Math.round(stickExact / Math.tan((sunHeightDegrees * Math.PI) / 180));

const reasonAgainst = (sunHeightDegrees: number): NoNoonShadow | null => {
  // The sun's upper edge is about 0.27 degrees above its middle.
  if (sunHeightDegrees < -0.27) return 'sun-does-not-rise';
  if (sunHeightDegrees < 5) return 'sun-too-low';
  return sunHeightDegrees > 80 ? 'sun-nearly-overhead' : null;
};

type NoNoonShadow = 'sun-does-not-rise' | 'sun-too-low' | 'sun-nearly-overhead';

export type NoonShadowError =
  | { readonly kind: 'latitude-out-of-range' }
  | { readonly kind: 'no-stick' }
  | { readonly kind: NoNoonShadow; readonly sunHeightDegrees: number };
