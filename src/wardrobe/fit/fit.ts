import { deltaE2000Of } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { Palette, PaletteColour } from '../words/palette-colour.ts';
import type { Appearance, Swatch } from '../words/reading.ts';
import type { Fit, SwatchFit, Verdict } from './fit-result.ts';
import { FITS_FROM_PERCENT, fitScore, NEAR_FROM_PERCENT } from './fit-score.ts';
import { fitSentence, swatchFitSentence } from './fit-sentence.ts';

export type NearestColour = {
	readonly colour: PaletteColour;
	/** CIEDE2000 to its centre. */
	readonly distance: number;
	/** What of it lies beyond the colour's spread, 0 or more. */
	readonly beyondSpread: number;
	/** Least distance beyond a spread over all colours, negative inside one: what an error of the photo is added to. */
	readonly margin: number;
};

/** The palette colour with the least distance beyond its spread (ties: the nearer centre, then the earlier), or `null` for an empty palette. */
export function nearestColour(lab: Lab65, palette: Palette): NearestColour | null {
	let best: NearestColour | null = null;
	for (const colour of palette.colours) {
		const distance = deltaE2000Of(lab[0], lab[1], lab[2], colour.lab[0], colour.lab[1], colour.lab[2]);
		const margin = Math.min(distance - colour.spread, best?.margin ?? Number.POSITIVE_INFINITY);
		const beyondSpread = Math.max(0, distance - colour.spread);
		const nearer: boolean =
			best === null ||
			beyondSpread < best.beyondSpread ||
			(beyondSpread === best.beyondSpread && distance < best.distance);
		best = nearer ? { colour, distance, beyondSpread, margin } : { ...best!, margin };
	}
	return best;
}

/**
 * A photo's stated error is the length in three directions that 80 % of errors stay under (2.154 standard deviations, chi distribution with
 * 3 degrees of freedom). Along the one direction that leads to or from the palette, 80 % stay within 1.282 standard deviations either
 * way. What the error does sideways is in the palette's spreads already, which were measured on photos too.
 */
const ALONG_ONE_DIRECTION = 1.282 / 2.154;

/** Area-weighted mean score, 0..100, with every swatch taken `shift` further from the palette; 0 without area. */
function percentOf(parts: readonly { readonly share: number; readonly margin: number }[], shift: number): number {
	let area = 0;
	let covered = 0;
	for (const { share, margin } of parts) {
		area += share;
		covered += share * fitScore(Math.max(0, margin + shift));
	}
	return area > 0 ? Math.min(100, (100 * covered) / area) : 0;
}

const partsOf = ({ swatches }: Pick<Appearance, 'swatches'>, palette: Palette) =>
	swatches.map(({ lab, share }) => ({ share, margin: nearestColour(lab, palette)!.margin }));

/** The number of `fitOf` alone, 0..100, without interval and sentences: for judgements over many garments. */
export const fitPercentOf = (appearance: Pick<Appearance, 'swatches'>, palette: Palette): number =>
	palette.colours.length === 0 ? 0 : percentOf(partsOf(appearance, palette), 0);

const verdictOf = (percent: number): Exclude<Verdict, 'unsure'> =>
	percent >= FITS_FROM_PERCENT ? 'fits' : percent >= NEAR_FROM_PERCENT ? 'near' : 'off';

function swatchFit(swatch: Swatch, palette: Palette): SwatchFit {
	const nearest = nearestColour(swatch.lab, palette);
	const fit = {
		swatch,
		paletteColourId: nearest?.colour.id ?? null,
		distance: nearest?.distance ?? 0,
		beyondSpread: nearest?.beyondSpread ?? 0,
		score: nearest ? fitScore(nearest.beyondSpread) : 0,
	};
	return { ...fit, sentence: swatchFitSentence(fit, nearest?.colour ?? null) };
}

/**
 * How far a piece lies within the palette, with the interval that its photo's trust allows. An empty palette or a piece without
 * colours gives 0 with `unsure`, and the sentence says which is missing.
 */
export function fitOf(appearance: Appearance, palette: Palette): Fit {
	const swatches = appearance.swatches.map((swatch) => swatchFit(swatch, palette));
	const area = swatches.reduce((sum, { swatch }) => sum + swatch.share, 0);
	if (palette.colours.length === 0 || !(area > 0)) {
		const sentence =
			palette.colours.length === 0
				? 'The season has no palette yet, so there is nothing to compare it with.'
				: 'Its photos have given no colours yet, so it cannot be compared with the palette.';
		return {
			percent: 0,
			low: 0,
			high: palette.colours.length === 0 ? 0 : 100,
			verdict: 'unsure',
			likely: 'off',
			sentence,
			swatches,
		};
	}
	const parts = partsOf(appearance, palette);
	const percentWith = (shift: number) => percentOf(parts, shift);
	const error = appearance.trust.error * ALONG_ONE_DIRECTION;
	const [percent, low, high] = [percentWith(0), percentWith(error), percentWith(-error)];
	const likely = verdictOf(percent);
	const verdict: Verdict = verdictOf(low) === verdictOf(high) ? likely : 'unsure';
	const fit = { percent, low, high, verdict, likely, swatches };
	return { ...fit, sentence: fitSentence(fit, appearance.trust, palette) };
}
