import { distanceBetween, MOST_LIGHTNESS_DIVISOR } from '../../colour/delta-e-many.ts';
import type { Garment } from '../words/garment.ts';
import type { PairFacts } from './pair-facts.ts';
import { isSupported, SUPPORT_KINDS, type SupportKind } from './support.ts';

export type RankOptions = {
	/** Kinds asked for; default the supported ones. */
	readonly include?: (kind: SupportKind) => boolean;
	/** Most garments returned; later kinds are not even looked at once it is reached. */
	readonly limit?: number;
};

/** A partner as it is ranked among those of the same support. */
type Ranked = { readonly other: number; readonly id: string; readonly echoes: boolean; readonly apart: number };

const compareRanked = (one: Ranked, other: Ranked): number =>
	Number(other.echoes) - Number(one.echoes) || one.apart - other.apart || (one.id < other.id ? -1 : 1);

/** Stands for "no colours to compare": as far as black from white. */
const UNKNOWN_DISTANCE = 100;

/** CIEDE2000 of the main colours of two garments by their places, greys taken as exact greys; 100 where one has no colours yet. */
export const mainDistance =
	({ greyed }: PairFacts) =>
	(one: number, other: number): number => {
		const a = greyed[one];
		const b = greyed[other];
		return a && b ? distanceBetween(a, b) : UNKNOWN_DISTANCE;
	};

/** Finds the best `most` of some garments for one: echoes before the rest, then by distance, then by id. */
function bestAmong(
	garments: readonly Garment[],
	facts: PairFacts,
): (index: number, others: readonly number[], most: number) => number[] {
	const distance = mainDistance(facts);
	const lightness = Float64Array.from(facts.greyed, (lab) => lab?.[0] ?? 0);
	return (index, others, most) => {
		const best: Ranked[] = [];
		for (const other of others) {
			const last = best.length < most ? null : best[most - 1]!;
			// Once the places are filled, only an echo or a nearer one can come in: most are told by their lightness or distance alone.
			const isFar =
				last !== null && Math.abs(lightness[index]! - lightness[other]!) > last.apart * MOST_LIGHTNESS_DIVISOR;
			if (isFar && (last.echoes || !facts.echoes(index, other))) continue;
			const apart = distance(index, other);
			if (last?.echoes && apart > last.apart) continue;
			const ranked = { other, id: garments[other]!.id, echoes: facts.echoes(index, other), apart };
			if (last && compareRanked(ranked, last) > 0) continue;
			let at = best.length;
			while (at > 0 && compareRanked(ranked, best[at - 1]!) < 0) at--;
			best.splice(at, 0, ranked);
			if (best.length > most) best.pop();
		}
		return best.map(({ other }) => other);
	};
}

/** The ranking of a pair table: see `PairTable.ranked`. `codes` are those of the table. */
export function rankingOf(
	garments: readonly Garment[],
	facts: PairFacts,
	codes: Uint8Array,
): (index: number, options?: RankOptions) => number[] {
	const count = garments.length;
	const bestOf = bestAmong(garments, facts);
	const met = SUPPORT_KINDS.map((_, code) => codes.includes(code));
	return (index, { include = isSupported, limit = count } = {}) => {
		const result: number[] = [];
		const from = index * count;
		for (const [code, kind] of SUPPORT_KINDS.entries()) {
			if (result.length >= limit) break;
			if (!met[code] || !include(kind)) continue;
			const others: number[] = [];
			for (let other = 0; other < count; other++)
				if (codes[from + other] === code && other !== index && facts.together(index, other)) others.push(other);
			if (others.length > 0) result.push(...bestOf(index, others, limit - result.length));
		}
		return result;
	};
}
