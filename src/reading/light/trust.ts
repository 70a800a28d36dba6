import { linearFromLab, linearFromSrgb } from '../../colour/lab65.ts';
import type { Light } from '../../wardrobe/words/light.ts';
import type { PhotoQuality, Trust } from '../../wardrobe/words/reading.ts';
import { acrossOf, alongOf, type CastStops, stopsOf } from './lamp-casts.ts';

const WORDS_BY_LIGHT: Readonly<Record<Light['source'], string>> = {
	'by-hand': 'its light was set by hand',
	'neutral-pointed': 'corrected by the neutral you pointed at',
	'neutral-found': 'corrected by a white or grey found in the picture',
	ground: 'corrected by the ground it shares with other photos',
	group: 'corrected by another picture of the same light',
	estimate: 'its lamp is only estimated, no white in the picture',
	none: 'no white in the picture tells its lamp',
};

/** One thing that spoils the colour. */
type Doubt = { readonly error: number; readonly reason: string; readonly advice: string };

const BY_WINDOW =
	'Photograph it by a window, beside a sheet of white paper and, if you have one, a grey card, and point at both.';

/** Luminance that the brightest hundredth of a well exposed photo has, and the most stops of lack that count. */
const BRIGHT = 0.7;
const LARGEST_LACK = 2;
/** Share of clothes burnt out, share of the frame that clothes should have, and step between neighbours in a sharp picture. */
const BURNT_FROM = 0.1;
const SMALL_UNDER = 0.03;
const BLURRED_UNDER = 0.05;
/** Casts that are worth a word, in stops. */
const NOTABLE_CAST = 0.3;
/** Error of a light kept before each had its own, by 17 phone photos without any neutral. */
const ERROR_OF_OLD = 10;

const isMeasured = ({ strength, source }: Light): boolean => strength === 1 && source !== 'estimate';

function castOf({ cast }: Light): CastStops {
	if (!cast) return { red: 0, blue: 0 };
	const [r, g, b] = linearFromLab(cast).map((channel) => Math.max(channel, 1e-4)) as [number, number, number];
	return stopsOf(r, g, b);
}

function lackStops({ brightest }: PhotoQuality): number {
	const [luminance] = linearFromSrgb([brightest, brightest, brightest]);
	return Math.min(LARGEST_LACK, Math.max(0, Math.log2(BRIGHT / Math.max(luminance, 0.01))));
}

function doubtsOf(light: Light, quality: PhotoQuality): Doubt[] {
	const warmth = Math.min(1.5, Math.abs(alongOf(castOf(light))));
	const green = Math.min(1, Math.abs(acrossOf(castOf(light))));
	const lack = lackStops(quality);
	const lamp = alongOf(castOf(light)) > 0 ? 'a warm lamp' : 'a cold light';
	const lackCost = isMeasured(light) ? 0.5 : 3;
	return [
		{ error: lack * lackCost, reason: lack > 0.5 ? 'underexposed' : '', advice: 'Photograph it in more light.' },
		{ error: warmth * 0.7, reason: warmth > NOTABLE_CAST ? lamp : '', advice: BY_WINDOW },
		{ error: green * 1.5, reason: green > NOTABLE_CAST ? 'a greenish or pinkish light' : '', advice: BY_WINDOW },
		{
			error: quality.clippedShare > BURNT_FROM ? 1.5 : 0,
			reason: quality.clippedShare > BURNT_FROM ? 'partly burnt out, or more vivid than a photo can hold' : '',
			advice: 'Photograph it a little darker: tap the brightest part of the cloth before taking the picture.',
		},
		{
			error: quality.clothesShare < SMALL_UNDER ? 1.5 : 0,
			reason: quality.clothesShare < SMALL_UNDER ? 'small in the picture' : '',
			advice: 'Photograph it from nearer.',
		},
		{
			error: quality.sharpness < BLURRED_UNDER ? 1 : 0,
			reason: quality.sharpness < BLURRED_UNDER ? 'blurred, or without any edge' : '',
			advice: 'Hold the camera still and photograph it again.',
		},
	];
}

/**
 * How far the reading can be believed: the error in CIEDE2000 that about four photos in five of this kind stay below, the reasons with the
 * weightiest first, and what would help most (null where the light is measured and nothing else weighs).
 */
export function trustOf(light: Light, quality: PhotoQuality): Trust {
	const doubts = doubtsOf(light, quality);
	const told = doubts.filter(({ reason }) => reason !== '').sort((a, b) => b.error - a.error);
	const worst = told[0];
	return {
		error: Math.round(10 * doubts.reduce((sum, { error }) => sum + error, light.error ?? ERROR_OF_OLD)) / 10,
		reasons: [WORDS_BY_LIGHT[light.source], ...told.map(({ reason }) => reason)],
		advice: !isMeasured(light) ? BY_WINDOW : worst && worst.error >= 1 ? worst.advice : null,
		...(isMeasured(light) ? {} : { untold: true }),
	};
}
