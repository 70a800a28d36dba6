/** Phone photos have 2 to 15 MB, a 48-megapixel one up to 40. */
export const MAX_PHOTO_BYTES = 60 * 1024 * 1024;
/** More than any phone makes; a decompression bomb (30,000 x 30,000 has 900 million) stays outside. */
export const MAX_PHOTO_PIXELS = 120_000_000;
/** A 48-megapixel HEIC takes about 5 s on a slow core that does nothing else. */
export const MAX_READ_SECONDS = 60;

/** Longest side of the picture that the page shows, and from which all else is made: the one shared decode. */
export const DISPLAY_SIDE_PX = 1280;
export const THUMB_SIDE_PX = 320;
export const CUTOUT_SIDE_PX = 480;
