import { hasColdDays, neededLayers } from '../days/season-defaults.ts';
import { daysOfSeason } from '../days/usual-days.ts';
import { fitPercentOf } from '../fit/fit.ts';
import type { Garment } from '../words/garment.ts';
import { factsOfKind, slotOfKind } from '../words/kind.ts';
import type { Quotas } from '../words/season.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { likingOf } from './line-up-liking.ts';

/**
 * Jumpers, cardigans and the like beyond those that a season without cold days needs, while other tops fill their places: the ones liked and fitting least. What must be kept, favourites, basics
 * and much-worn pieces stay. None where some days are cold.
 */
export function spareLayers(
	garments: readonly Garment[],
	input: SeasonInput,
	{ mustKeep, quotas }: { readonly mustKeep: readonly string[]; readonly quotas: Quotas },
): ReadonlySet<Garment> {
	const days = daysOfSeason(input.season);
	if (hasColdDays(days)) return new Set();
	const { loved, settled } = likingOf(garments, input);
	const isLayer = ({ kind }: Garment) => factsOfKind(kind).over === true;
	const others = garments.filter((garment) => slotOfKind(garment.kind) === 'top' && !isLayer(garment)).length;
	const layers = garments.flatMap((garment, index) =>
		isLayer(garment) ? [{ garment, worth: loved[index]! + fitPercentOf(garment, input.palette) / 100, index }] : [],
	);
	const isKept = ({ garment, index }: (typeof layers)[number]) => settled[index]! || mustKeep.includes(garment.id);
	const needed = Math.max(neededLayers(days, days.washEveryDays), quotas.top - others) - layers.filter(isKept).length;
	return new Set(
		layers
			.filter((layer) => !isKept(layer))
			.sort((a, b) => b.worth - a.worth)
			.slice(Math.max(0, needed))
			.map(({ garment }) => garment),
	);
}
