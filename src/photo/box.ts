/** A rectangle of whole pixels. */
export type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** The smallest box around the pixels whose mark `isIn` holds for, or null where there are none. `marks` has one byte a pixel, row by row. */
export function boxAround(marks: Uint8Array, widthPx: number, isIn: (mark: number) => boolean): Box | null {
	let [left, right, top, bottom] = [widthPx, -1, -1, -1];
	for (let at = 0, column = 0, row = 0; at < marks.length; at++) {
		if (isIn(marks[at]!)) {
			if (column < left) left = column;
			if (column > right) right = column;
			if (top < 0) top = row;
			bottom = row;
		}
		if (++column === widthPx) {
			column = 0;
			row++;
		}
	}
	return right < 0 ? null : { left, top, width: right - left + 1, height: bottom - top + 1 };
}
