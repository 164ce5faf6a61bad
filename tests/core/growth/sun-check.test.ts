import { getPosition, getTimes } from 'suncalc';
import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { checkShadow, noonShadow } from '#core/growth';
import { exactPerUnit } from '#core/measure';
import shadow from '../../reference/shadow.json';

const stick = 30 * exactPerUnit('cm');
const shadowOn = (day: string, latitude: number, height = stick) => {
  const found = noonShadow(civilDay(day), latitude, height);
  if (!found.ok) throw new Error(found.error.kind);
  return found.value;
};
const reasonOn = (day: string, latitude: number, height = stick) => {
  const found = noonShadow(civilDay(day), latitude, height);
  return found.ok ? null : found.error.kind;
};
const { elevation_deg: heightTolerance, azimuth_deg: azimuthTolerance } = shadow.tolerances;

describe('the library that knows where the sun is', () => {
  // Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302, worked example of App. A.5.
  it('agrees with the published worked example, refraction included', () => {
    const [example] = shadow.published;
    const at = new Date('2003-10-17T19:30:30Z');
    const { altitude, azimuth } = getPosition(at, 39.742476, -105.1786);
    expect(Math.abs(altitude - example!.apparent_elevation!)).toBeLessThan(heightTolerance);
    expect(Math.abs(azimuth - example!.azimuth!)).toBeLessThan(azimuthTolerance);
  });

  // Positions recomputed with astropy 5.2.1 and astronomy-engine 2.1.19 (apparent heights).
  it.each(shadow.positions)('agrees at $id', (place) => {
    const { altitude, azimuth } = getPosition(new Date(place.utc), place.lat, place.lon);
    const apparent = place['elev_apparent_deg (astronomy-engine, standard refraction)'];
    expect(Math.abs(altitude - apparent)).toBeLessThan(heightTolerance);
    // Near the zenith the azimuth swings, so it is not held against the reference there.
    const off = Math.abs(azimuth - place.azimuth_from_north_deg);
    if (apparent <= 85) expect(off).toBeLessThan(azimuthTolerance);
  });
});

describe('the library that knows when the sun is highest', () => {
  // Solar noon recomputed with astropy 5.2.1, to the second; heights there are geometric, and
  // refraction lifts them by 1.02 / tan(h + 10.3 / (h + 5.11)) minutes (Meeus 16.4).
  it.each(shadow.solar_noon)('agrees at $place on $date', (noon) => {
    const { solarNoon } = getTimes(new Date(`${noon.date}T12:00:00Z`), noon.lat, noon.lon);
    const secondsOff = (solarNoon.getTime() - Date.parse(noon.solar_noon_utc)) / 1000;
    expect(Math.abs(secondsOff)).toBeLessThan(3);
    const height = noon.elevation_geometric_deg;
    const lifted = 1.02 / 60 / Math.tan(((height + 10.3 / (height + 5.11)) * Math.PI) / 180);
    const { altitude } = getPosition(solarNoon, noon.lat, noon.lon);
    expect(Math.abs(altitude - height - lifted)).toBeLessThan(heightTolerance);
  });
});

