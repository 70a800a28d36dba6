import { isNeutral } from '../../colour/neutrality.ts';
import { say } from '../../language/speak.ts';
import { askedDays, offerOf } from '../days/enough.ts';
import { outOfSeason } from '../days/in-season.ts';
import { cloOf } from '../days/insulation.ts';
import { daysOfSeason } from '../days/usual-days.ts';
import { outerNeed } from '../days/warmth-need.ts';
import { fitPercentOf, likelyVerdict, nearestColour } from '../fit/fit.ts';
import { lookAlikes } from '../fit/look-alikes.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { type PairTable, pairTable } from '../pairs/pair-table.ts';
import type { PairContext } from '../pairs/support.ts';
import { isWornLikeNeutral } from '../palette/palette-roles.ts';
import { picturesOf } from '../pictures/picture.ts';
import { answeringGarments } from '../pictures/wearable-count.ts';
import { wearsFull } from '../pictures/wears-full.ts';
import { asSentence } from '../words/as-sentence.ts';
import type { Garment } from '../words/garment.ts';
import { factsOfKind, slotOfKind } from '../words/kind.ts';
import { weightsOf } from '../words/line-up-weights.ts';
import { mainSwatch } from '../words/main-colour.ts';
import { askedShares, type Palette, vouchingColours } from '../words/palette-colour.ts';
import type { Quotas, SeasonDays } from '../words/season.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { bySlot, SLOTS } from '../words/slot.ts';
import { slotSize } from '../words/slot-size.ts';
import type { LineUpProblem } from './line-up-choices.ts';
import { likingOf } from './line-up-liking.ts';
import { lineUpProblemOf } from './line-up-problem.ts';
import { spareLayers } from './spare-layers.ts';

/** What is asked of a line-up. */
export type LineUpRequest = {
	readonly quotas: Quotas;
	readonly targetCount: number;
	readonly mustKeep: readonly string[];
	readonly neverUse: readonly string[];
};

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

/** Where the cold asks for more than a usual jacket gives, it asks for a coat. */
const JACKET_CLO = factsOfKind('jacket').clo;

const canBeChosen = ({ place }: Garment): boolean => place === 'rail' || place === 'stored';

/** Must-keeps that contradict something else the user said. */
function contradictions({ garments, season }: SeasonInput, { mustKeep, neverUse }: LineUpRequest): string[] {
	const byId = new Map(garments.map((garment) => [garment.id, garment]));
	return [...new Set(mustKeep)].flatMap((id) => {
		const garment = byId.get(id);
		if (!garment) return [say('unmet.gone')];
		if (!canBeChosen(garment))
			return [say('unmet.notHere', { name: garment.name, place: say(`whereabouts.${garment.place}`) })];
		if (neverUse.includes(id)) return [say('unmet.both', { name: garment.name })];
		const out = outOfSeason(garment, season);
		return out === null ? [] : [say('unmet.though', { name: garment.name, out })];
	});
}

function unmetNeeds(
	{ season }: SeasonInput,
	request: LineUpRequest,
	{ slots, fixed, choices, places, warmOuter }: LineUpProblem,
): string[] {
	const total = SLOTS.reduce((sum, slot) => sum + request.quotas[slot], 0);
	const keptIn = bySlot((slot) => fixed.filter((member) => slots[member] === slot).length);
	const bySlots = SLOTS.flatMap((slot) => {
		const wanted = request.quotas[slot];
		const can = choices[slot].length + keptIn[slot];
		const said = { wanted, slot: asSentence(say(`slots.${slot}`)) };
		if (can < wanted) return [say('unmet.tooFew', { ...said, can, missing: wanted - can })];
		const kept = keptIn[slot];
		return kept > wanted ? [say('unmet.tooMany', { ...said, kept, over: kept - wanted })] : [];
	});
	const sum = total === request.targetCount ? [] : [say('unmet.sum', { total, target: request.targetCount })];
	const days = daysOfSeason(season);
	const cold = { degrees: days.coldDay };
	const outerFull = keptIn.outer >= places.outer && !fixed.some((member) => warmOuter.has(member));
	const warmth =
		outerNeed(days) === 0 || request.quotas.outer === 0
			? []
			: warmOuter.size === 0
				? [say('unmet.noneWarm', cold)]
				: outerFull
					? [say('unmet.keptNotWarm', cold)]
					: [];
	return [...bySlots, ...sum, ...warmth];
}

