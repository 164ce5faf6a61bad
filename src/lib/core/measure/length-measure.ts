import configureMeasurements, { type Measure, type Unit as LibraryUnit } from 'convert-units';
import { nanometresByUnit, type LengthUnit } from './unit';

/**
 * The lengths given to convert-units. Its own catalogue joins the systems by 1 m = 3.28084 ft,
 * which is 3.2e-8 off (100 in comes out as 253.99999 cm). Here every unit stands in one system on
 * whole nanometres, so that no step between two units is rounded before the last.
 */
const unit = (singular: string, plural: string, nanometres: number): LibraryUnit => ({
  name: { singular, plural },
  to_anchor: nanometres,
});

const lengthMeasure = (): Measure<'nanometres', LengthUnit | 'nm'> => ({
  systems: {
    nanometres: {
      nm: unit('nanometre', 'nanometres', 1),
      mm: unit('millimetre', 'millimetres', nanometresByUnit.mm),
      cm: unit('centimetre', 'centimetres', nanometresByUnit.cm),
      m: unit('metre', 'metres', nanometresByUnit.m),
      in: unit('inch', 'inches', nanometresByUnit.in),
      ft: unit('foot', 'feet', nanometresByUnit.ft),
      yd: unit('yard', 'yards', nanometresByUnit.yd),
    },
  },
});

/** Marked as pure, so that pages that convert nothing are sent no converter. */
export const lengthConverter = /* @__PURE__ */ configureMeasurements<
  'length',
  'nanometres',
  LengthUnit | 'nm'
>({ length: /* @__PURE__ */ lengthMeasure() });
