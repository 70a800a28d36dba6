import { distanceText } from '../words/distance-text.ts';
import { colourWord, type Palette, type PaletteColour } from '../words/palette-colour.ts';
import type { Trust } from '../words/reading.ts';
import type { Fit, SwatchFit } from './fit-result.ts';
import { FITS_FROM_PERCENT, NEAR_FROM_PERCENT, NOTHING_FROM } from './fit-score.ts';

const shareText = (share: number): string => `${Math.round(share * 100)} %`;
/** One swatch in words, such as "62 % of it, light grayish olive, is 3.1 from oat". */
export function swatchFitSentence(fit: Omit<SwatchFit, 'sentence'>, colour: PaletteColour | null): string {
	const part = `${shareText(fit.swatch.share)} of it, ${fit.swatch.name},`;
	if (!colour) return `${part} has no palette to be compared with.`;
	if (fit.distance >= NOTHING_FROM) return `${part} is ${distanceText(fit.distance)} from anything in the palette.`;
	return `${part} is ${distanceText(fit.distance)} from ${colourWord(colour)}${fit.within ? '' : ', too far to be it'}.`;
}

/** The likely verdict behind an `unsure`, in words. */
export const LIKELY_WORDS: Readonly<Record<Fit['likely'], string>> = {
	fits: 'likely fits',
	near: 'likely near',
	off: 'likely off',
};

const closing = (fit: Omit<Fit, 'sentence'>, trust: Trust): string => {
	const error = distanceText(trust.error);
	if (fit.verdict === 'fits') return 'It fits.';
	if (fit.verdict === 'near') return 'It is near the palette, not in it.';
	if (fit.verdict === 'off') return 'It is off the palette.';
	const range =
		fit.high < FITS_FROM_PERCENT
			? 'off or near'
			: fit.low < NEAR_FROM_PERCENT
				? 'anything from off to fitting'
				: 'near or fitting';
	const why = trust.reasons[0] ? ` (${trust.reasons[0]})` : '';
	return `Unsure, ${LIKELY_WORDS[fit.likely]}: the photo may err by ${error}${why}, so it could be ${range}. Look at it in daylight.`;
};

/** What lies near one palette colour, taken together: share, and mean distance by area. */
type NearPart = { readonly colour: PaletteColour; readonly share: number; readonly distance: number };

function nearParts(fit: Omit<Fit, 'sentence'>, palette: Palette): NearPart[] {
	return palette.colours
		.map((colour) => {
			const own = fit.swatches.filter(
				({ paletteColourId, score }) => paletteColourId === colour.id && score >= ODD_UNDER,
			);
			const share = own.reduce((sum, { swatch }) => sum + swatch.share, 0);
			const distance = own.reduce((sum, one) => sum + one.distance * one.swatch.share, 0) / share;
			return { colour, share, distance };
		})
		.filter(({ share }) => share > 0)
		.sort((one, other) => other.share - one.share);
}

/** A swatch that counts less than half is odd, and told apart. */
const ODD_UNDER = 0.5;

/** The reasons of a fit: what of it lies near which colour, the heaviest part first, the heaviest odd part, and how sure it is. */
export function fitSentence(fit: Omit<Fit, 'sentence'>, trust: Trust, palette: Palette): string {
	const near = nearParts(fit, palette).map(
		({ colour, share, distance }) =>
			`${shareText(share)} of it is ${distanceText(distance)} from ${colourWord(colour)}`,
	);
	const odd = fit.swatches
		.filter(({ score }) => score < ODD_UNDER)
		.sort((one, other) => other.swatch.share - one.swatch.share)[0];
	const oddColour = odd && palette.colours.find(({ id }) => id === odd.paletteColourId);
	const where = odd && odd.distance < NOTHING_FROM && oddColour ? colourWord(oddColour) : 'anything in the palette';
	const told = near.slice(0, 2);
	if (odd)
		told.push(
			`the ${odd.swatch.name} part, ${shareText(odd.swatch.share)}, is ${distanceText(odd.distance)} from ${where}`,
		);
	const reasons = told.join('; ');
	return `${reasons.charAt(0).toUpperCase()}${reasons.slice(1)}. ${closing(fit, trust)}`;
}
