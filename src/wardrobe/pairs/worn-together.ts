import type { Wear } from '../words/wear.ts';
import type { WornTogether } from './support.ts';

/** Pairs of garments worn on the same day, with the number of such days; by id, so that the order of the wears changes nothing. */
export function wornTogether(wears: readonly Wear[]): WornTogether[] {
	const byDay = new Map<string, Set<string>>();
	for (const { garmentId, on } of wears) byDay.set(on, (byDay.get(on) ?? new Set()).add(garmentId));
	const days = new Map<string, number>();
	for (const worn of byDay.values()) {
		const ids = [...worn].sort();
		for (const [index, a] of ids.entries()) {
			for (const b of ids.slice(index + 1)) days.set(`${a}\n${b}`, (days.get(`${a}\n${b}`) ?? 0) + 1);
		}
	}
	return [...days]
		.sort(([a], [b]) => (a < b ? -1 : 1))
		.map(([pair, count]) => {
			const [garmentA, garmentB] = pair.split('\n') as [string, string];
			return { garmentA, garmentB, days: count };
		});
}
