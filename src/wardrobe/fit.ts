import { deltaE2000Of } from '../colour/delta-e-many.ts';
import type { Lab65 } from '../colour/lab65.ts';
import { FITS_FROM_PERCENT, fitScore, NEAR_FROM_PERCENT } from './fit-score.ts';
import { fitSentence, swatchFitSentence } from './fit-sentence.ts';
import type { Palette, PaletteColour } from './palette-colour.ts';
import type { Appearance, Swatch } from './reading.ts';

/** What the fit of a piece amounts to; `unsure` where its photo does not allow more. */
export type Verdict = 'fits' | 'near' | 'off' | 'unsure';

/** One swatch against the palette. */
export type SwatchFit = {
	readonly swatch: Swatch;
	/** The palette colour it is nearest to once that colour's spread is taken off; `null` for an empty palette. */
	readonly paletteColourId: string | null;
	/** CIEDE2000 to that colour's centre. */
	readonly distance: number;
	/** What of it lies beyond that colour's own spread, 0 or more. */
	readonly beyondSpread: number;
	/** 0..1, see `fitScore`. */
	readonly score: number;
	readonly sentence: string;
};

/** How far a garment, wish or candidate lies within the palette. */
export type Fit = {
	/** 0..100: area-weighted mean of the swatches' scores; 0 where there is nothing to compare. */
	readonly percent: number;
	/** What it could be if every swatch were wrong by the photo's expected error, away from or towards the palette. */
	readonly low: number;
	readonly high: number;
	readonly verdict: Verdict;
	/** The verdict that `percent` alone would give: the best guess behind an `unsure`. */
	readonly likely: Exclude<Verdict, 'unsure'>;
	readonly sentence: string;
	readonly swatches: readonly SwatchFit[];
};

/** The palette colour with the least distance beyond its spread (ties: the nearer centre, then the earlier), or `null` for an empty palette. */
export function nearestColour(
	lab: Lab65,
	palette: Palette,
): { readonly colour: PaletteColour; readonly distance: number; readonly beyondSpread: number } | null {
	let best: { colour: PaletteColour; distance: number; beyondSpread: number } | null = null;
	for (const colour of palette.colours) {
		const distance = deltaE2000Of(lab[0], lab[1], lab[2], colour.lab[0], colour.lab[1], colour.lab[2]);
		const beyondSpread = Math.max(0, distance - colour.spread);
		if (
			best === null ||
			beyondSpread < best.beyondSpread ||
			(beyondSpread === best.beyondSpread && distance < best.distance)
		) {
			best = { colour, distance, beyondSpread };
		}
	}
	return best;
}

/** Area-weighted mean score, 0..100, with every swatch taken `shift` further from the palette; 0 without area. */
function percentOf(parts: readonly Pick<SwatchFit, 'swatch' | 'beyondSpread'>[], shift: number): number {
	let area = 0;
	let covered = 0;
	for (const { swatch, beyondSpread } of parts) {
		area += swatch.share;
		covered += swatch.share * fitScore(beyondSpread + shift);
	}
	return area > 0 ? Math.min(100, (100 * covered) / area) : 0;
}

/** The number of `fitOf` alone, 0..100, without interval and sentences: for judgements over many garments. */
export function fitPercentOf(appearance: Pick<Appearance, 'swatches'>, palette: Palette): number {
	if (palette.colours.length === 0) return 0;
	const parts = appearance.swatches.map((swatch) => ({
		swatch,
		beyondSpread: nearestColour(swatch.lab, palette)!.beyondSpread,
	}));
	return percentOf(parts, 0);
}

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
	const percentWith = (shift: number) => percentOf(swatches, shift);
	const { error } = appearance.trust;
	const [percent, low, high] = [percentWith(0), percentWith(error), percentWith(-error)];
	const likely = verdictOf(percent);
	const verdict: Verdict = verdictOf(low) === verdictOf(high) ? likely : 'unsure';
	const fit = { percent, low, high, verdict, likely, swatches };
	return { ...fit, sentence: fitSentence(fit, appearance.trust, palette) };
}
