/** A box in pixels; right and bottom are past its last pixels. */
export type PieceBox = {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
	/** Pixels marked. */
	readonly area: number;
};

/** Share of a mask's pixels that the box leaves out on each side, as in training: stray ones. */
const OUTSIDE = 0.006;

/** First and last place between which the counts lie, less the stray ones at both ends. */
function ends(counts: Uint32Array, area: number): readonly [first: number, past: number] {
	let sum = 0;
	let first = -1;
	for (let at = 0; at < counts.length; at++) {
		sum += counts[at]!;
		if (first < 0 && sum > OUTSIDE * area) first = at;
		if (sum >= (1 - OUTSIDE) * area) return [first, at + 1];
	}
	return [0, counts.length];
}

/** The box around the pixels marked from `least` to `most`, without stray ones; null where there are none. One byte a pixel, row by row. */
export function pieceBox(marks: Uint8Array, widthPx: number, least: number, most: number): PieceBox | null {
	const columns = new Uint32Array(widthPx);
	const rows = new Uint32Array(marks.length / widthPx);
	let area = 0;
	for (let row = 0, at = 0; row < rows.length; row++) {
		for (let column = 0; column < widthPx; column++, at++) {
			if (marks[at]! < least || marks[at]! > most) continue;
			columns[column]!++;
			rows[row]!++;
			area++;
		}
	}
	if (area === 0) return null;
	const [left, right] = ends(columns, area);
	const [top, bottom] = ends(rows, area);
	return { left, top, right, bottom, area };
}
