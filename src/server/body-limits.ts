/** How many bytes a request may bring, by what it brings. Whatever is not named at its route is a decision. */
export const BODY_LIMITS = {
	/** Anybody on the network may send this much: a code has 8 digits. */
	code: 1024,
	/** Three lists of 2,000 ids of 36 letters have 234 kB. */
	decision: 256 * 1024,
	/** A black and white PNG of at most 1280 by 1280 pixels: however it is drawn, about a byte for each. */
	outline: 2 * 1024 * 1024,
	/** A table of 100,000 lines as our own export writes them, twice over in UTF-16. */
	table: 48 * 1024 * 1024,
	/** A home of 10,000 photos has some 40 GB; it is never held as a whole. */
	archive: 256 * 1024 ** 3,
	/** A whole wardrobe of photos in one form; it is never held as a whole. */
	photos: 4 * 1024 ** 3,
} as const;
