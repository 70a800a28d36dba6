import { say } from '../../language/speak.ts';
import { ONE_GO_MS } from './one-go.ts';
import type { Reading, Trust } from './reading.ts';

/**
 * Part of a photo's error that the next one repeats, even in another light: phones render alike. Measured on all pairs and triples of 8 real
 * phone photos of a chart: 0.05 where nothing tells the light, 0.24 to 0.36 where a neutral does (tests/wardrobe/words/joint-trust.test.ts).
 */
const REPEATED = 0.3;

/** A reading as far as it can be joined with others. */
export type Joinable = Pick<Reading, 'trust' | 'takenAt'>;

/** How much each photo counts in their joint colour: the square of how sure it is, summing to 1. An error of 0 counts as 0.1. */
export function weightsOf(readings: readonly Joinable[]): number[] {
	const weights = readings.map(({ trust }) => 1 / Math.max(0.1, trust.error) ** 2);
	const sum = weights.reduce((total, weight) => total + weight, 0);
	return weights.map((weight) => weight / sum);
}

/** Photos by the light they were taken in: one after the other in one go share it, and so do all that do not tell their time. */
function byLight<T extends Joinable>(readings: readonly T[]): T[][] {
	const untimed = readings.filter(({ takenAt }) => takenAt === null);
	const timed = readings
		.filter(({ takenAt }) => takenAt !== null)
		.sort((one, other) => Date.parse(one.takenAt!) - Date.parse(other.takenAt!));
	const lights: T[][] = untimed.length > 0 ? [untimed] : [];
	let last = Number.NEGATIVE_INFINITY;
	for (const reading of timed) {
		const at = Date.parse(reading.takenAt!);
		if (at - last <= ONE_GO_MS) lights.at(-1)!.push(reading);
		else lights.push([reading]);
		last = at;
	}
	return lights;
}

/** Mean error of photos in one light, each by its weight: more of them do not lower it. */
function errorInOneLight(readings: readonly Joinable[]): number {
	const weights = weightsOf(readings);
	return readings.reduce((sum, { trust }, index) => sum + weights[index]! * trust.error, 0);
}

/**
 * One trust for several photos of one piece, joined by their trust. Photos in one light err together; those in several lights partly cancel
 * out. Reasons and advice are the surest photo's, with how many photos there are in front.
 */
export function jointTrust(readings: readonly Joinable[]): Trust {
	const surest = readings.reduce((one, other) => (other.trust.error < one.trust.error ? other : one)).trust;
	if (readings.length === 1) return surest;
	const lights = byLight(readings).map((group) => ({
		trust: { ...surest, error: errorInOneLight(group) },
		takenAt: null,
	}));
	const weights = weightsOf(lights);
	const parts = lights.map(({ trust }, index) => weights[index]! * trust.error);
	const together = parts.reduce((sum, part) => sum + part, 0);
	const apart = Math.hypot(...parts);
	const error = Math.sqrt(REPEATED * together ** 2 + (1 - REPEATED) * apart ** 2);
	const count = readings.length;
	const why =
		lights.length > 1
			? say('reports.joinedLights', { count, lights: lights.length })
			: say('reports.joinedOneLight', { count });
	return {
		...surest,
		error: Math.min(Math.round(10 * error) / 10, errorInOneLight(readings)),
		reasons: [why, ...surest.reasons],
	};
}
