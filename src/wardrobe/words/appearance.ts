import { deltaE2000 } from '../../colour/delta-e.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { colourName } from '../../colour/name.ts';
import { type Kind, slotOfKind } from './kind.ts';
import type { Appearance, Pattern, Reading, Swatch, Trust } from './reading.ts';
import type { Slot } from './slot.ts';

/** Most swatches of one piece, and the share under which one is dropped: the same limits as for one photo. */
const MOST_SWATCHES = 5;
const LEAST_SHARE = 0.03;

/** Swatches of two photos of one piece this near are one colour (CIEDE2000; the "same colour" measured on worn outfits). */
const SAME_COLOUR_WITHIN = 5;

/** What a piece looks like before any of its photos is read: no colours, no trust. */
const NOTHING_READ: Appearance = {
	swatches: [],
	pattern: { type: 'plain', sure: 0 },
	trust: { error: 100, reasons: ['none of its photos has been read yet'], advice: 'Add a photo of it.' },
};

/** The photo's swatches that belong to the piece: those of its slot where the photo shows several, all otherwise. */
function ownSwatches(slot: Slot | null, reading: Reading): readonly Swatch[] {
	if (slot === null) return reading.swatches;
	const own = reading.swatches.filter((swatch) => swatch.slot === slot);
	return own.length > 0 ? own : reading.swatches;
}

type Mix = { lab: Lab65; share: number };

/** Joins a swatch to the nearest one of the mix where both are the same colour, else adds it. */
function joinInto(mix: readonly Mix[], { lab, share }: Mix): Mix[] {
	const nearest = mix
		.map((one, index) => ({ index, distance: deltaE2000(one.lab, lab) }))
		.sort((one, other) => one.distance - other.distance)[0];
	if (!nearest || nearest.distance > SAME_COLOUR_WITHIN) return [...mix, { lab, share }];
	return mix.map((one, index) => {
		if (index !== nearest.index) return one;
		const whole = one.share + share;
		const mean = one.lab.map((value, axis) => (value * one.share + lab[axis]! * share) / whole);
		return { lab: mean as unknown as Lab65, share: whole };
	});
}

function mixedSwatches(slot: Slot | null, readings: readonly Reading[]): Swatch[] {
	let mix: Mix[] = [];
	for (const reading of readings) {
		const own = ownSwatches(slot, reading);
		const area = own.reduce((sum, { share }) => sum + share, 0);
		if (!(area > 0)) continue;
		for (const { lab, share } of own) mix = joinInto(mix, { lab, share: share / area / readings.length });
	}
	const kept = [...mix]
		.sort((one, other) => other.share - one.share)
		.filter(({ share }, index) => index === 0 || share >= LEAST_SHARE)
		.slice(0, MOST_SWATCHES);
	const area = kept.reduce((sum, { share }) => sum + share, 0);
	return kept.map(({ lab, share }) => ({ lab, share: share / area, slot, name: colourName(lab) }));
}

/** The pattern of the photo that is surest of it. */
function surestPattern(slot: Slot | null, readings: readonly Reading[]): Pattern {
	const patterns = readings.map(({ pattern, patternBySlot }) => (slot ? patternBySlot[slot] : undefined) ?? pattern);
	return patterns.reduce((best, pattern) => (pattern.sure > best.sure ? pattern : best));
}

/**
 * One trust for several photos: their mean error. Photos of one piece mostly share the lamp, so more of them do not lower it; the
 * reasons and advice are those of the worst one.
 */
function jointTrust(readings: readonly Reading[]): Trust {
	const error = readings.reduce((sum, { trust }) => sum + trust.error, 0) / readings.length;
	const worst = readings.reduce((one, other) => (other.trust.error > one.trust.error ? other : one));
	return { ...worst.trust, error };
}

/**
 * The colours, pattern and trust of a piece from one or several photos, each photo weighing the same. From a photo of a person, only the
 * swatches of the piece's slot count; with `kind` null (not known yet) all do. Shares sum to 1. Without a reading: no swatches and a trust that says so.
 */
export function appearanceOf(kind: Kind | null, readings: readonly Reading[]): Appearance {
	const [first] = readings;
	if (!first) return NOTHING_READ;
	const slot = kind === null ? null : slotOfKind(kind);
	if (readings.length === 1) {
		const own = ownSwatches(slot, first);
		const area = own.reduce((sum, { share }) => sum + share, 0);
		const swatches = area > 0 ? own.map((swatch) => ({ ...swatch, share: swatch.share / area })) : [];
		return { swatches, pattern: surestPattern(slot, readings), trust: first.trust };
	}
	return {
		swatches: mixedSwatches(slot, readings),
		pattern: surestPattern(slot, readings),
		trust: jointTrust(readings),
	};
}
