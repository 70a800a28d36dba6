/**
 * A stream of numbers in [0, 1) that depends on the seed alone (any text or number): the same seed gives the same stream on every
 * machine. Good enough for resampling and search starts, not for secrets. Mulberry32 over an FNV-1a hash of the seed.
 */
export function seededRandom(seed: string | number): () => number {
	let state = 0x811c9dc5;
	for (const character of String(seed)) state = Math.imul(state ^ character.codePointAt(0)!, 0x01000193);
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
}

/** Two independent standard normal numbers from two uniform ones (Box and Muller 1958). */
export function normalPair(random: () => number): readonly [number, number] {
	const radius = Math.sqrt(-2 * Math.log(1 - random()));
	const angle = 2 * Math.PI * random();
	return [radius * Math.cos(angle), radius * Math.sin(angle)];
}
