/** How thick everything of a ruler's picture is, in pixels on a screen and millimetres on paper. */
export const pictureMeasures = (on: 'screen' | 'paper'): PictureMeasures => {
  const unit = on === 'screen' ? 1 : millimetresPerPixel;
  const [pad, strip, body, line, type] = on === 'screen' ? [24, 24, 72, 1.8, 20] : paperPixels;
  return {
    pad: pad * unit,
    strip: strip * unit,
    body: body * unit,
    height: (strip + body) * unit,
    line: line * unit,
    type: type * unit,
  };
};

export interface PictureMeasures {
  /** Beside the piece, for its broken end. */
  readonly pad: number;
  readonly strip: number;
  readonly body: number;
  readonly height: number;
  readonly line: number;
  readonly type: number;
}

/** 96 CSS pixels are an inch (CSS Values and Units 4, section 6.2). */
const millimetresPerPixel = 25.4 / 96;
const paperPixels = [16, 20, 52, 1.2, 17] as const;
