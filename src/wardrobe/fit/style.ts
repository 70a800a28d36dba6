import { distanceBetween } from '../../colour/delta-e-many.ts';
import { areComplementary } from '../words/complementary-slots.ts';
import { KIND_NAMES, type Kind } from '../words/kind.ts';
import { familyOfKind, type KindFamily } from '../words/kind-family.ts';
import type { Reading } from '../words/reading.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import { coloursBySlot } from '../words/worn-colours.ts';
import { patternedness, STYLE_AXES, type StyleAxis, valuesOf } from './style-axes.ts';

/** Where the inspirations lie on one axis. */
export type AxisProfile = {
	readonly axis: StyleAxis;
	/** Mean over the pictures, and the range that holds the middle 80 % of them. `null` where no picture tells. */
	readonly mean: number | null;
	readonly low: number | null;
	readonly high: number | null;
	/** Pictures that tell. */
	readonly photos: number;
};

/** What a season's inspirations have in common besides their palette. */
export type StyleProfile = {
	readonly photos: number;
	/** Share of the pictures with people that show the slot, 0..1, for every slot. */
	readonly slots: Readonly<Record<Slot, number>>;
	/** Pictures of people behind `slots`. */
	readonly wornPhotos: number;
	/** Share of the pictures of single garments for each kind seen, likeliest kind taken. */
	readonly kinds: readonly { readonly kind: Kind; readonly share: number }[];
	readonly axes: readonly AxisProfile[];
	/** The same of the pieces of one family of kinds, so that coats are compared with coats; families that pictures show. */
	readonly families: readonly { readonly family: KindFamily; readonly axes: readonly AxisProfile[] }[];
	/** CIEDE2000 between the main colours of the parts of an outfit: mean over the pictures of people; `null` without such pictures. */
	readonly contrast: { readonly mean: number; readonly low: number; readonly high: number } | null;
};

/** The value under which a share of sorted values lies, between neighbours in a straight line. */
function quantile(sorted: readonly number[], share: number): number {
	const at = share * (sorted.length - 1);
	const below = sorted[Math.floor(at)]!;
	return below + (at % 1) * (sorted[Math.ceil(at)]! - below);
}

function summary(values: readonly number[]): { mean: number; low: number; high: number } | null {
	if (values.length === 0) return null;
	const sorted = [...values].sort((one, other) => one - other);
	return {
		mean: sorted.reduce((sum, value) => sum + value, 0) / sorted.length,
		low: quantile(sorted, 0.1),
		high: quantile(sorted, 0.9),
	};
}

/** CIEDE2000 between the parts of one outfit, mean over the pairs of complementary slots; `null` where fewer than two are seen. */
function contrastOf(reading: Reading): number | null {
	const parts = coloursBySlot(reading).filter(
		(part, index, all) => all.findIndex(({ slot }) => slot === part.slot) === index,
	);
	const gaps = parts.flatMap((one, index) =>
		parts
			.slice(index + 1)
			.filter((other) => areComplementary(one.slot, other.slot))
			.map((other) => distanceBetween(one.lab, other.lab)),
	);
	return gaps.length > 0 ? gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length : null;
}

function kindShares(readings: readonly Reading[]): StyleProfile['kinds'] {
	const kinds = readings.flatMap(({ photoKind, kindGuesses }) =>
		photoKind === 'single' && kindGuesses[0] ? [kindGuesses[0].kind] : [],
	);
	return KIND_NAMES.filter((kind) => kinds.includes(kind))
		.map((kind) => ({ kind, share: kinds.filter((one) => one === kind).length / kinds.length }))
		.sort((one, other) => other.share - one.share);
}

/** Patterned share of a picture's clothing: slot by slot where the reading tells, by the area of each slot. */
function patternednessOf(reading: Reading): number | null {
	if (reading.photoKind === 'scene') return null;
	const areas = SLOTS.map((slot) => ({
		slot,
		area: reading.swatches.reduce((sum, swatch) => sum + (swatch.slot === slot ? swatch.share : 0), 0),
	})).filter(({ area }) => area > 0);
	const total = areas.reduce((sum, { area }) => sum + area, 0);
	if (total === 0) return patternedness(reading.pattern);
	return areas.reduce(
		(sum, { slot, area }) => sum + (area / total) * patternedness(reading.patternBySlot[slot] ?? reading.pattern),
		0,
	);
}

const axisOf = (axis: StyleAxis, values: readonly (number | null)[]): AxisProfile => {
	const told = values.filter((value) => value !== null);
	return { axis, ...(summary(told) ?? { mean: null, low: null, high: null }), photos: told.length };
};

/** Where the pieces of each family of kinds lie on the axes; only kinds that are sure are looked at. */
function familyProfiles(readings: readonly Reading[]): StyleProfile['families'] {
	const pieces = readings.flatMap((reading) =>
		(reading.pieces ?? []).flatMap((piece) => (piece.kind ? [{ ...piece, family: familyOfKind(piece.kind) }] : [])),
	);
	const families = [...new Set(pieces.map(({ family }) => family))].sort();
	return families.map((family) => {
		const values = pieces
			.filter((piece) => piece.family === family)
			.map(({ slot, swatches, pattern }) =>
				valuesOf({ swatches: swatches.map((swatch) => ({ ...swatch, slot })), pattern }),
			);
		return {
			family,
			axes: STYLE_AXES.map((axis) =>
				axisOf(
					axis,
					values.map((value) => value[axis]),
				),
			),
		};
	});
}

/**
 * The style of a season's inspirations: which slots and kinds they show, and where they lie on each axis. Every picture counts the same;
 * the order of the pictures changes nothing. Without pictures all shares are 0 and all axes unknown.
 */
export function styleProfile(readings: readonly Reading[]): StyleProfile {
	const worn = readings.filter(({ photoKind }) => photoKind === 'worn');
	const shows = (slot: Slot) => worn.filter(({ swatches }) => swatches.some((swatch) => swatch.slot === slot)).length;
	const slots = Object.fromEntries(SLOTS.map((slot) => [slot, worn.length > 0 ? shows(slot) / worn.length : 0]));
	const axes = STYLE_AXES.map((axis): AxisProfile => {
		return axisOf(
			axis,
			readings.map((reading) => (axis === 'pattern' ? patternednessOf(reading) : valuesOf(reading)[axis])),
		);
	});
	return {
		photos: readings.length,
		slots: slots as Record<Slot, number>,
		wornPhotos: worn.length,
		kinds: kindShares(readings),
		axes,
		families: familyProfiles(readings),
		contrast: summary(worn.flatMap((reading) => contrastOf(reading) ?? [])),
	};
}
