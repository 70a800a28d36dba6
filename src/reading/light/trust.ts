import { linearFromLab, linearFromSrgb } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import type { Light } from '../../wardrobe/words/light.ts';
import type { PhotoQuality, Trust } from '../../wardrobe/words/reading.ts';
import { acrossOf, alongOf, type CastStops, stopsOf } from './lamp-casts.ts';

/** One thing that spoils the colour. */
type Doubt = { readonly error: number; readonly reason: string; readonly advice: string };

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
	const lamp = say(alongOf(castOf(light)) > 0 ? 'trust.warmLamp' : 'trust.coldLight');
	const byWindow = say('trust.byWindow');
	const lackCost = isMeasured(light) ? 0.5 : 3;
	return [
		{ error: lack * lackCost, reason: lack > 0.5 ? say('trust.underexposed') : '', advice: say('trust.moreLight') },
		{ error: warmth * 0.7, reason: warmth > NOTABLE_CAST ? lamp : '', advice: byWindow },
		{ error: green * 1.5, reason: green > NOTABLE_CAST ? say('trust.greenish') : '', advice: byWindow },
		{
			error: quality.clippedShare > BURNT_FROM ? 1.5 : 0,
			reason: quality.clippedShare > BURNT_FROM ? say('trust.burnt') : '',
			advice: say('trust.darker'),
		},
		{
			error: quality.clothesShare < SMALL_UNDER ? 1.5 : 0,
			reason: quality.clothesShare < SMALL_UNDER ? say('trust.small') : '',
			advice: say('trust.nearer'),
		},
		{
			error: quality.sharpness < BLURRED_UNDER ? 1 : 0,
			reason: quality.sharpness < BLURRED_UNDER ? say('trust.blurred') : '',
			advice: say('trust.still'),
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
	const isDoubtful = light.source === 'neutral-pointed' && light.strength === 0;
	return {
		error: Math.round(10 * doubts.reduce((sum, { error }) => sum + error, light.error ?? ERROR_OF_OLD)) / 10,
		reasons: [say(isDoubtful ? 'trust.doubtful' : `trust.${light.source}`), ...told.map(({ reason }) => reason)],
		advice: !isMeasured(light) ? say('trust.byWindow') : worst && worst.error >= 1 ? worst.advice : null,
		...(isMeasured(light) ? {} : { untold: true }),
	};
}
