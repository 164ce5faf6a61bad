import type { DrawnCross } from '#core/graphs';
import type { DataLook } from '#ui/look';

/** A mark of a line plot around the point 0 0, reaching so far to each side. */
export const crossPath = (look: DrawnCross['look'], reach: number): string => {
  if (look === 'cross')
    return `M${-reach} ${-reach}L${reach} ${reach}M${-reach} ${reach}L${reach} ${-reach}`;
  if (look === 'box') return `M${-reach} ${-reach}H${reach}V${reach}H${-reach}z`;
  return `M${-reach} 0a${reach} ${reach} 0 1 0 ${reach * 2} 0a${reach} ${reach} 0 1 0 ${-reach * 2} 0z`;
};

/** A point of a line graph around 0 0, about 3 mm across. */
export const pointPaths: Readonly<Record<DataLook['shape'], string>> = {
  circle: 'M-1.5 0a1.5 1.5 0 1 0 3 0a1.5 1.5 0 1 0-3 0z',
  square: 'M-1.4-1.4h2.8v2.8h-2.8z',
  triangle: 'M0-1.9L1.9 1.4h-3.8z',
  diamond: 'M0-2L2 0 0 2-2 0z',
};
