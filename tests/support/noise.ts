/** Numbers between -1 and 1 that look random and are the same for the same seed (a linear congruential generator, constants of Numerical Recipes). */
export function deterministicNoise(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
		return state / 2 ** 31 - 1;
	};
}