describe('the shortest shadow of a day', () => {
  // Sun at its highest, recomputed with astropy 5.2.1: geometric, so refraction (0.02 degrees at
  // 40, 0.04 at 26) comes on top of the tolerance; and the reference is for the place's longitude,
  // while a latitude alone leaves half a day of the sun's yearly way, at most 0.2 degrees.
  it.each(shadow.solar_noon)('at $place on $date is the published one', (noon) => {
    const found = shadowOn(noon.date, noon.lat);
    expect(Math.abs(found.sunHeightDegrees - noon.elevation_geometric_deg)).toBeLessThan(
      0.2 + 0.04 + heightTolerance,
    );
    const expected = noon.shadow_per_unit_height * stick;
    // The published figure has four places.
    expect(expected).toBeGreaterThan(found.lowExact * 0.998 - 0.0001 * stick);
    expect(expected).toBeLessThan(found.highExact * 1.002 + 0.0001 * stick);
    expect(found.lowExact).toBeLessThanOrEqual(found.exact);
    expect(found.highExact).toBeGreaterThanOrEqual(found.exact);
  });

  // Height at noon is 90 - |latitude - declination|; at a solstice the declination is 23.44.
  it.each(
    shadow.noon_rule.rows.filter(
      ({ dec, noon_elev }) => dec !== 0 && noon_elev > 5 && noon_elev < 80,
    ),
  )('at latitude $lat with the sun at $dec follows the rule of noon', (row) => {
    const found = shadowOn(row.dec > 0 ? '2024-06-20' : '2024-12-21', row.lat);
    // At a solstice the sun's yearly way stands still; refraction is 0.06 degrees at 15.
    expect(Math.abs(found.sunHeightDegrees - row.noon_elev)).toBeLessThan(0.06 + heightTolerance);
    expect(found.exact / stick).toBeCloseTo(row.shadow_per_unit!, row.noon_elev < 20 ? 1 : 2);
  });

  // stick / tan(height): the table's 45, 30 and 60 degrees, from the heights found.
  it('is the stick’s length divided by the tangent of the height', () => {
    for (const latitude of [10, 20, 40, 51.5, 60]) {
      const { sunHeightDegrees, exact } = shadowOn('2024-12-21', latitude);
      const below = shadow.trig_table.findLast((row) => row.elev_deg <= sunHeightDegrees)!;
      const above = shadow.trig_table.find((row) => row.elev_deg > sunHeightDegrees)!;
      expect(exact / stick).toBeLessThanOrEqual(below.shadow_per_unit!);
      expect(exact / stick).toBeGreaterThanOrEqual(above.shadow_per_unit!);
    }
  });

  it('doubles with the stick, and is a whole number of nanometres', () => {
    const [one, two] = [stick, 2 * stick].map((height) => shadowOn('2026-06-10', 40.7, height));
    expect(Math.abs(two!.exact - 2 * one!.exact)).toBeLessThanOrEqual(1);
    expect(Number.isInteger(one!.exact)).toBe(true);
  });

  it('has a range that holds every longitude, and half a step of the mark that is read', () => {
    const day = civilDay('2024-03-20');
    const plain = noonShadow(day, 40.7128, stick);
    const read = noonShadow(day, 40.7128, stick, '1 cm');
    if (!plain.ok || !read.ok) throw new Error('no shadow');
    expect(read.value.highExact - plain.value.highExact).toBe(exactPerUnit('mm') * 5);
    expect(plain.value.lowExact - read.value.lowExact).toBe(exactPerUnit('mm') * 5);
    // Half a day at the equinox moves the sun by 0.2 degrees: under 1 % of this shadow.
    expect(plain.value.highExact / plain.value.lowExact).toBeLessThan(1.02);
    expect(plain.value.highExact).toBeGreaterThan(plain.value.lowExact);
  });

  it('is told in both halves of the earth', () => {
    const [north, south] = [shadowOn('2024-12-21', 40), shadowOn('2024-06-20', -40)];
    expect(Math.abs(north.exact - south.exact) / north.exact).toBeLessThan(0.002);
  });

  it.each([
    // 70 N in December: the sun stays 3.44 degrees below the horizon.
    ['sun-does-not-rise', '2024-12-21', 70],
    ['sun-does-not-rise', '2024-06-20', -80],
    ['sun-does-not-rise', '2024-12-21', 90],
    // Reykjavik, 64.1 N: 2.4 degrees at noon.
    ['sun-too-low', '2024-12-21', 64.1466],
    // Quito at the equinox; Honolulu in July.
    ['sun-nearly-overhead', '2024-09-22', -0.1807],
    ['sun-nearly-overhead', '2025-07-04', 21.3069],
    ['latitude-out-of-range', '2024-06-20', 90.5],
    ['latitude-out-of-range', '2024-06-20', -91],
    ['latitude-out-of-range', '2024-06-20', Number.NaN],
  ] as const)('is a reason instead of a number: %s on %s at %d', (kind, day, latitude) => {
    expect(reasonOn(day, latitude)).toBe(kind);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('needs a stick: %d is none', (height) => {
    expect(reasonOn('2024-06-20', 40, height)).toBe('no-stick');
  });

  it('is found for the first and the last day the calendar knows', () => {
    for (const day of ['1900-01-01', '2199-12-31']) {
      // 40 N at New Year: 90 - 40 - 23.0 degrees.
      expect(Math.abs(shadowOn(day, 40).sunHeightDegrees - 27)).toBeLessThan(0.3);
    }
  });
});

describe('a measured shadow beside the expected one', () => {
  const expected = 61 * exactPerUnit('cm');

  it.each([
    [expected, 'fits'],
    [expected * 1.1, 'fits'],
    [expected * 0.9, 'fits'],
    [expected * 1.1 + 1000, 'longer'],
    [expected * 0.9 - 1000, 'shorter'],
    // Inches written for centimetres.
    [expected / 2.54, 'shorter'],
    [expected * 2.54, 'longer'],
  ] as const)('of %d says %s', (measured, kind) => {
    const found = checkShadow(Math.round(measured), expected);
    expect(found.ok && found.value.kind).toBe(kind);
    expect(found.ok && found.value.ratio).toBeCloseTo(measured / expected, 6);
  });

  it.each([
    [0, 5],
    [5, 0],
    [-5, 5],
    [Number.NaN, 5],
    [5, Number.NaN],
    [Number.POSITIVE_INFINITY, 5],
  ])('says nothing of %d beside %d', (measured, from) => {
    expect(checkShadow(measured, from)).toEqual({ ok: false, error: { kind: 'not-a-length' } });
  });

  it('fits for a stick that leans a little on ground that slopes a little', () => {
    const radians = (degrees: number) => (degrees * Math.PI) / 180;
    const sun = radians(45);
    // The tip of a stick leaning away from the sun by 3 degrees; ground falling away by 2.
    const leaning = stick * (Math.sin(radians(3)) + Math.cos(radians(3)) / Math.tan(sun));
    const sloping = (stick * Math.cos(sun)) / Math.sin(sun - radians(2));
    for (const length of [leaning, sloping]) {
      expect(checkShadow(length, stick / Math.tan(sun))).toMatchObject({ value: { kind: 'fits' } });
      expect(length / (stick / Math.tan(sun))).toBeGreaterThan(1.03);
    }
  });
});
