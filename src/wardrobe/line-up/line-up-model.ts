import { SLOTS, type Slot } from '../words/slot.ts';
import type { LineUpProblem } from './line-up-choices.ts';

/** Column that is 1 where a piece is in the set, of the model that {@link lineUpModel} writes. */
export const columnOf = (member: number): string => `y${member}`;

/** Rows of a model, as text of the CPLEX LP format. */
type Model = { readonly objective: string[]; readonly rows: string[]; readonly bounds: string[] };

const sumOf = (columns: readonly string[]): string => columns.join(' + ');

/** Bodies that can be worn: pieces that go together, and the outfits they make at most. */
type Body = { readonly parts: readonly number[]; readonly column: string; readonly most: number };

function bodiesOf(
	problem: LineUpProblem,
	outfitsAtMost: (parts: readonly number[]) => number,
	all: (slot: Slot) => number[],
) {
	const { table } = problem;
	const pairs = all('top').flatMap((top) =>
		all('bottom').flatMap((bottom) => (table.goes(top, bottom) ? [[top, bottom]] : [])),
	);
	return [...pairs, ...all('full').map((whole) => [whole])]
		.map((parts): Body => ({ parts, column: `z${parts.join('_')}`, most: outfitsAtMost(parts) }))
		.filter(({ most }) => most > 0);
}

/**
 * The choice of a line-up as a mixed-integer program, in the CPLEX LP text that HiGHS reads; its optimum is the best objective of any set.
 * One variable a body (top with bottom, or full): its outfits, at most those that the chosen shoes and outer pieces allow, and none
 * unless all its parts are chosen. A variable a pair of shoes and outer piece stands for "both chosen". The rows that sum a piece's outfits
 * up to what the quotas allow are implied for whole numbers, but make the relaxation much tighter. One variable an outfit would be
 * hopeless (measured).
 */
export function lineUpModel(problem: LineUpProblem): string {
	const { slots, table, fit, loved, weights, size, ceiling, places, fixed, choices, warmOuter } = problem;
	const all = (slot: Slot) => [...fixed.filter((member) => slots[member] === slot), ...choices[slot]];
	const shoes = all('shoes');
	const outer = all('outer');
	const goesWithAll = (parts: readonly number[], member: number) => parts.every((part) => table.goes(part, member));
	const shoesFor = (parts: readonly number[]) => shoes.filter((shoe) => goesWithAll(parts, shoe));
	const outerFor = (parts: readonly number[]) => outer.filter((coat) => goesWithAll(parts, coat));
	const outfitsAtMost = (parts: readonly number[]) =>
		(places.shoes === 0 ? 1 : Math.min(places.shoes, shoesFor(parts).length)) *
		(1 + Math.min(places.outer, outerFor(parts).length));
	const both = (shoe: number, coat: number) => `v${shoe}_${coat}`;
	const coatsOverShoe = shoes.flatMap((shoe) =>
		outer.flatMap((coat) => (table.goes(shoe, coat) ? [{ shoe, coat, column: both(shoe, coat) }] : [])),
	);
	const bodies = bodiesOf(problem, outfitsAtMost, all);
	const { objective, rows, bounds }: Model = { objective: [], rows: [], bounds: [] };

	const perOutfit = ceiling > 0 ? weights.outfits / ceiling : 0;
	for (const { column } of bodies) objective.push(`${perOutfit} ${column}`);
	const members = SLOTS.flatMap(all);
	for (const member of members) {
		const liked = size > 0 ? (weights.fit * fit[member]! + weights.loved * loved[member]!) / size : 0;
		objective.push(`${liked} ${columnOf(member)}`);
	}

	for (const slot of SLOTS) {
		if (all(slot).length > 0) rows.push(`${sumOf(all(slot).map(columnOf))} = ${places[slot]}`);
	}
	const openOuter = places.outer - fixed.filter((member) => slots[member] === 'outer').length;
	if (warmOuter.size > 0 && (openOuter > 0 || fixed.some((member) => warmOuter.has(member))))
		rows.push(`${sumOf([...warmOuter].map(columnOf))} >= 1`);
	for (const member of fixed) rows.push(`${columnOf(member)} = 1`);

	for (const { shoe, coat, column } of coatsOverShoe) {
		rows.push(`${column} - ${columnOf(shoe)} <= 0`, `${column} - ${columnOf(coat)} <= 0`);
		bounds.push(`0 <= ${column} <= 1`);
	}
	for (const { parts, column, most } of bodies) {
		for (const part of parts) rows.push(`${column} - ${most} ${columnOf(part)} <= 0`);
		const coats = outerFor(parts);
		const worn =
			places.shoes === 0
				? coats.map(columnOf)
				: [
						...shoesFor(parts).map(columnOf),
						...coatsOverShoe
							.filter(({ shoe, coat }) => goesWithAll(parts, shoe) && coats.includes(coat))
							.map((pair) => pair.column),
					];
		rows.push(`${[column, ...worn].join(' - ')} <= ${places.shoes === 0 ? 1 : 0}`);
		bounds.push(`0 <= ${column} <= ${most}`);
	}
	for (const [slot, other] of [
		['top', 'bottom'],
		['bottom', 'top'],
	] as const) {
		for (const member of all(slot)) {
			const own = bodies.filter(({ parts }) => parts.length === 2 && parts.includes(member));
			if (own.length <= places[other]) continue;
			const most = own
				.map((body) => body.most)
				.sort((a, b) => b - a)
				.slice(0, places[other])
				.reduce((sum, one) => sum + one, 0);
			rows.push(`${sumOf(own.map(({ column }) => column))} - ${most} ${columnOf(member)} <= 0`);
		}
	}
	return [
		'Maximize',
		` worth: ${sumOf(objective) || '0 nothing'}`,
		'Subject To',
		...rows.map((row, index) => ` r${index}: ${row}`),
		'Bounds',
		...bounds.map((bound) => ` ${bound}`),
		'Binary',
		...members.map((member) => ` ${columnOf(member)}`),
		'End',
		'',
	].join('\n');
}
