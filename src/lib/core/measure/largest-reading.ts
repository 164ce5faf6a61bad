/** The largest reading kept: one kilometre, a thousand times the tallest bean. */
export const largestLengthExact = 1_000_000_000_000;

/** The largest count kept. */
export const largestCount = 1_000_000;

/** More characters than `12 yards 2 feet and 11 15/16 inches` with room to spare. */
export const longestReadingText = 64;
