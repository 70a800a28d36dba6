import { labWithoutCast } from '../../src/colour/adaptation.ts';
import { clusterLab } from '../../src/colour/cluster.ts';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { labFromPixels } from '../../src/colour/lab-pixels.ts';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { colourName } from '../../src/colour/name.ts';
import { type Kind, slotOfKind } from '../../src/wardrobe/words/kind.ts';
import type { Appearance, Swatch, Trust } from '../../src/wardrobe/words/reading.ts';

/** Mean CIEDE2000 of phone photos without and with a grey reference; measured on 18 phone photos of the 24-patch chart. */
const ERROR_WITHOUT_WHITE = 9;
const ERROR_WITH_WHITE = 6;
/** Folds and shadows of one cloth stay one swatch when lightness counts this little. */
const LIGHTNESS_WEIGHT = 0.4;
const MAX_SWATCHES = 5;
const SMALLEST_SHARE = 0.03;
/** Nearer clusters are one cloth to the eye. */
const SAME_CLOTH = 8;

/** How far the piece in hand can be judged, with the reason and what would help. */
export function trustInHand(hasWhite: boolean): Trust {
	return hasWhite
		? {
				error: ERROR_WITH_WHITE,
				reasons: ['corrected by the white you tapped; a phone still adds contrast and colour of its own'],
				advice: null,
			}
		: {
				error: ERROR_WITHOUT_WHITE,
				reasons: ['no white in the picture was tapped, so the lamp may have tinted it'],
				advice: 'Hold a receipt or a sheet of paper beside the piece, take the photo again, and tap the paper first.',
			};
}

type Pixels = { readonly data: Uint8ClampedArray; readonly width: number; readonly height: number };

/** The mean colour around a point, for a white that the user taps. */
export function labAround(pixels: Pixels, x: number, y: number): Lab65 {
	const radius = Math.max(2, Math.round(Math.min(pixels.width, pixels.height) / 100));
	const points: number[] = [];
	for (let row = Math.max(0, y - radius); row <= Math.min(pixels.height - 1, y + radius); row++) {
		for (let column = Math.max(0, x - radius); column <= Math.min(pixels.width - 1, x + radius); column++) {
			points.push(...pixels.data.subarray((row * pixels.width + column) * 4, (row * pixels.width + column) * 4 + 4));
		}
	}
	const labs = labFromPixels(Uint8Array.from(points), 4);
	const { centres } = clusterLab(labs, null, 1);
	return centres[0] ?? [0, 0, 0];
}

/** Near clusters joined by area, heaviest first, tiny ones dropped; shares sum to 1. */
function clothColours(centres: readonly Lab65[], shares: readonly number[]): { lab: Lab65; share: number }[] {
	const colours: { lab: Lab65; share: number }[] = [];
	for (const [index, lab] of centres.entries()) {
		const share = shares[index]!;
		const same = colours.find((colour) => deltaE2000(colour.lab, lab) < SAME_CLOTH);
		if (same) same.share += share;
		else colours.push({ lab, share });
	}
	const kept = colours.filter(({ share }) => share >= SMALLEST_SHARE).slice(0, MAX_SWATCHES);
	const total = kept.reduce((sum, { share }) => sum + share, 0);
	return kept.map(({ lab, share }) => ({ lab, share: share / total }));
}

/** The piece's colours from the marked pixels (`mask`: 1 = piece), in the terms every judgement takes. */
export function appearanceInHand(pixels: Pixels, mask: Uint8Array, kind: Kind, white: Lab65 | null): Appearance {
	const chosen: number[] = [];
	for (let pixel = 0; pixel < mask.length; pixel++) {
		if (mask[pixel]) chosen.push(pixels.data[pixel * 4]!, pixels.data[pixel * 4 + 1]!, pixels.data[pixel * 4 + 2]!);
	}
	const { centres, shares } = clusterLab(labFromPixels(Uint8Array.from(chosen), 3), null, 6, {
		lightnessWeight: LIGHTNESS_WEIGHT,
	});
	const corrected = centres.map((lab) => (white ? labWithoutCast(lab, white) : lab));
	const swatches: Swatch[] = clothColours(corrected, shares).map(({ lab, share }) => ({
		lab,
		share,
		slot: slotOfKind(kind),
		name: colourName(lab),
	}));
	return {
		swatches,
		pattern: { type: swatches.length > 1 ? 'printed' : 'plain', sure: 0.5 },
		trust: trustInHand(white !== null),
	};
}
