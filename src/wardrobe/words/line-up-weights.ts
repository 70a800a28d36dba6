import type { LineUpWeights } from './season.ts';

/** Weights of what a set is worth; the user may change each. Common practice, no source. */
export const USUAL_WEIGHTS: LineUpWeights = {
	pictures: 1,
	enough: 1,
	palette: 0.5,
	fit: 0.5,
	loved: 0.5,
	outfits: 0.25,
};

/** A season's weights. Seasons of earlier versions told fewer of them, which meant something else: they get the usual ones. */
export const weightsOf = ({ weights }: { readonly weights: Partial<LineUpWeights> }): LineUpWeights =>
	weights.pictures === undefined ? USUAL_WEIGHTS : { ...USUAL_WEIGHTS, ...weights };
