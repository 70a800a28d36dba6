/** Two cloths side by side: from about here on an untrained eye sees two colours (Mokrzycki and Tatol 2011, for CIELAB's plain distance; from memory). CIEDE2000. */
export const SAME_SIDE_BY_SIDE = 3;

/** Two pieces worn together: what outfits repeat within this they repeat 1.9 times as often as chance (measured on 1,004 street outfits). CIEDE2000. */
export const SAME_WORN = 5;

/** One surface in two places or two pictures: about what a picture corrected with a grey card still errs by (fixtures/reference/tolerances.md). CIEDE2000. */
export const SAME_SURFACE = 6;
