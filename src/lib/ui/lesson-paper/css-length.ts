/** A CSS inch is 96 pixels, and 25.4 mm (CSS Values and Units 4, section 6.2). */
export const mmOfPixels = (pixels: number): number => (pixels / 96) * 25.4;
