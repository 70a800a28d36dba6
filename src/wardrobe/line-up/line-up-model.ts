import type { PartOffer } from '../days/enough.ts';
import { ALIKE_FACTOR } from '../fit/look-alikes.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import type { LineUpProblem } from './line-up-choices.ts';
import { LEAST_WORTH } from './line-up-worth.ts';

/** Column that is 1 where a piece is in the set, of the model that {@link lineUpModel} writes. */
export const columnOf = (member: number): string => `y${member}`;

/** Rows of a model, as text of the CPLEX LP format, and what each column is worth. */
type Model = { readonly objective: string[]; readonly rows: string[]; readonly bounds: string[] };

const sumOf = (terms: readonly string[]): string => (terms.length > 0 ? terms.join(' + ') : '0 y0');

const membersOf = ({ fixed, choices }: LineUpProblem): number[] => [
	...fixed,
	...SLOTS.flatMap((slot) => choices[slot]),
];

/** All subsets of `items` that are not empty. */
const subsetsOf = <T>(items: readonly T[]): T[][] =>
	Array.from({ length: 2 ** items.length - 1 }, (_, index) => items.filter((__, at) => ((index + 1) >> at) & 1));

/** Pieces of a picture up to which all their subsets are looked at; of larger ones each piece by itself. */
const MOST_PIECES = 6;

/** Pictures: by Hall's theorem, each piece can have a garment of its own where every so many pieces have as many garments between them. */
function pictureRows(
	{ pictures, weights }: LineUpProblem,
	members: readonly number[],
	{ objective, rows, bounds }: Model,
): void {
	const isHere = new Set(members);
	for (const [index, pieces] of pictures.entries()) {
		const column = `v${index}`;
		objective.push(`${weights.pictures / pictures.length} ${column}`);
		bounds.push(`0 <= ${column} <= 1`);
		const sets = pieces.length <= MOST_PIECES ? subsetsOf(pieces) : pieces.map((piece) => [piece]);
		for (const set of sets) {
			const answering = [...new Set(set.flat())].filter((member) => isHere.has(member));
			rows.push(
				answering.length === 0
					? `${column} <= 0`
					: `${set.length} ${column} - ${answering.map(columnOf).join(' - ')} <= 0`,
			);
		}
	}
}

/** Days dressed: no more than any cut between tops, bottoms and the days asked allows; see `dressedOf`. */
function dayRows(
	{ askedDays, offers, weights }: LineUpProblem,
	members: readonly number[],
	{ objective, rows, bounds }: Model,
): void {
	const asked = askedDays.reduce((sum, days) => sum + days, 0);
	if (asked === 0) return;
	objective.push(`${weights.enough / asked} days`);
	bounds.push(`0 <= days <= ${asked}`);
	const all = (1 << askedDays.length) - 1;
	const given = ({ part, serves }: PartOffer, byTops: number, byBottoms: number) =>
		((part === 'top' ? byTops : part === 'bottom' ? byBottoms : byTops | byBottoms) & serves) !== 0;
	for (let byTops = 0; byTops <= all; byTops++) {
		for (let byBottoms = 0; byBottoms <= all; byBottoms++) {
			if ((byTops & byBottoms) !== 0) continue;
			const held = byTops | byBottoms;
			const rest = askedDays.reduce((sum, days, at) => sum + ((held >> at) & 1 ? 0 : days), 0);
			const terms = members.flatMap((member) => {
				const offer = offers[member];
				return offer && given(offer, byTops, byBottoms) ? [`${offer.days} ${columnOf(member)}`] : [];
			});
			rows.push(terms.length > 0 ? `days - ${terms.join(' - ')} <= ${rest}` : `days <= ${rest}`);
		}
	}
}

function paletteRows(
	{ colourWeights, clothAsked, holds, weights }: LineUpProblem,
	members: readonly number[],
	{ objective, rows, bounds }: Model,
): void {
	const count = colourWeights.length;
	for (let colour = 0; colour < count; colour++) {
		const column = `k${colour}`;
		objective.push(`${weights.palette * colourWeights[colour]!} ${column}`);
		bounds.push(`0 <= ${column} <= 1`);
		const terms = members
			.map((member) => ({ member, cloth: holds[member * count + colour]! / clothAsked[colour]! }))
			.filter(({ cloth }) => cloth > 0)
			.map(({ member, cloth }) => `${cloth} ${columnOf(member)}`);
		rows.push(terms.length > 0 ? `${column} - ${terms.join(' - ')} <= 0` : `${column} <= 0`);
	}
}

