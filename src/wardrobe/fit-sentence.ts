import type { Fit, SwatchFit } from './fit.ts';
import { FITS_FROM_PERCENT, NEAR_FROM_PERCENT, NOTHING_FROM } from './fit-score.ts';
import type { Palette, PaletteColour } from './palette-colour.ts';
import type { Trust } from './reading.ts';

/** The user's own word for a palette colour, else its systematic name. */
export const colourWord = (colour: Pick<PaletteColour, 'label' | 'name'>): string => colour.label || colour.name;

const shareText = (share: number): string => `${Math.round(share * 100)} %`;
/** One decimal under 10, none above: more digits than a photo can give would mislead. */
export const distanceText = (distance: number): string => (distance < 10 ? distance.toFixed(1) : distance.toFixed(0));

/** One swatch in words, such as "62 % of it, light grayish olive, is 3.1 from oat". */
export function swatchFitSentence(fit: Omit<SwatchFit, 'sentence'>, colour: PaletteColour | null): string {
	const part = `${shareText(fit.swatch.share)} of it, ${fit.swatch.name},`;
	if (!colour) return `${part} has no palette to be compared with.`;
	if (fit.beyondSpread >= NOTHING_FROM) return `${part} is ${distanceText(fit.distance)} from anything in the palette.`;
	const within = fit.beyondSpread === 0 ? ', within its spread' : '';
	return `${part} is ${distanceText(fit.distance)} from ${colourWord(colour)}${within}.`;
}

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
	return `The photo may err by ${error}${why}, so it could be ${range}; its colours as read say ${fit.likely}.`;
};

/** The reasons of a fit in one or two sentences: the heaviest swatch, the heaviest that does not count in full, and how sure it is. */
export function fitSentence(fit: Omit<Fit, 'sentence'>, trust: Trust, palette: Palette): string {
	const byShare = [...fit.swatches].sort((one, other) => other.swatch.share - one.swatch.share);
	const told = byShare.slice(0, 1);
	const odd = byShare.slice(1).find(({ score }) => score < 0.5);
	if (odd) told.push(odd);
	const words = told.map((one, index) => {
		const colour = palette.colours.find(({ id }) => id === one.paletteColourId) ?? null;
		const share = shareText(one.swatch.share);
		const far = one.beyondSpread >= NOTHING_FROM || !colour;
		const subject = index === 0 ? `${share} of it` : `the ${one.swatch.name} part, ${share},`;
		return far
			? `${subject} is ${distanceText(one.distance)} from anything in the palette`
			: `${subject} is ${distanceText(one.distance)} from ${colourWord(colour)}`;
	});
	return `${words.join('; ')}. ${closing(fit, trust)}`;
}
