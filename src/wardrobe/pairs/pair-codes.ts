import type { Garment } from '../words/garment.ts';
import type { PairFacts } from './pair-facts.ts';
import { type PairContext, SUPPORT_KINDS, type SupportKind } from './support.ts';

/** Index into `SUPPORT_KINDS` of each kind. */
export const CODE = Object.fromEntries(SUPPORT_KINDS.map((kind, code) => [kind, code])) as Readonly<
	Record<SupportKind, number>
>;

/** Codes under this one support the pair: the kinds before `unproven`. */
export const SUPPORTED_UNDER = CODE.unproven;

/** The support of two garments that are worn together, have colours, and are shown by no picture. */
function codeWithoutPictures({ inPalette, base, echoes }: PairFacts, one: number, other: number): number {
	if (inPalette[one] && inPalette[other]) return CODE.palette;
	if (base[one] || base[other]) return CODE.base;
	return echoes(one, other) ? CODE.echo : SUPPORTED_UNDER;
}

/** The strongest support that colours give a pair, as a code; the user's own word is not looked at. */
export function codeByColour(facts: PairFacts, one: number, other: number): number {
	const { together, mains, inspired } = facts;
	if (!together(one, other) || !mains[one] || !mains[other]) return SUPPORTED_UNDER;
	return inspired.has(one, other) ? CODE.inspired : codeWithoutPictures(facts, one, other);
}

/** {@link codeByColour} of all pairs, row by row, both halves; only pairs of `rows` where those are given, the rest is unproven. */
export function codesByColour(facts: PairFacts, rows: readonly number[] | null): Uint8Array {
	const { slots, together, mains, inspired } = facts;
	const count = slots.length;
	const codes = new Uint8Array(count * count).fill(SUPPORTED_UNDER);
	const write = (one: number, other: number, code: number) => {
		codes[one * count + other] = code;
		codes[other * count + one] = code;
	};
	const isAsked = Uint8Array.from(slots, () => (rows ? 0 : 1));
	for (const row of rows ?? []) isAsked[row] = 1;
	inspired.each((one, other) => {
		if ((isAsked[one] || isAsked[other]) && together(one, other)) write(one, other, CODE.inspired);
	});
	for (const one of rows ?? slots.keys()) {
		if (!mains[one]) continue;
		for (let other = rows ? 0 : one + 1; other < count; other++) {
			if (other === one || codes[one * count + other] !== SUPPORTED_UNDER) continue;
			if (together(one, other) && mains[other]) write(one, other, codeWithoutPictures(facts, one, other));
		}
	}
	return codes;
}

/** Writes over the codes what the user did, then what the user said; returns the days worn together by cell of the table. */
export function writeUserWords(
	codes: Uint8Array,
	garments: readonly Garment[],
	context: PairContext,
): ReadonlyMap<number, number> {
	const indexOf = new Map(garments.map(({ id }, index) => [id, index]));
	const cellsOf = (a: string, b: string): number[] => {
		const one = indexOf.get(a);
		const other = indexOf.get(b);
		if (one === undefined || other === undefined || one === other) return [];
		return [one * garments.length + other, other * garments.length + one];
	};
	const days = new Map<number, number>();
	for (const worn of context.wornTogether) {
		for (const cell of cellsOf(worn.garmentA, worn.garmentB)) {
			codes[cell] = CODE.worn;
			days.set(cell, worn.days);
		}
	}
	for (const { garmentA, garmentB, word } of context.pairWords)
		for (const cell of cellsOf(garmentA, garmentB)) codes[cell] = word === 'approved' ? CODE.approved : CODE.no;
	return days;
}
