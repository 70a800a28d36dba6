/** A rectangle of whole pixels. */
export type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** The smallest box around the pixels whose mark `isIn` holds for, or null where there are none. `marks` has one byte a pixel, row by row. */
export function boxAround(marks: Uint8Array, widthPx: number, isIn: (mark: number) => boolean): Box | null {
	let first = 0;
	while (first < marks.length && !isIn(marks[first]!)) first++;
	if (first === marks.length) return null;
	let last = marks.length - 1;
	while (!isIn(marks[last]!)) last--;
	const [top, bottom] = [Math.floor(first / widthPx), Math.floor(last / widthPx)];
	let [left, right] = [first % widthPx, last % widthPx];
	// Each row is looked at from its two ends, no farther than where an earlier one began.
	for (let start = top * widthPx, end = (bottom + 1) * widthPx; start < end; start += widthPx) {
		for (let column = 0; column < left; column++) if (isIn(marks[start + column]!)) left = column;
		for (let column = widthPx - 1; column > right; column--) if (isIn(marks[start + column]!)) right = column;
	}
	return { left, top, width: right - left + 1, height: bottom - top + 1 };
}
