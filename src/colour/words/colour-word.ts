import { deltaE2000Weighted } from '../delta-e.ts';
import { MOST_LIGHTNESS_DIVISOR } from '../delta-e-many.ts';
import { chroma, type Lab65 } from '../lab65.ts';
import { type Language, spelled } from './language.ts';
import { ENGLISH_GREYS, GERMAN_GREYS, greyWord, isNearGrey } from './near-grey.ts';
import type { ColourWord, Shade } from './word.ts';
import { entriesOf, wordsOf } from './word-table.ts';

/**
 * The survey asked about colours of a screen; cloth is duller. So chromas of the survey are taken at four fifths, and chroma counts less than
 * hue; more where the word itself says a chroma, such as ivory or taupe. Fitted on half of the surveyed centroids in
 * fixtures/colour-words, held to the other half by tests/standards.
 */
const CLOTH_CHROMA = 0.8;
const CHROMA_FACTOR = { vivid: 1.5, pale: 1, dull: 0.7 } as const;

/** Words that nobody uses of a dull colour, each with the chroma from which on it is used. Our choice. */
const VIVID_FROM: Readonly<Record<string, number>> = { 'royal blue': 25, königsblau: 25, lime: 32 };

/** The survey's mean of "white" in CIELAB a* and b*: the corner of the screen's colours pulls means of near-whites to yellow green. */
const WHITE_CAST = [-3, 6] as const;
const NEAR_WHITES = new Set(['off-white', 'ivory', 'cream', 'weiß']);

/**
 * How much less lightness counts, by language: the German survey has a tenth of the words, mostly one lightness a hue, so hue has to decide more often.
 * Fitted in the same way.
 */
const LIGHTNESS_FACTOR = { en: 1, de: 1.3 } as const;

type Candidate = { readonly word: string; readonly lab: Lab65; readonly shade: Shade | 'vivid' };

function candidateOf({ word, shade: said }: ColourWord, [L, a, b]: Lab65): Candidate {
	const shade = said ?? 'vivid';
	if (NEAR_WHITES.has(word)) return { word, shade, lab: [L, a - WHITE_CAST[0], b - WHITE_CAST[1]] };
	return { word, shade, lab: shade === 'vivid' ? [L, a * CLOTH_CHROMA, b * CLOTH_CHROMA] : [L, a, b] };
}

/** What a language's hues are chosen from: everything but the steps of its grey scale, which lightness decides. */
function hueCandidates(language: Language): Candidate[] {
	const greys = new Set([...ENGLISH_GREYS, ...GERMAN_GREYS].map(([word]) => word));
	greys.delete('weiß');
	return wordsOf(language)
		.filter(({ word }) => !greys.has(word))
		.flatMap((word) => entriesOf(word).map(({ lab }) => candidateOf(word, lab)));
}

type Difference = (one: Lab65, other: Lab65) => number;
type Lexicon = {
	readonly difference: Readonly<Record<Shade | 'vivid', Difference>>;
	readonly leastPerLightness: number;
	readonly candidates: readonly Candidate[];
	readonly found: Map<number, string>;
};
const LEXICONS = new Map<'en' | 'de', Lexicon>();

function lexiconOf(language: Language): Lexicon {
	const key = language === 'de' ? 'de' : 'en';
	const made = LEXICONS.get(key);
	if (made) return made;
	const kL = LIGHTNESS_FACTOR[key];
	const lexicon: Lexicon = {
		difference: {
			vivid: deltaE2000Weighted(kL, CHROMA_FACTOR.vivid, 1),
			pale: deltaE2000Weighted(kL, CHROMA_FACTOR.pale, 1),
			dull: deltaE2000Weighted(kL, CHROMA_FACTOR.dull, 1),
		},
		leastPerLightness: 1 / (MOST_LIGHTNESS_DIVISOR * kL),
		candidates: hueCandidates(language),
		found: new Map(),
	};
	LEXICONS.set(key, lexicon);
	return lexicon;
}

/** Colours are named to half a unit of L*, a* and b*, far below what words tell apart, so that a colour met again costs nothing. */
const rounded = ([L, a, b]: Lab65): Lab65 => [Math.round(L * 2) / 2, Math.round(a * 2) / 2, Math.round(b * 2) / 2];
const keyOf = ([L, a, b]: Lab65): number => (L * 2 * 1024 + (a + 256) * 2) * 1024 + (b + 256) * 2;

function nearest({ candidates, difference, leastPerLightness }: Lexicon, colour: Lab65): string {
	let best = '';
	let least = Number.POSITIVE_INFINITY;
	for (const { word, lab, shade } of candidates) {
		if (chroma(colour) < (VIVID_FROM[word] ?? 0)) continue;
		if (Math.abs(colour[0] - lab[0]) * leastPerLightness >= least) continue;
		const distance = difference[shade](colour, lab);
		if (distance >= least) continue;
		least = distance;
		best = word;
	}
	return best;
}

/**
 * The word most people would use for a colour of clothes, such as "navy" or "rust": that of the nearest survey entry by CIEDE2000, with chroma counting
 * less than hue. A colour nearer to grey than `error`, the reading's expected error in CIEDE2000 units (0 for a chosen colour), allows is
 * called black, charcoal, a grey or white, never by a hue.
 */
export function colourWord(colour: Lab65, language: Language, error: number): string {
	if (isNearGrey(colour, error))
		return spelled(greyWord(language === 'de' ? GERMAN_GREYS : ENGLISH_GREYS, colour[0]), language);
	const lexicon = lexiconOf(language);
	const asked = rounded(colour);
	const key = keyOf(asked);
	const word = lexicon.found.get(key) ?? nearest(lexicon, asked);
	lexicon.found.set(key, word);
	return spelled(word, language);
}
