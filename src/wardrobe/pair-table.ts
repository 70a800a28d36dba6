import { deltaE2000Of } from '../colour/delta-e-many.ts';
import type { Lab65 } from '../colour/lab65.ts';
import { areComplementary } from './complementary-slots.ts';
import { echoDistance } from './echo.ts';
import { fitPercentOf } from './fit.ts';
import { FITS_FROM_PERCENT } from './fit-score.ts';
import type { Garment } from './garment.ts';
import { inspiredPairs } from './inspired-pairs.ts';
import { slotOfKind } from './kind.ts';
import { isNeutral, mainSwatch, seenSwatches, withExactGrey } from './main-colour.ts';
import type { Palette } from './palette-colour.ts';
import type { Slot } from './slot.ts';
import { isSupported, type PairContext, SUPPORT_KINDS, type SupportKind } from './support.ts';
import { supportSentence } from './support-sentence.ts';

/** What speaks for every pair of a set of garments, computed once; sentences are only made when asked for. */
export type PairTable = {
	readonly garments: readonly Garment[];
	readonly slots: readonly Slot[];
	/** Row-major, garments x garments: index into `SUPPORT_KINDS`; symmetric. Slots are not looked at, see `together`. */
	readonly codes: Uint8Array;
	/** Whether the two are worn in one outfit at all: their slots are complementary. */
	readonly together: (one: number, other: number) => boolean;
	readonly kind: (one: number, other: number) => SupportKind;
	/** CIEDE2000 of the two main colours, greys taken as exact greys; 100 where a garment has no colours yet. */
	readonly distance: (one: number, other: number) => number;
	readonly sentence: (one: number, other: number) => string;
	/** Garments worn together with this one whose kind passes (default: supported), best first: support, echo, distance, id. */
	readonly ranked: (index: number, options?: RankOptions) => number[];
	/** Garments that go with this one. */
	readonly partnerCount: (index: number) => number;
};

export type RankOptions = {
	/** Kinds asked for; default the supported ones. */
	readonly include?: (kind: SupportKind) => boolean;
	/** Most garments returned; later kinds are not even looked at once it is reached. */
	readonly limit?: number;
};

/** A piece is a base neutral when this share of it lies near the palette's base colours. Common practice, no source. */
const BASE_SHARE = 0.7;

/** Near a base colour: CIEDE2000 10, the distance that counts as a palette colour's support in a picture. */
const BASE_WITHIN = 10;

/** Stands for "no colours to compare": as far as black from white. */
const UNKNOWN_DISTANCE = 100;

const CODE = Object.fromEntries(SUPPORT_KINDS.map((kind, code) => [kind, code])) as Record<SupportKind, number>;

const pairKey = (a: string, b: string): string => (a < b ? `${a}\n${b}` : `${b}\n${a}`);

/** Whether a garment carries the set: most of it near the palette's base colours, or neutral where the palette has none. */
function isBaseNeutral(garment: Garment, palette: Palette): boolean {
	const base = palette.colours.filter(({ role }) => role === 'base');
	const nearBase = (lab: Lab65) =>
		base.length === 0
			? isNeutral(lab)
			: base.some(({ lab: c }) => deltaE2000Of(lab[0], lab[1], lab[2], c[0], c[1], c[2]) <= BASE_WITHIN);
	const area = garment.swatches.reduce((sum, { share }) => sum + share, 0);
	const near = garment.swatches.reduce((sum, { lab, share }) => sum + (nearBase(lab) ? share : 0), 0);
	return area > 0 && near >= BASE_SHARE * area;
}

/** What the user did and said, by pair. */
function userWords(context: PairContext): ReadonlyMap<string, number> {
	const words = new Map<string, number>();
	for (const { garmentA, garmentB } of context.wornTogether) words.set(pairKey(garmentA, garmentB), CODE.worn);
	for (const { garmentA, garmentB, word } of context.pairWords)
		words.set(pairKey(garmentA, garmentB), word === 'approved' ? CODE.approved : CODE.no);
	return words;
}

/**
 * The support of all pairs of `garments` (or only of those in `rows`). A pair's kind is the strongest that holds, in the order of
 * `SUPPORT_KINDS`, and the user's own word wins over all. About 0.1 s for 1,000 garments.
 */
