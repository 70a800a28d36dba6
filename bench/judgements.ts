import { fitOf } from '../src/wardrobe/fit.ts';
import type { Garment } from '../src/wardrobe/garment.ts';
import { lonersOf } from '../src/wardrobe/loners.ts';
import { pairTable } from '../src/wardrobe/pair-table.ts';
import { pairingsFromReadings } from '../src/wardrobe/pairings.ts';
import { derivePalette } from '../src/wardrobe/palette.ts';
import type { Palette } from '../src/wardrobe/palette-colour.ts';
import { partnersIn } from '../src/wardrobe/partners.ts';
import type { Reading } from '../src/wardrobe/reading.ts';
import { seasonReport } from '../src/wardrobe/report.ts';
import type { Season } from '../src/wardrobe/season.ts';
import { defaultSeason } from '../src/wardrobe/season-defaults.ts';
import type { SeasonInput } from '../src/wardrobe/season-input.ts';
import { styleProfile } from '../src/wardrobe/style.ts';
import { styleFit } from '../src/wardrobe/style-fit.ts';
import { twinsOf } from '../src/wardrobe/twins.ts';
import { generatedBoard, generatedWardrobe } from './generated-wardrobe.ts';
import { medianMs, type Row, type Table } from './table.ts';

const RUNS = 5;
const PARTNERS_TOLD = 5;

async function judgementsOf(count: number): Promise<Row[]> {
	const garments = generatedWardrobe(count, 'bench judgements');
	const board = generatedBoard(40, 'bench board');
	const palette = derivePalette(board);
	const context = { palette, pairings: pairingsFromReadings(board), pairWords: [], wornTogether: [] };
	const table = pairTable(garments, context);
	const profile = styleProfile(board);
	const steps: Record<string, () => unknown> = {
		'palette of 40 pictures with firmness': () => derivePalette(board),
		'fit of every garment, with sentences': () => garments.map((garment) => fitOf(garment, palette)),
		'support of every pair': () => pairTable(garments, context),
		[`the best ${PARTNERS_TOLD} partners of every garment, with sentences`]: () =>
			garments.map((_, index) => partnersIn(table, index, { limit: PARTNERS_TOLD })),
		loners: () => lonersOf(garments, context, { table }),
		twins: () => twinsOf(garments),
		'style of every garment, axis by axis': () => garments.map((garment) => styleFit(garment, profile)),
	};
	const rows: Row[] = [];
	let sum = 0;
	for (const [name, step] of Object.entries(steps)) {
		const { cpuMs } = await medianMs(RUNS, step);
		sum += cpuMs;
		rows.push([name, count, cpuMs]);
	}
	const whole = seasonInput(garments, board, palette);
	const { cpuMs } = await medianMs(RUNS, () => seasonReport(whole));
	return [...rows, ['these together', count, sum], ['the whole season report, gaps and outfits too', count, cpuMs]];
}

const SEASON: Season = {
	...defaultSeason({
		id: 'season',
		name: 'spring',
		startsOn: '2026-03-01',
		endsOn: '2026-05-31',
		addedAt: '2026-01-01',
	}),
};

/** A season that plans with everything on the rail, without a line-up yet: the most there is to look at. */
const seasonInput = (garments: Garment[], board: Reading[], palette: Palette): SeasonInput => ({
	season: SEASON,
	palette,
	inspirations: board.map((reading, index) => ({
		inspiration: { id: `i${index}`, seasonId: SEASON.id, photoId: `p${index}`, title: '', group: '', addedAt: '' },
		reading,
	})),
	garments,
	wishes: [],
	candidates: [],
	makers: [],
	wears: [],
	pairWords: [],
	lineUp: null,
	today: '2026-03-01',
	lastYear: null,
});

/** The judgements over whole wardrobes. */
export const run = async (): Promise<readonly Table[]> => [
	{
		title: 'Judgements over a whole wardrobe',
		columns: ['', 'garments', 'ms (CPU)'],
		rows: [...(await judgementsOf(100)), ...(await judgementsOf(1000))],
	},
];
