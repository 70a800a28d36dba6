import { deltaE2000 } from '../../colour/delta-e.ts';
import { type Lab65, linearFromLab } from '../../colour/lab65.ts';
import { BACKGROUND, type LabelMap, type Pixels } from '../pixels.ts';
import { type EvenRegion, evenRegions } from './even-regions.ts';
import { acrossOf, alongOf, type CastStops, stopsOf } from './lamp-casts.ts';
import type { LampEstimate } from './lamp-estimate.ts';

/** A neutral surface found in the picture. */
export type FoundNeutral = {
	readonly kind: 'white-sheet' | 'grey-card';
	/** Its colour in the photo, uncorrected. */
	readonly seen: Lab65;
	/** Middle of it, pixels of the picture. */
	readonly x: number;
	readonly y: number;
};

/**
 * What a sheet or card laid beside a garment looks like: whole in the frame, even, with straight sides, its longer side 1.25 to 1.7 times the
 * shorter (paper sizes have 1.41, cards 1.3 to 1.6, and the camera looks on a little aslant). Measured on our renders.
 */
const LEAST_FILL = 0.85;
const ASPECT: readonly [number, number] = [1.25, 1.7];
const LARGEST_UNEVENNESS = 2.6;
const AREA_SHARE: readonly [number, number] = [0.008, 0.25];
/** Another even patch of nearly this colour (CIEDE2000) means tiles, planks or a second sheet: not certain. */
const ANOTHER_WITHIN = 6;
/** A white sheet is lighter than this, and than all but a hundredth of the other background; a grey card lies between the other two. */
const WHITE_FROM_L = 58;
const GREY_L: readonly [number, number] = [25, 62];
const BRIGHTER_SHARE = 0.01;
/** Casts that lamps give, in stops: coloured paper lies outside. A grey card must also agree with the rest of the background. */
const LARGEST_WARMTH = 1.8;
const LARGEST_GREEN = 0.22;
const CARD_AGREES_WITHIN = 0.35;

const castOf = (lab: Lab65): CastStops => {
	const [r, g, b] = linearFromLab(lab).map((channel) => Math.max(channel, 1e-4)) as [number, number, number];
	return stopsOf(r, g, b);
};

const isLampCast = (cast: CastStops): boolean =>
	Math.abs(alongOf(cast)) <= LARGEST_WARMTH && Math.abs(acrossOf(cast)) <= LARGEST_GREEN;

const isSheetShaped = ({ fill, aspect, unevenness, areaShare, onBorder }: EvenRegion): boolean =>
	fill >= LEAST_FILL &&
	aspect >= ASPECT[0] &&
	aspect <= ASPECT[1] &&
	unevenness <= LARGEST_UNEVENNESS &&
	areaShare >= AREA_SHARE[0] &&
	areaShare <= AREA_SHARE[1] &&
	onBorder === 0;

/** Luminance 0..1 of linear light is monotonic in the mean of the channels' bytes well enough to rank background pixels by green, its main part. */
function shareBrighter({ rgb }: Pixels, { classes }: LabelMap, region: EvenRegion): number {
	const green = 255 * encodedGreen(region.lab);
	let brighter = 0;
	let all = 0;
	for (let at = 0; at < classes.length; at++) {
		if (classes[at] !== BACKGROUND) continue;
		all++;
		if (rgb[at * 3 + 1]! > green + BRIGHTER_MARGIN) brighter++;
	}
	return brighter / Math.max(1, all - region.areaShare * classes.length);
}
/** Noise and fall-off of light over the sheet itself, in byte steps. */
const BRIGHTER_MARGIN = 10;
const encodedGreen = (lab: Lab65): number => {
	const [, green] = linearFromLab(lab);
	return green <= 0.0031308 ? 12.92 * green : 1.055 * green ** (1 / 2.4) - 0.055;
};

/**
 * A white sheet or a grey card that lies in the background, or null where it is not certain: nothing of the shape, more than one, a colour
 * that no lamp gives, or something brighter beside it. `estimate` is what the rest of the background says of the lamp.
 */
export function foundNeutral(pixels: Pixels, labels: LabelMap, estimate: LampEstimate | null): FoundNeutral | null {
	const regions = evenRegions(pixels, labels);
	const sheets = regions.filter((region) => isSheetShaped(region) && isLampCast(castOf(region.lab)));
	const alone = sheets.filter(
		(sheet) =>
			!regions.some(
				(other) =>
					other !== sheet && other.areaShare > sheet.areaShare / 4 && deltaE2000(other.lab, sheet.lab) < ANOTHER_WITHIN,
			),
	);
	const white = alone.filter(
		(sheet) => sheet.lab[0] >= WHITE_FROM_L && shareBrighter(pixels, labels, sheet) <= BRIGHTER_SHARE,
	);
	if (white.length === 1) return { kind: 'white-sheet', seen: white[0]!.lab, x: white[0]!.x, y: white[0]!.y };
	if (white.length > 1 || !estimate) return null;
	const grey = alone.filter(({ lab }) => {
		const cast = castOf(lab);
		const apart = Math.hypot(cast.red - estimate.likely.red, cast.blue - estimate.likely.blue);
		return lab[0] >= GREY_L[0] && lab[0] <= GREY_L[1] && apart <= CARD_AGREES_WITHIN;
	});
	return grey.length === 1 ? { kind: 'grey-card', seen: grey[0]!.lab, x: grey[0]!.x, y: grey[0]!.y } : null;
}
