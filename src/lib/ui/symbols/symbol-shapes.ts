import type { SymbolName } from '#core/graphs';

/**
 * Our own drawings for picture graphs, on a 24 by 24 square with its middle at 12. All fill about
 * the same room, so that equal counts make equal rows; all but the boot are the same left and
 * right, so that half of one is half of its room. The half is the left side, cut straight down.
 */
export interface SymbolShape {
  readonly whole: string;
  readonly half: string;
  /** Fine lines inside, and those of them that the half keeps. */
  readonly lines: string;
  readonly halfLines: string;
}

export const symbolShapes: Readonly<Record<SymbolName, SymbolShape>> = {
  leaf: {
    whole:
      'M12 1.2C6 4.2 2.6 8 2.6 12.2C2.6 16.4 6.2 19 12 20.4C17.8 19 21.4 16.4 21.4 12.2C21.4 8 18 4.2 12 1.2z',
    half: 'M12 1.2C6 4.2 2.6 8 2.6 12.2C2.6 16.4 6.2 19 12 20.4z',
    lines: 'M12 5.5v14M12 11.5 7.4 8.4M12 11.5l4.6-3.1M12 16.4l-5.6-3.6M12 16.4l5.6-3.6',
    halfLines: 'M12 11.5 7.4 8.4M12 16.4l-5.6-3.6',
  },
  drop: {
    whole:
      'M12 1.3C9.2 5.6 3.7 9.6 3.7 14.6C3.7 19.2 7.4 22.6 12 22.6C16.6 22.6 20.3 19.2 20.3 14.6C20.3 9.6 14.8 5.6 12 1.3z',
    half: 'M12 1.3C9.2 5.6 3.7 9.6 3.7 14.6C3.7 19.2 7.4 22.6 12 22.6z',
    lines: '',
    halfLines: '',
  },
  sun: {
    whole:
      'M12 .7L9.93 4.27L6.35 2.21L6.34 6.34L2.21 6.35L4.27 9.93L.7 12L4.27 14.07L2.21 17.65L6.34 17.66L6.35 21.79L9.93 19.73L12 23.3L14.07 19.73L17.65 21.79L17.66 17.66L21.79 17.65L19.73 14.07L23.3 12L19.73 9.93L21.79 6.35L17.66 6.34L17.65 2.21L14.07 4.27z',
    half: 'M12 .7L9.93 4.27L6.35 2.21L6.34 6.34L2.21 6.35L4.27 9.93L.7 12L4.27 14.07L2.21 17.65L6.34 17.66L6.35 21.79L9.93 19.73L12 23.3z',
    lines: 'M17.2 12a5.2 5.2 0 1 1-10.4 0 5.2 5.2 0 0 1 10.4 0z',
    halfLines: 'M12 6.8a5.2 5.2 0 0 0 0 10.4',
  },
  cloud: {
    whole:
      'M12 3.9C8.9 3.9 6.7 5.8 6.1 8.4C3.2 8.6 1 10.8 1 13.7C1 16.8 3.4 19.3 6.7 19.3L17.3 19.3C20.6 19.3 23 16.8 23 13.7C23 10.8 20.8 8.6 17.9 8.4C17.3 5.8 15.1 3.9 12 3.9z',
    half: 'M12 3.9C8.9 3.9 6.7 5.8 6.1 8.4C3.2 8.6 1 10.8 1 13.7C1 16.8 3.4 19.3 6.7 19.3L12 19.3z',
    lines: '',
    halfLines: '',
  },
  boot: {
    whole: 'M3.4 1.8h9.4v9.4c1.4 1.5 3.4 2 5.4 2.7 2.9.9 4.2 2.4 4.2 5.2v3.1H3.4z',
    half: 'M3.4 1.8H12v20.4H3.4z',
    lines: 'M4.3 19h17.2M4.3 5.2h7.6',
    halfLines: 'M4.3 19h6.8M4.3 5.2h6.8',
  },
  seed: {
    whole:
      'M12 8.4C10.8 6.1 8.9 4.8 6.8 4.8C3.4 4.8 1.1 7.7 1.1 11.4C1.1 16.2 5.6 19.6 12 19.6C18.4 19.6 22.9 16.2 22.9 11.4C22.9 7.7 20.6 4.8 17.2 4.8C15.1 4.8 13.2 6.1 12 8.4z',
    half: 'M12 8.4C10.8 6.1 8.9 4.8 6.8 4.8C3.4 4.8 1.1 7.7 1.1 11.4C1.1 16.2 5.6 19.6 12 19.6z',
    lines: '',
    halfLines: '',
  },
  flake: {
    whole:
      'M12 .6L9.65 2.6L9.65 7.93L5.03 5.26L2.13 6.3L2.68 9.34L7.3 12L2.68 14.66L2.13 17.7L5.03 18.74L9.65 16.07L9.65 21.4L12 23.4L14.35 21.4L14.35 16.07L18.97 18.74L21.87 17.7L21.32 14.66L16.7 12L21.32 9.34L21.87 6.3L18.97 5.26L14.35 7.93L14.35 2.6z',
    half: 'M12 .6L9.65 2.6L9.65 7.93L5.03 5.26L2.13 6.3L2.68 9.34L7.3 12L2.68 14.66L2.13 17.7L5.03 18.74L9.65 16.07L9.65 21.4L12 23.4z',
    lines: 'M12 4v16M5 8l14 8M5 16l14-8',
    halfLines: 'M5 8l7 4M5 16l7-4',
  },
  star: {
    whole:
      'M12 1.1L8.36 7.88L.78 9.25L6.1 14.82L5.06 22.45L12 19.1L18.94 22.45L17.9 14.82L23.22 9.25L15.64 7.88z',
    half: 'M12 1.1L8.36 7.88L.78 9.25L6.1 14.82L5.06 22.45L12 19.1z',
    lines: '',
    halfLines: '',
  },
  circle: {
    whole:
      'M12 2.8C6.92 2.8 2.8 6.92 2.8 12C2.8 17.08 6.92 21.2 12 21.2C17.08 21.2 21.2 17.08 21.2 12C21.2 6.92 17.08 2.8 12 2.8z',
    half: 'M12 2.8C6.92 2.8 2.8 6.92 2.8 12C2.8 17.08 6.92 21.2 12 21.2z',
    lines: '',
    halfLines: '',
  },
  square: {
    whole: 'M3.8 3.8H20.2V20.2H3.8z',
    half: 'M3.8 3.8H12V20.2H3.8z',
    lines: '',
    halfLines: '',
  },
};
