/**
 * Contrast of two colours as WCAG 2.2 defines it: relative luminance of sRGB, then
 * (lighter + 0.05) / (darker + 0.05).
 */
export const contrast = (one: string, other: string): number => {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
};

const luminance = (hex: string): number => {
  const channels = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255);
  const [red = 0, green = 0, blue = 0] = channels.map((value) =>
    value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};
