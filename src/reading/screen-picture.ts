import type { PictureBox } from '../wardrobe/words/reading.ts';

/** Side of the squares that a screen is looked at in, in pixels of the small picture: as fine as a line of text. */
const SQUARE_PX = 6;
/** Steps of 0..255 within which a channel is the page's own colour: compressed pictures stray by a few. */
const SAME_COLOUR = 10;
/** The same where nothing is written: a screen's ground is one colour to the step, a photo's never. */
const EXACTLY = 2;
/** Shares of a square in the page's colour from which on it is empty, and under which it belongs to a picture; text lies between. */
const EMPTY_FROM = 0.97;
const PICTURE_UNDER = 0.4;
/** Share of the screen's squares that are empty: fewer, and the picture is a photo and no screen. Judged on screens rendered for the test, no source. */
const LEAST_EMPTY = 0.12;
/** Squares with writing outside of the picture: a picture on plain ground has none. */
const LEAST_WRITTEN = 6;
/** Share of the screen that the picture takes up at least and at most: less is a button or a sign, more leaves nothing to crop. */
const LEAST_OF_SCREEN = 0.06;
const MOST_OF_SCREEN = 0.9;

type Screen = { readonly data: Uint8ClampedArray; readonly width: number; readonly height: number };

/** The commonest colour, exactly: a page has one, and no two pixels of a photo's ground are alike. */
function pageColour({ data }: Screen): readonly [number, number, number] {
	const counts = new Map<number, number>();
	let commonest = 0;
	for (let at = 0; at < data.length; at += 4) {
		const colour = data[at]! * 65536 + data[at + 1]! * 256 + data[at + 2]!;
		const count = (counts.get(colour) ?? 0) + 1;
		counts.set(colour, count);
		if (count > (counts.get(commonest) ?? 0)) commonest = colour;
	}
	return [commonest >> 16, (commonest >> 8) & 255, commonest & 255];
}

/** Share of each square within so many steps of the page's colour, row by row. */
function pageShares(screen: Screen, columns: number, rows: number, steps: number): number[] {
	const page = pageColour(screen);
	const shares = new Float64Array(columns * rows);
	for (let y = 0; y < rows * SQUARE_PX; y++)
		for (let x = 0; x < columns * SQUARE_PX; x++) {
			const at = (y * screen.width + x) * 4;
			if (page.some((level, channel) => Math.abs(screen.data[at + channel]! - level) > steps)) continue;
			shares[Math.floor(y / SQUARE_PX) * columns + Math.floor(x / SQUARE_PX)]! += 1 / SQUARE_PX ** 2;
		}
	return [...shares];
}

/** The box, in squares, of the largest connected part of the squares that belong to a picture; null without any. */
function largestPart(isPicture: readonly boolean[], columns: number) {
	const seen = new Set<number>();
	let largest: { left: number; top: number; right: number; bottom: number; count: number } | null = null;
	for (let start = 0; start < isPicture.length; start++) {
		if (!isPicture[start] || seen.has(start)) continue;
		seen.add(start);
		const part = [start];
		for (const at of part) {
			const column = at % columns;
			const near = [at - columns, at + columns, column > 0 ? at - 1 : -1, column < columns - 1 ? at + 1 : -1];
			for (const next of near) {
				if (!isPicture[next] || seen.has(next)) continue;
				seen.add(next);
				part.push(next);
			}
		}
		if (largest && part.length <= largest.count) continue;
		const xs = part.map((at) => at % columns);
		const ys = part.map((at) => Math.floor(at / columns));
		const [left, top, right, bottom] = [Math.min(...xs), Math.min(...ys), Math.max(...xs) + 1, Math.max(...ys) + 1];
		largest = { left, top, right, bottom, count: part.length };
	}
	return largest;
}

/**
 * Where the picture lies in a screenshot of an offer, in shares of its sides; null where the picture is no screenshot: a photo has no ground of one exact colour
 * with writing on it. Made for pictures of about 320 pixels on the longer side.
 */
export function pictureOnScreen(screen: Screen): PictureBox | null {
	const columns = Math.floor(screen.width / SQUARE_PX);
	const rows = Math.floor(screen.height / SQUARE_PX);
	if (columns < 4 || rows < 4) return null;
	const shares = pageShares(screen, columns, rows, SAME_COLOUR);
	const empty = pageShares(screen, columns, rows, EXACTLY).filter((share) => share >= EMPTY_FROM).length;
	const part = largestPart(
		shares.map((share) => share < PICTURE_UNDER),
		columns,
	);
	if (!part || empty < LEAST_EMPTY * shares.length) return null;
	const { left, top, right, bottom } = part;
	const ofScreen = ((right - left) * (bottom - top)) / shares.length;
	const isOutside = (at: number) => {
		const [x, y] = [at % columns, Math.floor(at / columns)];
		return x < left || x >= right || y < top || y >= bottom;
	};
	const written = shares.filter((share, at) => share >= PICTURE_UNDER && share < EMPTY_FROM && isOutside(at)).length;
	if (ofScreen < LEAST_OF_SCREEN || ofScreen > MOST_OF_SCREEN || written < LEAST_WRITTEN) return null;
	const [x, y] = [SQUARE_PX / screen.width, SQUARE_PX / screen.height];
	return { left: left * x, top: top * y, right: Math.min(1, right * x), bottom: Math.min(1, bottom * y) };
}
