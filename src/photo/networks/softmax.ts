/** Probabilities of a network's scores, in their order; they sum to 1. */
export function softmax(scores: Float32Array): number[] {
	const most = Math.max(...scores);
	const powers = Array.from(scores, (score) => Math.exp(score - most));
	const sum = powers.reduce((total, power) => total + power, 0);
	return powers.map((power) => power / sum);
}
