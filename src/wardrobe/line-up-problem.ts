import { fitPercentOf } from './fit.ts';
import type { Garment } from './garment.ts';
import { KINDS, slotOfKind } from './kind.ts';
import type { LineUpRequest } from './line-up.ts';
import { type OutfitTable, outfitCeiling } from './outfits.ts';
import { pairTable } from './pair-table.ts';
import type { LineUpWeights, Quotas } from './season.ts';
import { pairContextOf, type SeasonInput } from './season-input.ts';
import { SLOTS, type Slot } from './slot.ts';
import { isSupported } from './support.ts';

/** A line-up to choose, with everything that does not change while searching. Garments are in the order of their ids. */
export type LineUpProblem = {
	readonly garments: readonly Garment[];
	readonly table: OutfitTable;
	/** 0..1 for each garment. */
	readonly fit: readonly number[];
	readonly loved: readonly number[];
	readonly weights: LineUpWeights;
	/** Pieces to choose a slot: the quota, or less where fewer are owned, or more where more must be kept. */
	readonly places: Quotas;
	/** Fixed members, and who may be chosen besides, by slot. */
	readonly fixed: readonly number[];
	readonly choices: Readonly<Record<Slot, readonly number[]>>;
	/** Outer pieces warm enough; one of them must be in where there is one. */
	readonly warmOuter: ReadonlySet<number>;
	readonly ceiling: number;
	/** No set of this problem can have a higher objective. */
	readonly bound: number;
	readonly problems: readonly string[];
};

/** How much a garment is liked: what the user said, or else how often it was worn beside the most worn one. 0..1. */
function lovedShares(garments: readonly Garment[], input: SeasonInput): number[] {
	const wears = new Map<string, number>();
	for (const { garmentId } of input.wears) wears.set(garmentId, (wears.get(garmentId) ?? 0) + 1);
	const most = Math.max(1, ...wears.values());
	return garments.map(({ id, loved }) => (loved === null ? (wears.get(id) ?? 0) / most : loved / 3));
}

/** Warmth of a piece, 0..3: the user's word or the kind's usual. */
export const warmthOf = ({ warmth, kind }: Pick<Garment, 'warmth' | 'kind'>): number => warmth ?? KINDS[kind].warmth;

/** Highest mean that any choice of the slots' places can have; members differ only in what they are worth. */
function bestMean(
	values: readonly number[],
	fixed: readonly number[],
	choices: LineUpProblem['choices'],
	places: Quotas,
	slots: readonly Slot[],
): number {
	const taken = SLOTS.flatMap((slot) => {
		const kept = fixed.filter((member) => slots[member] === slot).map((member) => values[member]!);
		const best = choices[slot].map((member) => values[member]!).sort((a, b) => b - a);
		return [...kept, ...best.slice(0, Math.max(0, places[slot] - kept.length))];
	});
	return taken.length === 0 ? 0 : taken.reduce((sum, value) => sum + value, 0) / taken.length;
}

function problemsOf(input: SeasonInput, request: LineUpRequest, owned: Quotas, kept: Quotas, warm: number): string[] {
	const names = new Map(input.garments.map(({ id, name }) => [id, name]));
	const both = request.mustKeep.filter((id) => request.neverUse.includes(id));
	const total = SLOTS.reduce((sum, slot) => sum + request.quotas[slot], 0);
	return [
		...both.map(
			(id) =>
				`${names.get(id) ?? 'A garment'} is both to be kept and never to be used; it is kept, since you can still take it out.`,
		),
		...SLOTS.filter((slot) => owned[slot] < request.quotas[slot]).map(
			(slot) =>
				`Wanted ${request.quotas[slot]} of the slot ${slot}; ${owned[slot]} can be chosen, ${request.quotas[slot] - owned[slot]} too few.`,
		),
		...SLOTS.filter((slot) => kept[slot] > request.quotas[slot]).map(
			(slot) =>
				`Wanted ${request.quotas[slot]} of the slot ${slot}; ${kept[slot]} must be kept, ${kept[slot] - request.quotas[slot]} too many. All are kept.`,
		),
		...(total === request.targetCount
			? []
			: [`The slots together ask for ${total} garments, the season for ${request.targetCount}; the slots decide.`]),
		...(input.season.warmthNeed > 0 && request.quotas.outer > 0 && warm === 0
			? [`Wanted an outer piece of warmth ${input.season.warmthNeed} of 3; none that can be chosen is that warm.`]
			: []),
	];
}

/** Sets up the choice of a line-up. Leaving and gone garments are never chosen; stored ones may come back. */
export function lineUpProblem(input: SeasonInput, request: LineUpRequest): LineUpProblem {
	const mustKeep = new Set(request.mustKeep);
	const neverUse = new Set(request.neverUse.filter((id) => !mustKeep.has(id)));
	const garments = input.garments
		.filter(({ id, place }) => (place === 'rail' || place === 'stored') && !neverUse.has(id))
		.sort((a, b) => (a.id < b.id ? -1 : 1));
	const pairs = pairTable(garments, pairContextOf(input));
	const count = garments.length;
	const together = new Uint8Array(count * count);
	for (let one = 0; one < count; one++) {
		for (let other = 0; other < count; other++)
			if (isSupported(pairs.kind(one, other))) together[one * count + other] = 1;
	}
	const slots = garments.map(({ kind }) => slotOfKind(kind));
	const table: OutfitTable = { slots, goes: (one, other) => together[one * count + other] === 1 };
	const fixed = garments.flatMap(({ id }, index) => (mustKeep.has(id) ? [index] : []));
	const bySlot = <T>(value: (slot: Slot) => T) =>
		Object.fromEntries(SLOTS.map((slot) => [slot, value(slot)])) as Record<Slot, T>;
	const choices = bySlot((slot) =>
		garments.flatMap(({ id }, index) => (slots[index] === slot && !mustKeep.has(id) ? [index] : [])),
	);
	const kept = bySlot((slot) => fixed.filter((member) => slots[member] === slot).length);
	const owned = bySlot((slot) => choices[slot].length + kept[slot]);
	const places = bySlot((slot) => Math.max(kept[slot], Math.min(request.quotas[slot], owned[slot])));
	const fit = garments.map((garment) => fitPercentOf(garment, input.palette) / 100);
	const loved = lovedShares(garments, input);
	const { weights, warmthNeed } = input.season;
	const warmOuter = new Set(
		garments.flatMap((garment, index) =>
			slots[index] === 'outer' && warmthNeed > 0 && warmthOf(garment) >= warmthNeed ? [index] : [],
		),
	);
	const ceiling = outfitCeiling(places);
	const mean = (values: readonly number[]) => bestMean(values, fixed, choices, places, slots);
	return {
		garments,
		table,
		fit,
		loved,
		weights,
		places,
		fixed,
		choices,
		warmOuter,
		ceiling,
		bound: (ceiling > 0 ? weights.outfits : 0) + weights.fit * mean(fit) + weights.loved * mean(loved),
		problems: problemsOf(input, request, owned, kept, warmOuter.size),
	};
}
