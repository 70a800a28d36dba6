import { say } from '../../language/speak.ts';
import { askedDays, offerOf } from '../days/enough.ts';
import { daysOfSeason } from '../days/usual-days.ts';
import { fitPercentOf, nearestColour } from '../fit/fit.ts';
import { lookAlikes } from '../fit/look-alikes.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { type PairTable, pairTable } from '../pairs/pair-table.ts';
import { picturesOf } from '../pictures/picture.ts';
import { answeringGarments } from '../pictures/wearable-count.ts';
import { wearsFull } from '../pictures/wears-full.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { weightsOf } from '../words/line-up-weights.ts';
import { askedShares, type Palette, vouchingColours } from '../words/palette-colour.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { slotSize } from '../words/slot-size.ts';
import { choosable, warmEnough } from './choosable.ts';
import type { LineUpProblem, LineUpRequest } from './line-up-choices.ts';
import { likingOf } from './line-up-liking.ts';
import { lineUpProblemOf } from './line-up-problem.ts';
import { contradictions, unmetNeeds } from './unmet-wishes.ts';

/** A season's line-up to choose. */
export type LineUpSetup = {
	/** The season that it is for. */
	readonly input: SeasonInput;
	/** Those to prefer on a tie first; the problem's pieces are indices into it. */
	readonly garments: readonly Garment[];
	readonly problem: LineUpProblem;
	readonly table: PairTable;
	/** What of the wishes cannot be met, and by how much, in sentences; empty when all is. */
	readonly problems: readonly string[];
};

/** The request of somebody who wears no dresses: their places are none. */
const withoutFull = ({ quotas, targetCount, ...rest }: LineUpRequest): LineUpRequest => ({
	...rest,
	quotas: { ...quotas, full: 0 },
	targetCount: targetCount - quotas.full,
});

/** Cloth of each palette colour that each garment brings, row-major; a whole top = 1. */
function holdsOf(garments: readonly Garment[], palette: Palette): Float64Array {
	const colours = vouchingColours(palette);
	const holds = new Float64Array(garments.length * colours.length);
	for (const [index, { kind, swatches, trust }] of garments.entries()) {
		for (const { lab, share } of swatches) {
			const nearest = nearestColour(lab, palette, trust);
			if (nearest?.within)
				holds[index * colours.length + colours.indexOf(nearest.colour)]! += share * slotSize(slotOfKind(kind));
		}
	}
	return holds;
}

function matrixOf({ garments, supported, together }: PairTable): Uint8Array {
	const count = garments.length;
	const matrix = new Uint8Array(count * count);
	for (let one = 0; one < count; one++)
		for (let other = 0; other < count; other++)
			if (one !== other && together(one, other) && supported(one, other)) matrix[one * count + other] = 1;
	return matrix;
}

/** The pictures that the garments can wear at all, piece by piece, with the garments that answer. */
const answeredPictures = ({ inspirations }: SeasonInput, garments: readonly Garment[]): number[][][] =>
	answeringGarments(picturesOf(inspirations), garments).filter(
		(pieces) => pieces.length > 0 && pieces.every((answering) => answering.length > 0),
	);

/**
 * Sets up the choice of a season's line-up. A place stays open rather than being filled with what clashes, but for the only coat that is warm enough. What must be kept, favourites, basics and much-worn pieces are
 * never left out for their colour. Stored ones may come back.
 */
export function lineUpSetup(input: SeasonInput, asked: LineUpRequest): LineUpSetup {
	const { season, palette } = input;
	const request = wearsFull(input) ? asked : withoutFull(asked);
	const context = pairContextOf(input);
	const { garments, lastCoats } = choosable(input, request, context);
	const days = daysOfSeason(season);
	const table = pairTable(garments, context);
	const { loved, settled } = likingOf(garments, input);
	const indicesOf = (holds: (garment: Garment, index: number) => boolean) =>
		garments.flatMap((garment, index) => (holds(garment, index) ? [index] : []));
	const problem = lineUpProblemOf({
		slots: garments.map(({ kind }) => slotOfKind(kind)),
		together: matrixOf(table),
		fit: garments.map((garment) => fitPercentOf(garment, palette) / 100),
		loved,
		look: lookAlikes(garments),
		offers: garments.map((garment) => offerOf(garment, days)),
		askedDays: askedDays(days),
		colourWeights: askedShares(palette),
		holds: holdsOf(garments, palette),
		pictures: answeredPictures(input, garments),
		weights: weightsOf(season),
		quotas: request.quotas,
		fixed: indicesOf(({ id }) => request.mustKeep.includes(id)),
		settled: indicesOf((_, index) => settled[index]!),
		warmOuter: new Set(indicesOf(warmEnough(days))),
	});
	return {
		input,
		garments,
		problem,
		table,
		problems: [
			...contradictions(input, request),
			...unmetNeeds(input, request, problem),
			...lastCoats.slice(0, 1).map(({ name }) => say('unmet.lastCoat', { name, degrees: days.coldDay })),
		],
	};
}
