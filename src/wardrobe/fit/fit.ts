import type { Lab65 } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import { REACH, reachOf } from '../palette/palette-reach.ts';
import { type Palette, type PaletteColour, vouchingColours } from '../words/palette-colour.ts';
import { distanceToPalette } from '../words/photo-distance.ts';
import type { Appearance, Swatch, Trust } from '../words/reading.ts';
import type { Fit, SwatchFit, Verdict } from './fit-result.ts';
import { FITS_FROM_PERCENT, fitScore, NEAR_FROM_PERCENT, ODD_FROM_SHARE, OFF_FROM } from './fit-score.ts';
import { fitSentence, swatchFitSentence } from './fit-sentence.ts';

export type NearestColour = {
	readonly colour: PaletteColour;
	/** CIEDE2000 to its centre. */
	readonly distance: number;
	/** The distance, less what the colour reaches beyond the usual: what the score is taken from and an error of the photo is added to. */
	readonly margin: number;
	/** Whether the cloth counts as the colour. */
	readonly within: boolean;
};

/** What was found before, by the palette and the colour as they stand in memory, which never change: many judgements ask about the same cloth. */
type Found = WeakMap<Palette, WeakMap<Lab65, NearestColour | null>>;
const FOUND: { readonly told: Found; readonly untold: Found } = { told: new WeakMap(), untold: new WeakMap() };

/**
 * The palette colour that the cloth comes nearest to, reaches considered (ties: the nearer centre, then the earlier), or `null` for an empty palette. Hints are
 * passed over. By the photo's `trust` lightness counts less where nothing tells its light.
 */
export function nearestColour(
	lab: Lab65,
	palette: Palette,
	{ untold = false }: Pick<Trust, 'untold'> = {},
): NearestColour | null {
	const byPalette = FOUND[untold ? 'untold' : 'told'];
	const found = byPalette.get(palette) ?? new WeakMap<Lab65, NearestColour | null>();
	byPalette.set(palette, found);
	const before = found.get(lab);
	if (before !== undefined) return before;
	const nearest = searchNearest(lab, palette, untold);
	found.set(lab, nearest);
	return nearest;
}

function searchNearest(lab: Lab65, palette: Palette, untold: boolean): NearestColour | null {
	let best: { readonly colour: PaletteColour; readonly distance: number; readonly margin: number } | null = null;
	for (const colour of vouchingColours(palette)) {
		const distance = distanceToPalette(lab, colour.lab, untold);
		const margin = distance - (reachOf(colour) - REACH);
		if (best === null || margin < best.margin || (margin === best.margin && distance < best.distance))
			best = { colour, distance, margin };
	}
	return best && { ...best, within: best.distance <= reachOf(best.colour) };
}

/**
 * A photo's stated error is the length in three directions that 80 % of errors stay under (2.154 standard deviations, chi distribution with
 * 3 degrees of freedom). Along the one direction that leads to or from the palette, 80 % stay within 1.282 standard deviations either
 * way. What the error does sideways is in the palette's spreads already, which were measured on photos too.
 */
const ALONG_ONE_DIRECTION = 1.282 / 2.154;

/** A piece as far as its colours are concerned. */
type Piece = Pick<Appearance, 'swatches'> & { readonly trust?: Pick<Trust, 'untold'> };

type Part = { readonly share: number; readonly margin: number };

/** Area-weighted mean score, 0..100, with every swatch taken `shift` further from the palette; 0 without area. */
function percentOf(parts: readonly Part[], shift: number): number {
	let area = 0;
	let covered = 0;
	for (const { share, margin } of parts) {
		area += share;
		covered += share * fitScore(Math.max(0, margin + shift));
	}
	return area > 0 ? Math.min(100, (100 * covered) / area) : 0;
}

/** A piece without palette gives parts that are infinitely far. */
const partsOf = ({ swatches, trust }: Piece, palette: Palette): Part[] =>
	swatches.map(({ lab, share }) => ({
		share,
		margin: nearestColour(lab, palette, trust)?.margin ?? Number.POSITIVE_INFINITY,
	}));

