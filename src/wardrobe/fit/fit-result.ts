import type { Swatch } from '../words/reading.ts';

/** What the fit of a piece amounts to; `unsure` where its photo does not allow more. */
export type Verdict = 'fits' | 'near' | 'off' | 'unsure';

/** One swatch against the palette. */
export type SwatchFit = {
	readonly swatch: Swatch;
	/** The palette colour that it counts most for; `null` for an empty palette. */
	readonly paletteColourId: string | null;
	/** CIEDE2000 to that colour's centre. */
	readonly distance: number;
	/** Whether it counts as that colour: no further than the colour's reach. */
	readonly within: boolean;
	/** 0..1, see `fitScore`. */
	readonly score: number;
	readonly sentence: string;
};

/** How far a garment, wish or candidate lies within the palette. */
export type Fit = {
	/** 0..100: area-weighted mean of the swatches' scores; 0 where there is nothing to compare. */
	readonly percent: number;
	/** What it could be within the photo's expected error, towards or away from the palette: holds about 80 % of the time, as the error does. */
	readonly low: number;
	readonly high: number;
	readonly verdict: Verdict;
	/** The verdict that `percent` alone would give: the best guess behind an `unsure`. */
	readonly likely: Exclude<Verdict, 'unsure'>;
	readonly sentence: string;
	readonly swatches: readonly SwatchFit[];
};