export function pairTable(garments: readonly Garment[], context: PairContext, rows?: readonly number[]): PairTable {
	const count = garments.length;
	const slots = garments.map(({ kind }) => slotOfKind(kind));
	const mains = garments.map((garment) => mainSwatch(garment)?.lab ?? null);
	const greyed = mains.map((lab) => (lab ? withExactGrey(lab) : null));
	const seen = garments.map((garment) => seenSwatches(garment).map(({ lab }) => withExactGrey(lab)));
	const inPalette = garments.map((garment) => fitPercentOf(garment, context.palette) >= FITS_FROM_PERCENT);
	const base = garments.map((garment) => isBaseNeutral(garment, context.palette));
	const inspired = inspiredPairs(slots, mains, context.pairings);
	const words = userWords(context);

	const codes = new Uint8Array(count * count).fill(CODE.unproven);
	const together = (one: number, other: number) => areComplementary(slots[one]!, slots[other]!);
	const codeOf = (one: number, other: number): number => {
		const word = words.size > 0 ? words.get(pairKey(garments[one]!.id, garments[other]!.id)) : undefined;
		if (word !== undefined) return word;
		if (!together(one, other) || !mains[one] || !mains[other]) return CODE.unproven;
		if (inspired.has(one, other)) return CODE.inspired;
		if (inPalette[one] && inPalette[other]) return CODE.palette;
		if (base[one] || base[other]) return CODE.base;
		return echoDistance(seen[one]!, seen[other]!) !== null ? CODE.echo : CODE.unproven;
	};
	for (const one of rows ?? garments.keys()) {
		for (let other = rows ? 0 : one + 1; other < count; other++) {
			if (other === one) continue;
			const code = codeOf(one, other);
			codes[one * count + other] = code;
			codes[other * count + one] = code;
		}
	}

	const kind = (one: number, other: number) => SUPPORT_KINDS[codes[one * count + other]!]!;
	const distance = (one: number, other: number) => {
		const a = greyed[one];
		const b = greyed[other];
		return a && b ? deltaE2000Of(a[0], a[1], a[2], b[0], b[1], b[2]) : UNKNOWN_DISTANCE;
	};
	const sentence = (one: number, other: number) =>
		supportSentence(kind(one, other), {
			one: garments[one]!,
			other: garments[other]!,
			together: together(one, other),
			baseName: base[one] ? garments[one]!.name : garments[other]!.name,
			days:
				context.wornTogether.find(
					({ garmentA, garmentB }) => pairKey(garmentA, garmentB) === pairKey(garments[one]!.id, garments[other]!.id),
				)?.days ?? 0,
			pairing: inspired.best(one, other),
			echo: echoDistance(seen[one]!, seen[other]!),
			distance: mains[one] && mains[other] ? distance(one, other) : null,
		});
	const nearestFirst = (index: number, others: readonly number[]): number[] => {
		const distances = new Map(others.map((other) => [other, distance(index, other)]));
		return [...others].sort(
			(a, b) => distances.get(a)! - distances.get(b)! || (garments[a]!.id < garments[b]!.id ? -1 : 1),
		);
	};
	const ranked = (index: number, options: RankOptions = {}) => {
		const { include = isSupported, limit = count } = options;
		const byCode = SUPPORT_KINDS.map((): number[] => []);
		for (let other = 0; other < count; other++)
			if (other !== index && together(index, other)) byCode[codes[index * count + other]!]!.push(other);
		const result: number[] = [];
		for (const [code, others] of byCode.entries()) {
			if (result.length >= limit) break;
			if (!include(SUPPORT_KINDS[code]!)) continue;
			// Echoes come first, so the others are only measured when the echoes do not fill the list.
			const echoing = others.map((other) => echoDistance(seen[index]!, seen[other]!) !== null);
			for (const echo of [true, false]) {
				if (result.length >= limit) break;
				const part = others.filter((_, at) => echoing[at] === echo);
				result.push(...nearestFirst(index, part));
			}
		}
		return result.slice(0, limit);
	};
	const partnerCount = (index: number) => {
		let partners = 0;
		for (let other = 0; other < count; other++) {
			if (other !== index && together(index, other) && isSupported(kind(index, other))) partners++;
		}
		return partners;
	};
	return { garments, slots, codes, together, kind, distance, sentence, ranked, partnerCount };
}