/** The number of `fitOf` alone, 0..100, without interval and sentences: for judgements over many garments. */
export const fitPercentOf = (appearance: Piece, palette: Palette): number => percentOf(partsOf(appearance, palette), 0);

/** The verdict over parts taken `shift` further from the palette: by percentage, but nothing with an odd part of some size fits. */
function verdictOf(parts: readonly Part[], shift: number): Exclude<Verdict, 'unsure'> {
	const percent = percentOf(parts, shift);
	const area = parts.reduce((sum, { share }) => sum + share, 0);
	const odd = parts.reduce((sum, { share, margin }) => sum + (margin + shift >= OFF_FROM ? share : 0), 0);
	if (percent < NEAR_FROM_PERCENT) return 'off';
	return percent < FITS_FROM_PERCENT || odd >= ODD_FROM_SHARE * area ? 'near' : 'fits';
}

/** The verdict that a piece's colours as read would give: the `likely` of `fitOf`, without interval and sentences. */
export const likelyVerdict = (appearance: Piece, palette: Palette): Exclude<Verdict, 'unsure'> =>
	verdictOf(partsOf(appearance, palette), 0);

/** Whether a piece's colours as read fit the palette: the `likely` of `fitOf`, without interval and sentences. */
export const fitsPalette = (appearance: Piece, palette: Palette): boolean =>
	likelyVerdict(appearance, palette) === 'fits';

/** Tells whether the verdict changes within an error of so much: the `unsure` of `fitOf`, without the rest of it. */
export function unsureAt(appearance: Piece, palette: Palette): (error: number) => boolean {
	const parts = partsOf(appearance, palette);
	const canTell = parts.some(({ share, margin }) => share > 0 && Number.isFinite(margin));
	return (error) => {
		const shift = error * ALONG_ONE_DIRECTION;
		return !canTell || verdictOf(parts, shift) !== verdictOf(parts, -shift);
	};
}

function swatchFit(swatch: Swatch, nearest: NearestColour | null): SwatchFit {
	const fit = {
		swatch,
		paletteColourId: nearest?.colour.id ?? null,
		distance: nearest?.distance ?? 0,
		within: nearest?.within ?? false,
		score: nearest ? fitScore(nearest.margin) : 0,
	};
	return { ...fit, sentence: swatchFitSentence(fit, nearest?.colour ?? null) };
}

/**
 * How far a piece lies within the palette, with the interval that its photo's trust allows. An empty palette or a piece without
 * colours gives 0 with `unsure`, and the sentence says which is missing.
 */
export function fitOf(appearance: Appearance, palette: Palette): Fit {
	const swatches = appearance.swatches.map((swatch) =>
		swatchFit(swatch, nearestColour(swatch.lab, palette, appearance.trust)),
	);
	const area = swatches.reduce((sum, { swatch }) => sum + swatch.share, 0);
	const isEmpty = vouchingColours(palette).length === 0;
	if (isEmpty || !(area > 0)) {
		const sentence = isEmpty ? say('reports.noPalette') : say('reports.noColours');
		return {
			percent: 0,
			low: 0,
			high: isEmpty ? 0 : 100,
			verdict: 'unsure',
			likely: 'off',
			sentence,
			swatches,
		};
	}
	const parts = partsOf(appearance, palette);
	const error = appearance.trust.error * ALONG_ONE_DIRECTION;
	const [percent, low, high] = [percentOf(parts, 0), percentOf(parts, error), percentOf(parts, -error)];
	const likely = verdictOf(parts, 0);
	const room = { worst: verdictOf(parts, error), best: verdictOf(parts, -error) };
	const verdict: Verdict = room.worst === room.best ? likely : 'unsure';
	const fit = { percent, low, high, verdict, likely, swatches };
	return { ...fit, sentence: fitSentence(fit, appearance.trust, palette, room) };
}
