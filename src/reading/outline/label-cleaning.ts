import { BACKGROUND, isClothes, type LabelMap } from '../pixels.ts';

/** Pieces of one row that are all clothes or no clothes, row by row, and the connected parts (4 neighbours) of the picture that they make up. */
type Runs = {
	/** First pixel of each run; a run ends where the next one begins, the last one with the picture. */
	readonly starts: Int32Array;
	/** The first run of each run's part: it stands for the part. */
	readonly partOf: Int32Array;
};

/** Where each run begins, and the picture's end. */
function runStarts({ widthPx, classes }: LabelMap): Int32Array {
	const starts: number[] = [];
	for (let row = 0; row < classes.length; row += widthPx) {
		for (let at = row, end = row + widthPx; at < end; ) {
			starts.push(at);
			const isCloth = isClothes(classes[at]!);
			while (at < end && isClothes(classes[at]!) === isCloth) at++;
		}
	}
	starts.push(classes.length);
	return Int32Array.from(starts);
}

/** The part of each run, by joining the runs of each row to those of the row above (Rosenfeld and Pfaltz 1966). */
function runsOf(labels: LabelMap): Runs {
	const { widthPx, classes } = labels;
	const starts = runStarts(labels);
	const count = starts.length - 1;
	// Each run points to an earlier one of its part; the part's first run points to itself.
	const earlier = new Int32Array(count);
	for (let run = 0; run < count; run++) earlier[run] = run;
	const first = (run: number): number => {
		let root = run;
		while (earlier[root] !== root) root = earlier[root] = earlier[earlier[root]!]!;
		return root;
	};
	for (let run = 0, above = 0; run < count; run++) {
		const isCloth = isClothes(classes[starts[run]!]!);
		while (starts[above + 1]! + widthPx <= starts[run]!) above++;
		for (let over = above; starts[over]! + widthPx < starts[run + 1]!; over++) {
			if (isClothes(classes[starts[over]!]!) !== isCloth) continue;
			const one = first(run);
			const other = first(over);
			earlier[Math.max(one, other)] = Math.min(one, other);
		}
	}
	for (let run = 0; run < count; run++) earlier[run] = first(run);
	return { starts, partOf: earlier };
}

/** Share of the largest part under which a part is no piece of a single garment: the two of a pair are alike. */
const LEAST_OF_SINGLE = 0.1;
/** The same for clothes on people, where a shoe or a belt is a small part that counts. */
const LEAST_OF_WORN = 0.005;
/** Share of the clothes up to which a hole in them is a button or a print that the parser missed, and no gap between legs. */
const LARGEST_HOLE = 0.002;

/**
 * The labels without specks taken for clothes (a leaf, a bed's print) and without small holes in the cloth. Skin and hair stay where they are;
 * a map without clothes comes back as it is.
 */
export function cleanedLabels(labels: LabelMap, photoKind: 'worn' | 'single'): Uint8Array {
	const { widthPx, classes } = labels;
	const { starts, partOf } = runsOf(labels);
	const areas = new Int32Array(partOf.length);
	const touchesFrame = new Uint8Array(partOf.length);
	let largest = 0;
	let clothesArea = 0;
	for (let run = 0; run < partOf.length; run++) {
		const part = partOf[run]!;
		const start = starts[run]!;
		const end = starts[run + 1]!;
		areas[part]! += end - start;
		if (start < widthPx || end > classes.length - widthPx || start % widthPx === 0 || end % widthPx === 0)
			touchesFrame[part] = 1;
		if (!isClothes(classes[start]!)) continue;
		clothesArea += end - start;
		largest = Math.max(largest, areas[part]!);
	}
	const least = largest * (photoKind === 'single' ? LEAST_OF_SINGLE : LEAST_OF_WORN);
	const cleaned = classes.slice();
	for (let run = 0; run < partOf.length; run++) {
		const part = partOf[run]!;
		const start = starts[run]!;
		const end = starts[run + 1]!;
		if (isClothes(classes[start]!)) {
			if (areas[part]! < least) cleaned.fill(BACKGROUND, start, end);
			continue;
		}
		if (touchesFrame[part] === 1 || areas[part]! > clothesArea * LARGEST_HOLE) continue;
		// The pixel before a hole's first one, row by row, is cloth: a hole touches no frame.
		const around = classes[starts[part]! - 1]!;
		for (let at = start; at < end; at++) if (classes[at] === BACKGROUND) cleaned[at] = around;
	}
	return cleaned;
}
