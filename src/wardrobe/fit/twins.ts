import { SAME_SIDE_BY_SIDE } from '../../colour/same-colour.ts';
import { say } from '../../language/speak.ts';
import type { Garment } from '../words/garment.ts';
import { mainSwatch } from '../words/main-colour.ts';
import { distanceAcrossPhotos } from '../words/photo-distance.ts';
import type { PatternType } from '../words/reading.ts';

/** What a twin is judged by: a garment, or a candidate with its kind. */
export type TwinSide = Pick<Garment, 'id' | 'name' | 'kind' | 'swatches' | 'trust' | 'pattern'>;

/** Two pieces of one kind that may be the same colour. */
export type Twin = {
	readonly garmentA: string;
	readonly garmentB: string;
	/** CIEDE2000 of their main colours; lightness counts less where the light of one photo is not told. */
	readonly distance: number;
	/** Distance up to which the two photos cannot tell them apart. */
	readonly within: number;
	/** `alike` up to {@link SAME_SIDE_BY_SIDE} whatever the photos' errors; `maybe` where only the photos' errors allow it. */
	readonly sureness: 'alike' | 'maybe';
	readonly sentence: string;
};

/**
 * No pair of photos is allowed more doubt than this: CIEDE2000 10, beyond which two colours are not mistaken for each other, however bad
 * the light. Without it two unread photos would make twins of anything.
 */
const DOUBT_AT_MOST = 10;

/** Cloth that looks plain from across a room; between these a difference in pattern does not tell pieces apart. */
const LOOKS_PLAIN: readonly PatternType[] = ['plain', 'mottled'];

/** A pattern that is less sure than this does not keep two pieces from being twins. */
const SURE_OF_PATTERN = 0.7;

/** Errors of two photos taken apart do not add up but combine as independent ones do. */
const pairTrust = (one: TwinSide, other: TwinSide): number => Math.hypot(one.trust.error, other.trust.error);

const patternsDiffer = (one: TwinSide, other: TwinSide): boolean =>
	one.pattern.type !== other.pattern.type &&
	!(LOOKS_PLAIN.includes(one.pattern.type) && LOOKS_PLAIN.includes(other.pattern.type)) &&
	Math.min(one.pattern.sure, other.pattern.sure) >= SURE_OF_PATTERN;

/** Distance and allowance of two pieces that may be twins, or `null`: another kind, clearly another pattern, no colours yet, or further apart. */
function relationOf(one: TwinSide, other: TwinSide): { readonly distance: number; readonly within: number } | null {
	if (one.kind !== other.kind || patternsDiffer(one, other)) return null;
	const a = mainSwatch(one)?.lab;
	const b = mainSwatch(other)?.lab;
	if (!a || !b) return null;
	const within = Math.max(SAME_SIDE_BY_SIDE, Math.min(DOUBT_AT_MOST, pairTrust(one, other)));
	const distance = distanceAcrossPhotos(a, b, [one.trust, other.trust]);
	return distance <= within ? { distance, within } : null;
}

function twinFrom(one: TwinSide, other: TwinSide, distance: number, within: number): Twin {
	// What lightness was left out of is no proof of likeness.
	const isTold = !one.trust.untold && !other.trust.untold;
	const sureness = distance <= SAME_SIDE_BY_SIDE && isTold ? 'alike' : 'maybe';
	const sentence = say(`twins.${sureness}`, { one: one.name, other: other.name });
	return { garmentA: one.id, garmentB: other.id, distance, within, sureness, sentence };
}

/** The twin relation of two pieces, or `null`: another kind, clearly another pattern, no colours yet, or further apart than both photos' errors. */
export function twinOf(one: TwinSide, other: TwinSide): Twin | null {
	const relation = relationOf(one, other);
	return relation && twinFrom(one, other, relation.distance, relation.within);
}

/** Most twins that are told: a wardrobe of a thousand equal garments would have half a million. */
const TOLD_AT_MOST = 200;

/** The twins among the garments, the nearest first, at most `limit`; each pair once. Empty for none or one garment. */
export function twinsOf(garments: readonly Garment[], limit = TOLD_AT_MOST): Twin[] {
	const sorted = [...garments].sort((one, other) => (one.id < other.id ? -1 : 1));
	const found: {
		readonly one: Garment;
		readonly other: Garment;
		readonly distance: number;
		readonly within: number;
	}[] = [];
	for (const kind of new Set(sorted.map((garment) => garment.kind))) {
		const same = sorted.filter((garment) => garment.kind === kind);
		for (const [index, one] of same.entries()) {
			for (let next = index + 1; next < same.length; next++) {
				const relation = relationOf(one, same[next]!);
				if (relation) found.push({ one, other: same[next]!, ...relation });
			}
		}
	}
	return found
		.sort((a, b) => a.distance - b.distance)
		.slice(0, limit)
		.map(({ one, other, distance, within }) => twinFrom(one, other, distance, within));
}
