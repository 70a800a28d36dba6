import { partialTransport } from '../../src/wardrobe/gaps/transport.ts';

/**
 * Earth mover's distance: cost of the cheapest transport of as much as possible, a unit carried. 0 where nothing can be carried.
 * Rubner, Tomasi and Guibas, IJCV 40(2), 2000, equation 1.
 */
export function earthMoversDistance(
	supply: readonly number[],
	demand: readonly number[],
	cost: readonly Float64Array[],
): number {
	const { flows, cost: total } = partialTransport(supply, demand, cost);
	const carried = flows.reduce((sum, { amount }) => sum + amount, 0);
	return carried > 0 ? total / carried : 0;
}
