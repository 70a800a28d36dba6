import type { LabelMap } from '../pixels.ts';

/** What the garment parser says of a photo, at the size of the pixels given. */
export type Parse = LabelMap & {
	/** Probability of clothes (any slot), 0..255 a pixel. */
	readonly clothes: Uint8Array;
	/** Probabilities of worn, single, scene. */
	readonly photoKind: readonly [worn: number, single: number, scene: number];
	/** Probability of each garment kind the network knows, in its own order. */
	readonly garmentKind: readonly number[];
	/** Probability that nothing can be told piece by piece: a face, a crowd, a rail, a drawing, furniture, a street. */
	readonly noPieces: number;
	/** Probability that more than one garment is seen, where nobody wears any. */
	readonly several: number;
};
