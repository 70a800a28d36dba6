import { isNeutral } from '../../colour/neutrality.ts';
import { outOfSeason } from '../days/in-season.ts';
import { cloOf } from '../days/insulation.ts';
import { daysOfSeason } from '../days/usual-days.ts';
import { outerNeed } from '../days/warmth-need.ts';
import { likelyVerdict } from '../fit/fit.ts';
import { pairTable } from '../pairs/pair-table.ts';
import type { PairContext } from '../pairs/support.ts';
import { isWornLikeNeutral } from '../palette/palette-roles.ts';
import type { Garment } from '../words/garment.ts';
import { factsOfKind, slotOfKind } from '../words/kind.ts';
import { mainSwatch } from '../words/main-colour.ts';
import { vouchingColours } from '../words/palette-colour.ts';
import type { SeasonDays } from '../words/season.ts';
import type { SeasonInput } from '../words/season-input.ts';
import type { LineUpRequest } from './line-up-choices.ts';
import { likingOf } from './line-up-liking.ts';
import { spareLayers } from './spare-layers.ts';

/** Where the cold asks for more than a usual jacket gives, it asks for a coat. */
const JACKET_CLO = factsOfKind('jacket').clo;

/** Whether a garment is at hand: neither leaving nor gone. */
export const canBeChosen = ({ place }: Garment): boolean => place === 'rail' || place === 'stored';

/** Black, white, grey, and what is worn like them (navy, denim, camel, brown): it may not be of the palette, but clashes with nothing in it. Common practice, no source. */
function isPlainBasic(garment: Garment): boolean {
	const main = mainSwatch(garment)?.lab;
	return main !== undefined && (isNeutral(main) || isWornLikeNeutral(main));
}

/** Text by which pieces that a tie cannot tell apart are ordered: never the id, which a home draws by chance; the longest owned first. */
const tieText = ({ boughtOn, addedAt, name, kind, swatches, id }: Garment): string =>
	[boughtOn ?? addedAt.slice(0, 10), name, kind, JSON.stringify(swatches.map(({ lab }) => lab)), id].join('\n');

/** Tells whether a coat or jacket is warm enough for the season's cold days; none is where the cold asks for none. */
export function warmEnough(days: SeasonDays): (garment: Garment) => boolean {
	const need = outerNeed(days);
	return (garment) => slotOfKind(garment.kind) === 'outer' && need > 0 && cloOf(garment) >= need;
}

/**
 * The garments that may be chosen, those to prefer on a tie first. Left out are those that are leaving or gone, of another part of the year, worn out, more layers than a season without cold days needs, or coloured
 * and off the palette with nothing that joins them to anything. `lastCoats`: those of them that are in for their warmth alone.
 */
export function choosable(
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