/** Fit: where several pieces look alike, each takes one of the counts 1, a half, a quarter ..., and the best takes the first of itself. */
function fitRows(
	{ look, fit, weights, size }: LineUpProblem,
	members: readonly number[],
	{ objective, rows, bounds }: Model,
): void {
	if (size === 0) return;
	for (const group of new Set(members.map((member) => look[member]!))) {
		const alike = members.filter((member) => look[member] === group);
		const column = (member: number, rank: number) => `x${member}_${rank}`;
		for (const member of alike) {
			for (const rank of alike.keys()) {
				objective.push(`${(weights.fit * fit[member]! * ALIKE_FACTOR ** rank) / size} ${column(member, rank)}`);
				bounds.push(`0 <= ${column(member, rank)} <= 1`);
			}
			rows.push(`${sumOf(alike.map((_, rank) => column(member, rank)))} - ${columnOf(member)} = 0`);
		}
		for (const rank of alike.keys()) rows.push(`${sumOf(alike.map((member) => column(member, rank)))} <= 1`);
	}
}

/** Pairs: for each piece and slot after its own, the chosen pieces of that slot which go with it, none where it is not chosen itself. */
function pairRows(
	{ slots, together, weights, mostPairs, places, choices, fixed }: LineUpProblem,
	members: readonly number[],
	{ objective, rows, bounds }: Model,
): void {
	const inSlot = (slot: Slot) => [...fixed.filter((member) => slots[member] === slot), ...choices[slot]];
	for (const member of members) {
		for (const slot of SLOTS.slice(SLOTS.indexOf(slots[member]!))) {
			const going = inSlot(slot).filter(
				(other) => together[member * slots.length + other] === 1 && (slot !== slots[member] || other > member),
			);
			if (going.length === 0) continue;
			const most = Math.min(going.length, places[slot]);
			const column = `p${member}_${SLOTS.indexOf(slot)}`;
			objective.push(`${weights.outfits / mostPairs} ${column}`);
			bounds.push(`0 <= ${column} <= ${most}`);
			rows.push(`${column} - ${most} ${columnOf(member)} <= 0`, `${column} - ${going.map(columnOf).join(' - ')} <= 0`);
		}
	}
}

/**
 * The choice of a line-up as a mixed-integer program, in the CPLEX LP text that HiGHS reads; its optimum is the best objective of any set. Only the pieces are whole numbers: everything else
 * that a set is worth follows from them, row by row, as the largest that they allow.
 */
export function lineUpModel(problem: LineUpProblem): string {
	const { slots, loved, weights, size, places, fixed, warmOuter } = problem;
	const members = membersOf(problem);
	const model: Model = { objective: [], rows: [], bounds: [] };
	for (const member of members)
		model.objective.push(
			`${(size > 0 ? (weights.loved * loved[member]!) / size : 0) - LEAST_WORTH} ${columnOf(member)}`,
		);
	for (const slot of SLOTS) {
		const own = members.filter((member) => slots[member] === slot);
		if (own.length > 0) model.rows.push(`${sumOf(own.map(columnOf))} <= ${places[slot]}`);
	}
	const keptOuter = fixed.filter((member) => slots[member] === 'outer');
	const warm = members.filter((member) => warmOuter.has(member));
	if (warm.length > 0 && (keptOuter.length < places.outer || keptOuter.some((member) => warmOuter.has(member))))
		model.rows.push(`${sumOf(warm.map(columnOf))} >= 1`);
	for (const member of fixed) model.rows.push(`${columnOf(member)} = 1`);
	pictureRows(problem, members, model);
	dayRows(problem, members, model);
	paletteRows(problem, members, model);
	fitRows(problem, members, model);
	pairRows(problem, members, model);
	return [
		'Maximize',
		` worth: ${sumOf(model.objective.map((term) => term.replace(/^-/, '- '))).replaceAll('+ - ', '- ')}`,
		'Subject To',
		...model.rows.map((row, index) => ` r${index}: ${row}`),
		'Bounds',
		...model.bounds.map((bound) => ` ${bound}`),
		'Binary',
		...members.map((member) => ` ${columnOf(member)}`),
		'End',
		'',
	].join('\n');
}
