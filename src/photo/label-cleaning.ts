import { BACKGROUND, isClothes, type LabelMap } from './pixels.ts';

/** A connected part of the picture: all clothes, or no clothes at all. */
type Part = { readonly isCloth: boolean; readonly area: number; readonly touchesFrame: boolean; readonly seed: number };

/** Connected parts (4 neighbours) of clothes and of what is none, and each pixel's part. */
function partsOf({ widthPx, classes }: LabelMap): { parts: Part[]; partOf: Int32Array } {
	const partOf = new Int32Array(classes.length).fill(-1);
	const stack = new Int32Array(classes.length);
	const parts: Part[] = [];
	for (let seed = 0; seed < classes.length; seed++) {
		if (partOf[seed] !== -1) continue;
		const isCloth = isClothes(classes[seed]!);
		let area = 0;
		let touchesFrame = false;
		let height = 0;
		const visit = (index: number) => {
			if (partOf[index] !== -1 || isClothes(classes[index]!) !== isCloth) return;
			partOf[index] = parts.length;
			stack[height++] = index;
		};
		visit(seed);
		while (height > 0) {
			const at = stack[--height]!;
			const x = at % widthPx;
			area++;
			if (x > 0) visit(at - 1);
			if (x < widthPx - 1) visit(at + 1);
			if (at >= widthPx) visit(at - widthPx);
			if (at < classes.length - widthPx) visit(at + widthPx);
			touchesFrame ||= x === 0 || x === widthPx - 1 || at < widthPx || at >= classes.length - widthPx;
		}
		parts.push({ isCloth, area, touchesFrame, seed });
	}
	return { parts, partOf };
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
	const { parts, partOf } = partsOf(labels);
	const cloths = parts.filter(({ isCloth }) => isCloth);
	const largest = Math.max(0, ...cloths.map(({ area }) => area));
	const clothesArea = cloths.reduce((sum, { area }) => sum + area, 0);
	const least = largest * (photoKind === 'single' ? LEAST_OF_SINGLE : LEAST_OF_WORN);
	return classes.map((label, i) => {
		const { isCloth, area, touchesFrame, seed } = parts[partOf[i]!]!;
		if (isCloth) return area < least ? BACKGROUND : label;
		const isHole = label === BACKGROUND && !touchesFrame && area <= clothesArea * LARGEST_HOLE;
		// The pixel before a hole's first one, row by row, is cloth: a hole touches no frame.
		return isHole ? classes[seed - 1]! : label;
	});
}
