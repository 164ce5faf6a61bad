import fc from 'fast-check';
import { pointsOn } from './log-points';

/** Any log in whole millimetres, with days repeated and out of order, for properties. */
export const someLog = fc
  .array(fc.tuple(fc.nat({ max: 60 }), fc.nat({ max: 900 })), { minLength: 1, maxLength: 40 })
  .map((readings) =>
    pointsOn(
      readings.map(([day]) => day),
      readings.map(([, mm]) => mm),
      'mm',
      '1 mm',
    ),
  );