/** The request of somebody who wears no dresses: their places are none. */
const withoutFull = ({ quotas, targetCount, ...rest }: LineUpRequest): LineUpRequest => ({
	...rest,
	quotas: { ...quotas, full: 0 },
	targetCount: targetCount - quotas.full,
});

/** Black, white, grey, and what is worn like them (navy, denim, camel, brown): it may not be of the palette, but clashes with nothing in it. Common practice, no source. */
function isPlainBasic(garment: Garment): boolean {
	const main = mainSwatch(garment)?.lab;
	return main !== undefined && (isNeutral(main) || isWornLikeNeutral(main));
}

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

/** Text by which pieces that a tie cannot tell apart are ordered: never the id, which a home draws by chance; the longest owned first. */
const tieText = ({ boughtOn, addedAt, name, kind, swatches, id }: Garment): string =>
	[boughtOn ?? addedAt.slice(0, 10), name, kind, JSON.stringify(swatches.map(({ lab }) => lab)), id].join('\n');

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

/** Tells whether a coat or jacket is warm enough for the season's cold days; none is where the cold asks for none. */
function warmEnough(days: SeasonDays): (garment: Garment) => boolean {
	const need = outerNeed(days);
	return (garment) => slotOfKind(garment.kind) === 'outer' && need > 0 && cloOf(garment) >= need;
}

/**
 * The garments that may be chosen, those to prefer on a tie first. Left out are those that are leaving or gone, of another part of the year, worn out, more layers than a season without cold days needs, or coloured
 * and off the palette with nothing that joins them to anything. `lastCoats`: those of them that are in for their warmth alone.
 */
function choosable(
	input: SeasonInput,
	request: LineUpRequest,
	context: PairContext,
): { readonly garments: readonly Garment[]; readonly lastCoats: readonly Garment[] } {
	const { season, palette } = input;
	const mustKeep = new Set(request.mustKeep);
	const neverUse = new Set(request.neverUse.filter((id) => !mustKeep.has(id)));
	const free = input.garments
		.filter((garment) => canBeChosen(garment) && !neverUse.has(garment.id))
		.filter((garment) => mustKeep.has(garment.id) || outOfSeason(garment, season) === null)
		.sort((a, b) => (tieText(a) < tieText(b) ? -1 : 1));
	const { joined } = pairTable(free, context);
	const isSettled = likingOf(free, input).settled;
	const hasPalette = vouchingColours(palette).length > 0;
	const isFiller = (garment: Garment, index: number) =>
		hasPalette &&
		garment.swatches.length > 0 &&
		likelyVerdict(garment, palette) === 'off' &&
		!isPlainBasic(garment) &&
		!joined(index);
	const isSound = (garment: Garment, index: number) =>
		mustKeep.has(garment.id) || isSettled[index] || (garment.condition !== 'worn-out' && !isFiller(garment, index));
	const liked = free.filter(isSound);
	const spared = spareLayers(liked, input, request);
	const sound = liked.filter((garment) => !spared.has(garment));
	// Nobody freezes for a palette: where the cold asks for a coat, one of the wrong colour is worn until a better one is found.
	const days = daysOfSeason(season);
	const isWarm = warmEnough(days);
	const asksForCoat = outerNeed(days) > JACKET_CLO && request.quotas.outer > 0;
	const lastCoats = asksForCoat && !sound.some(isWarm) ? free.filter(isWarm) : [];
	return { garments: free.filter((garment) => sound.includes(garment) || lastCoats.includes(garment)), lastCoats };
}

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
