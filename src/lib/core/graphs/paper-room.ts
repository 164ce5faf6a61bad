/**
 * How much room a sheet of squares has, on a screen as on paper: one square is one step of a
 * scale, and about a centimetre when printed. (Sizes chosen for a tablet and for one page.)
 */
export const mostSquaresUp = 16;
/** Days, hours or kinds side by side. */
export const mostPlacesAcross = 20;
/** Steps of a number line that lies along the bottom, a landscape page wide. */
export const mostStepsAcross = 24;
/** Pictures in a row before a key of more than 1 is taken. */
export const mostPicturesAtEase = 10;
