import { colourName } from '../../colour/name.ts';
import { say } from '../../language/speak.ts';
import { jointSwatches } from './joint-swatches.ts';
import { jointTrust } from './joint-trust.ts';
import { type Kind, slotOfKind } from './kind.ts';
import type { Appearance, Pattern, Reading, Swatch } from './reading.ts';
import type { Slot } from './slot.ts';

/** Most swatches of one piece, and the share under which one is dropped: the same limits as for one photo. */
const MOST_SWATCHES = 5;
const LEAST_SHARE = 0.03;

/** What a piece looks like before any of its photos is read: no colours, no trust. */
const nothingRead = (): Appearance => ({
	swatches: [],
	pattern: { type: 'plain', sure: 0 },
	trust: { error: 100, reasons: [say('reports.nothingRead')], advice: say('reports.addPhoto') },
});

/** The photo's swatches that belong to the piece: those of its slot where the photo shows several, all otherwise. */
function ownSwatches(slot: Slot | null, reading: Reading): readonly Swatch[] {
	if (slot === null) return reading.swatches;
	const own = reading.swatches.filter((swatch) => swatch.slot === slot);
	return own.length > 0 ? own : reading.swatches;
}

function mixedSwatches(slot: Slot | null, readings: readonly Reading[]): Swatch[] {
	const photos = readings.flatMap((reading) => {
		const own = ownSwatches(slot, reading);
		const area = own.reduce((sum, { share }) => sum + share, 0);
		const swatches = own.map(({ lab, share }) => ({ lab, share: share / area }));
		return area > 0 ? [{ swatches, trust: reading.trust, takenAt: reading.takenAt }] : [];
	});
	const kept = jointSwatches(photos)
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
 * The colours, pattern and trust of a piece from one or several photos, each photo weighing the same in area, and by its trust
 * in colour. From a photo of a person, only the
 * swatches of the piece's slot count; with `kind` null (not known yet) all do. Shares sum to 1. Without a reading: no swatches and a trust that says so.
 */
export function appearanceOf(kind: Kind | null, readings: readonly Reading[]): Appearance {
	const [first] = readings;
	if (!first) return nothingRead();
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
