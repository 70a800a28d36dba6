import { CLASSES, isClothes } from '../../src/reading/pixels.ts';

/** Counts of pixels by true class and by the class they were taken for. */
export type Confusion = Float64Array;

export const emptyConfusion = (): Confusion => new Float64Array(CLASSES.length ** 2);

/** Adds one photo's pixels. */
export function countPixels(confusion: Confusion, truth: Uint8Array, taken: Uint8Array): void {
	for (let i = 0; i < truth.length; i++) confusion[truth[i]! * CLASSES.length + taken[i]!]!++;
}

/** All as shares, 0..1. A class that is neither there nor taken has IoU NaN. */
export type ClassFigures = {
	readonly iouByClass: readonly number[];
	/** Mean over the seven slots. */
	readonly slotsIou: number;
	/** The seven slots together against the rest. */
	readonly clothesIou: number;
	readonly precision: number;
	readonly recall: number;
};

/** Intersection over union a class and for the clothes as a whole, over all pixels of all photos. */
export function classFigures(confusion: Confusion): ClassFigures {
	const sum = (wanted: (truth: number, taken: number) => boolean) => {
		let total = 0;
		for (let truth = 0; truth < CLASSES.length; truth++)
			for (let taken = 0; taken < CLASSES.length; taken++)
				if (wanted(truth, taken)) total += confusion[truth * CLASSES.length + taken]!;
		return total;
	};
	const iouByClass = CLASSES.map(
		(_, c) => sum((truth, taken) => truth === c && taken === c) / sum((truth, taken) => truth === c || taken === c),
	);
	const slots = iouByClass.filter((value, c) => isClothes(c) && !Number.isNaN(value));
	const both = sum((truth, taken) => isClothes(truth) && isClothes(taken));
	return {
		iouByClass,
		slotsIou: slots.reduce((total, value) => total + value, 0) / slots.length,
		clothesIou: both / sum((truth, taken) => isClothes(truth) || isClothes(taken)),
		precision: both / sum((_, taken) => isClothes(taken)),
		recall: both / sum((truth) => isClothes(truth)),
	};
}
