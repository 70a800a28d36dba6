import { BACKGROUND, isClothes, type LabelMap } from './pixels.ts';

/** A connected part of the picture: all clothes, or no clothes at all. */
type Part = {
	readonly isCloth: boolean;
	area: number;
	touchesFrame: boolean;
	/** Its first pixel, row by row. */
	readonly seed: number;
};

/** The part of each run of pixels: a piece of one row that is all clothes or no clothes. */
type Runs = { readonly starts: readonly number[]; readonly parts: readonly Part[] };

/** Where each run begins, row by row; a run ends where the next one begins. */
function runStarts({ widthPx, classes }: LabelMap): number[] {
	const starts: number[] = [];
	for (let row = 0; row < classes.length; row += widthPx) {
		for (let at = row, end = row + widthPx; at < end; ) {
			starts.push(at);
			const isCloth = isClothes(classes[at]!);
			while (at < end && isClothes(classes[at]!) === isCloth) at++;
		}
	}
	return starts;
}

/** Connected parts (4 neighbours), by joining the runs of each row to those of the row above (Rosenfeld and Pfaltz 1966). */
function partsOf(labels: LabelMap): Runs {
	const { widthPx, classes } = labels;
	const starts = runStarts(labels);
	const endOf = (run: number): number => starts[run + 1] ?? classes.length;
	const isCloth = (run: number): boolean => isClothes(classes[starts[run]!]!);
	// Each run points to an earlier one of its part; the part's first run points to itself.
	const earlier = Int32Array.from(starts.keys());
	const first = (run: number): number => {
		let root = run;
		while (earlier[root] !== root) root = earlier[root] = earlier[earlier[root]!]!;
		return root;
	};
	for (let run = 0, above = 0; run < starts.length; run++) {
		while (endOf(above) + widthPx <= starts[run]!) above++;
		for (let over = above; starts[over]! + widthPx < endOf(run); over++) {
			if (isCloth(over) !== isCloth(run)) continue;
			const [one, other] = [first(run), first(over)];
			earlier[Math.max(one, other)] = Math.min(one, other);
		}
	}
	const parts: Part[] = [];
	for (const [run, seed] of starts.entries()) {
		const root = first(run);
		parts[run] = root === run ? { isCloth: isCloth(run), area: 0, touchesFrame: false, seed } : parts[root]!;
		const end = endOf(run);
		parts[run].area += end - seed;
		parts[run].touchesFrame ||=
			seed < widthPx || end > classes.length - widthPx || seed % widthPx === 0 || end % widthPx === 0;
	}
	return { starts, parts };
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
	const { classes } = labels;
	const { starts, parts } = partsOf(labels);
	const cloths = [...new Set(parts)].filter(({ isCloth }) => isCloth);
	const largest = cloths.reduce((most, { area }) => Math.max(most, area), 0);
	const clothesArea = cloths.reduce((sum, { area }) => sum + area, 0);
	const least = largest * (photoKind === 'single' ? LEAST_OF_SINGLE : LEAST_OF_WORN);
	const cleaned = classes.slice();
	for (const [run, { isCloth, area, touchesFrame, seed }] of parts.entries()) {
		const end = starts[run + 1] ?? classes.length;
		if (isCloth && area < least) cleaned.fill(BACKGROUND, starts[run], end);
		if (isCloth || touchesFrame || area > clothesArea * LARGEST_HOLE) continue;
		// The pixel before a hole's first one, row by row, is cloth: a hole touches no frame.
		for (let at = starts[run]!; at < end; at++) if (classes[at] === BACKGROUND) cleaned[at] = classes[seed - 1]!;
	}
	return cleaned;
}
