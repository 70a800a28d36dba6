import { diff } from 'color-diff';
import Color from 'colorjs.io';
import { differenceCiede2000 } from 'culori';
import { kmeans } from 'ml-kmeans';
import { clusterLab } from '../src/colour/cluster.ts';
import { deltaE2000Matrix } from '../src/colour/delta-e-many.ts';
import { labFromPixels } from '../src/colour/lab-pixels.ts';
import { labFromSrgb8 } from '../src/colour/lab65.ts';
import { colourName } from '../src/colour/name.ts';
import { regionCosts } from '../src/colour/region.ts';
import { seededRandom } from '../src/wardrobe/words/seeded-random.ts';
import { medianMs, type Table } from './table.ts';

const RUNS = 7;
const random = seededRandom('bench colour');

/** Colours spread as clothes are: most of them near grey. */
const clothLabs = (count: number) =>
	Float64Array.from({ length: count * 3 }, (_, i) =>
		i % 3 === 0 ? 10 + random() * 85 : (random() + random() + random() - 1.5) * 50,
	);

async function pairsTable(): Promise<Table> {
	const count = 700;
	const labs = clothLabs(count);
	const triples = Array.from({ length: count }, (_, i) => [labs[i * 3]!, labs[i * 3 + 1]!, labs[i * 3 + 2]!] as const);
	const everyPair =
		<T>(colours: readonly T[], difference: (one: T, other: T) => number) =>
		() => {
			let sum = 0;
			for (const one of colours) for (const other of colours) sum += difference(one, other);
			return sum;
		};
	const culori = triples.map(([l, a, b]) => ({ mode: 'lab65' as const, l, a, b }));
	const colorDiff = triples.map(([L, a, b]) => ({ L, a, b }));
	const colorjs = triples.slice(0, 200).map(([L, a, b]) => new Color('lab', [L, a, b]));
	const own = await medianMs(RUNS, () => deltaE2000Matrix(labs, labs));
	const others = [
		['culori, pair by pair', await medianMs(RUNS, everyPair(culori, differenceCiede2000())), count],
		['color-diff, pair by pair', await medianMs(RUNS, everyPair(colorDiff, diff)), count],
		[
			'colorjs.io, pair by pair',
			await medianMs(
				3,
				everyPair(colorjs, (one, other) => one.deltaE(other, { method: '2000' })),
			),
			colorjs.length,
		],
	] as const;
	const nsAPair = (ms: number, colours: number) => (ms * 1e6) / colours ** 2;
	const base = nsAPair(own.cpuMs, count);
	return {
		title: 'CIEDE2000 for many pairs',
		columns: ['', 'ns a pair (CPU)', 'times ours'],
		rows: [
			['deltaE2000Matrix', base, 1],
			...others.map(
				([name, { cpuMs }, colours]) => [name, nsAPair(cpuMs, colours), nsAPair(cpuMs, colours) / base] as const,
			),
		],
		notes: [
			`${count} x ${count} pairs (colorjs.io ${colorjs.length} x ${colorjs.length}); equal to culori within 1e-9 (tests/standards).`,
		],
	};
}

async function picturesTable(): Promise<Table> {
	const [width, height] = [1280, 960];
	const pixels = Uint8Array.from({ length: width * height * 3 }, (_, i) =>
		Math.min(255, 40 + 60 * ((i / 3 / width / 240) | 0) + random() * 20),
	);
	const labs = labFromPixels(pixels, 3);
	const small = labFromPixels(
		Uint8Array.from({ length: 20_000 * 3 }, () => random() * 256),
		3,
	);
	const rows = Array.from({ length: 20_000 }, (_, i) => [...small.subarray(i * 3, i * 3 + 3)]);
	const convert = await medianMs(RUNS, () => labFromPixels(pixels, 3));
	const oneByOne = await medianMs(3, () => {
		for (let i = 0; i < pixels.length; i += 3) labFromSrgb8(pixels[i]!, pixels[i + 1]!, pixels[i + 2]!);
	});
	const cluster = await medianMs(RUNS, () => clusterLab(small, null, 6));
	const plain = await medianMs(RUNS, () => kmeans(rows, 6, { seed: 1 }));
	const region = await medianMs(RUNS, () => regionCosts({ labs, width, height }, 640, 480));
	const names = await medianMs(RUNS, () => {
		for (let i = 0; i < 1000; i++) colourName([small[i * 3]!, small[i * 3 + 1]!, small[i * 3 + 2]!]);
	});
	return {
		title: 'Whole pictures',
		columns: ['', 'ms (CPU)', 'against'],
		rows: [
			[
				'1.2 M pixels to CIELAB',
				convert.cpuMs,
				`${(oneByOne.cpuMs / convert.cpuMs).toFixed(1)} times as fast as culori pixel by pixel`,
			],
			[
				'20,000 points into 6 clusters',
				cluster.cpuMs,
				`${(cluster.cpuMs / plain.cpuMs).toFixed(2)} of ml-kmeans alone with kmeans++ (without weights)`,
			],
			['a region in 1.2 M pixels', region.cpuMs, ''],
			['1,000 colour names', names.cpuMs, ''],
		],
	};
}

/** The colour kernels beside general-purpose libraries. */
export const run = async (): Promise<readonly Table[]> => [await pairsTable(), await picturesTable()];
