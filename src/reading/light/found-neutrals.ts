import { deltaE2000 } from '../../colour/delta-e.ts';
import { type Lab65, linearFromLab, srgbFromLab } from '../../colour/lab65.ts';
import { SAME_SURFACE } from '../../colour/same-colour.ts';
import type { TellingNeutrals } from '../../wardrobe/words/light-error.ts';
import { BACKGROUND, type LabelMap, type Pixels } from '../pixels.ts';
import { type EvenRegion, evenRegions } from './even-regions.ts';
import { acrossOf, alongOf, type CastStops, stopsOf } from './lamp-casts.ts';
import { CARD_LIGHTNESS, PAPER_LIGHTNESS } from './neutral-guard.ts';

/**
 * What a sheet or card laid beside a garment looks like: whole in the frame, even, with straight sides, its longer side 1.25 to 1.7 times the
 * shorter (paper sizes have 1.41, cards 1.3 to 1.6, and the camera looks on a little aslant). Measured on our renders.
 */
const LEAST_FILL = 0.85;
const ASPECT: readonly [number, number] = [1.25, 1.7];
const LARGEST_UNEVENNESS = 2.6;
const AREA_SHARE: readonly [number, number] = [0.008, 0.25];
/** A white sheet is lighter than this, and than all but a hundredth of the other background; a grey card lies between the other two. */
const WHITE_FROM_L = 58;
const GREY_L: readonly [number, number] = [25, 76];
const BRIGHTER_SHARE = 0.01;
/** Casts that lamps give, in stops: coloured paper lies outside. A grey card must look greyer: phones balance most of a lamp out. */
const LARGEST_WARMTH = 1.75;
const LARGEST_GREEN = 0.22;
const CARD_WARMTH = 0.5;
/** A card beside a sheet has the sheet's cast, and is darker than it by so much in CIELAB lightness. */
const CARD_AGREES_WITHIN = 0.2;
const CARD_DARKER_BY = 10;

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
	const green = 255 * srgbFromLab(region.lab)[1];
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

/** The only one of these, or null where there is none or more than one: two alike are tiles or planks. */
const only = (regions: readonly EvenRegion[]): EvenRegion | null => (regions.length === 1 ? regions[0]! : null);

/** Whether a region can be a grey card: on its own nearly grey, beside a white sheet of the sheet's cast and darker. */
function isCard({ lab }: EvenRegion, white: EvenRegion | null): boolean {
	if (lab[0] < GREY_L[0] || lab[0] > GREY_L[1]) return false;
	const cast = castOf(lab);
	if (!white) return Math.abs(alongOf(cast)) <= CARD_WARMTH;
	const other = castOf(white.lab);
	const apart = Math.hypot(cast.red - other.red, cast.blue - other.blue);
	return apart <= CARD_AGREES_WITHIN && lab[0] <= white.lab[0] - CARD_DARKER_BY;
}

/**
 * A white sheet and a grey card that lie in the background, as far as they are certain: the shape, alone of its kind, a colour that lamps give,
 * nothing brighter beside the sheet. Null where neither is. A card is taken for the usual one of L* 50.
 */
export function foundNeutrals(pixels: Pixels, labels: LabelMap): TellingNeutrals | null {
	const regions = evenRegions(pixels, labels);
	const sheets = regions.filter((region) => isSheetShaped(region) && isLampCast(castOf(region.lab)));
	const alone = sheets.filter(
		(sheet) =>
			!regions.some(
				(other) =>
					other !== sheet && other.areaShare > sheet.areaShare / 4 && deltaE2000(other.lab, sheet.lab) < SAME_SURFACE,
			),
	);
	const whites = alone.filter(
		(sheet) => sheet.lab[0] >= WHITE_FROM_L && shareBrighter(pixels, labels, sheet) <= BRIGHTER_SHARE,
	);
	if (whites.length > 1) return null;
	const white = only(whites);
	const grey = only(alone.filter((sheet) => sheet !== white && isCard(sheet, white)));
	if (!white && !grey) return null;
	return {
		white: white && { kind: 'white', seen: white.lab, lightness: PAPER_LIGHTNESS },
		grey: grey && { kind: 'grey', seen: grey.lab, lightness: CARD_LIGHTNESS },
	};
}
