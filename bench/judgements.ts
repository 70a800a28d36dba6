import { differenceCiede2000 } from 'culori';
import { fitOf } from '../src/wardrobe/fit/fit.ts';
import { styleProfile } from '../src/wardrobe/fit/style.ts';
import { styleFit } from '../src/wardrobe/fit/style-fit.ts';
import { twinsOf } from '../src/wardrobe/fit/twins.ts';
import { bandsOf } from '../src/wardrobe/gaps/bands.ts';
import { seasonGaps } from '../src/wardrobe/gaps/season-gaps.ts';
import { swapsFor } from '../src/wardrobe/line-up/swaps.ts';
import { lonersOf } from '../src/wardrobe/pairs/loners.ts';
import { pairTable } from '../src/wardrobe/pairs/pair-table.ts';
import { pairingsFromReadings } from '../src/wardrobe/pairs/pairings.ts';
import { partnersIn } from '../src/wardrobe/pairs/partners.ts';
import { derivePalette } from '../src/wardrobe/palette/palette.ts';
import { seasonReport } from '../src/wardrobe/season/report.ts';
import { generatedBoard, generatedWardrobe } from './generated-wardrobe.ts';
import { SEASON, seasonHome } from './season-home.ts';
import { medianMs, type Row, type Table } from './table.ts';

const SIZES = [60, 240, 1000, 2000] as const;
const RUNS = 5;
const PARTNERS_TOLD = 5;

const REPORT = 'the whole season report, all of these in it';

/** CPU milliseconds that culori takes for a million CIEDE2000: the yardstick of what a report costs. */
async function millionPairsMs(): Promise<number> {
	const difference = differenceCiede2000();
	const colours = Array.from({ length: 1000 }, (_, i) => ({ mode: 'lab65' as const, l: i / 10, a: i % 41, b: i % 67 }));
	const { cpuMs } = await medianMs(RUNS, () => {
		let sum = 0;
		for (const one of colours) for (const other of colours) sum += difference(one, other);
		return sum;
	});
	return cpuMs;
}

/** CPU milliseconds of each judgement over one wardrobe. */
async function judgementsOf(count: number): Promise<ReadonlyMap<string, number>> {
	const garments = generatedWardrobe(count, 'bench judgements');
	const board = generatedBoard(40, 'bench board');
	const input = seasonHome(garments, board);
	const { palette } = input;
	const context = { palette, pairings: pairingsFromReadings(board), pairWords: [], wornTogether: [] };
	const table = pairTable(garments, context);
	const profile = styleProfile(board);
	const held = garments.filter(({ place }) => place === 'rail');
	const set = held.slice(0, SEASON.targetCount).map(({ id }) => id);
	const steps: Record<string, () => unknown> = {
		'palette of 40 pictures with firmness': () => derivePalette(board),
		'fit of every garment, with sentences': () => garments.map((garment) => fitOf(garment, palette)),
		'support of every pair': () => pairTable(garments, context),
		[`the best ${PARTNERS_TOLD} partners of every garment, with sentences`]: () =>
			garments.map((_, index) => partnersIn(table, index, { limit: PARTNERS_TOLD })),
		loners: () => lonersOf(garments, context, { table }),
		twins: () => twinsOf(garments),
		'style of every garment, axis by axis': () => garments.map((garment) => styleFit(garment, profile)),
		'woven bands': () => bandsOf(palette, held),
		'gaps, and outfits with what one more piece adds': () => seasonGaps(input, held, [], { owned: table }),
		'all swaps for one garment of a set of 33': () => swapsFor(input, { garmentIds: set, garmentId: set[0]! }),
		[REPORT]: () => seasonReport(input),
	};
	const cpu = new Map<string, number>();
	for (const [name, step] of Object.entries(steps)) cpu.set(name, (await medianMs(RUNS, step)).cpuMs);
	return cpu;
}

/** The power of the number of garments with which a time grows, between the two largest wardrobes: there what is fixed no longer counts. */
function growthOf(times: readonly number[]): number {
	const [size, larger] = SIZES.slice(-2) as [number, number];
	const [ms, more] = times.slice(-2) as [number, number];
	return Math.log(more / ms) / Math.log(larger / size);
}

/** The judgements over whole wardrobes, and how each grows with them. */
export async function run(): Promise<readonly Table[]> {
	const bySize: ReadonlyMap<string, number>[] = [];
	for (const size of SIZES) bySize.push(await judgementsOf(size));
	const rows = [...bySize[0]!.keys()].map((name): Row => {
		const times = bySize.map((cpu) => cpu.get(name)!);
		const micros = (1000 * times.at(-1)!) / SIZES.at(-1)! ** 2;
		return [name, ...times, growthOf(times), micros];
	});
	return [
		{
			title: 'Judgements over a whole wardrobe, ms of CPU',
			columns: [
				'',
				...SIZES.map((size) => `${size} garments`),
				'grows with the power',
				'microseconds a pair at the largest',
			],
			rows,
			ratios: {
				'report of 2,000 garments / a million CIEDE2000 by culori':
					bySize.at(-1)!.get(REPORT)! / (await millionPairsMs()),
			},
		},
	];
}
