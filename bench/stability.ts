import { rereadsOf } from '../src/wardrobe/fit/rereads.ts';
import { gapsNow } from '../src/wardrobe/gaps/season-gaps.ts';
import { buildLineUp } from '../src/wardrobe/line-up/line-up.ts';
import { type Report, seasonReport } from '../src/wardrobe/season/report.ts';
import { wishFromGap } from '../src/wardrobe/wishes/wishes.ts';
import type { Garment } from '../src/wardrobe/words/garment.ts';
import type { SeasonInput } from '../src/wardrobe/words/season-input.ts';
import { generatedBoard, generatedWardrobe, styledBoard } from './generated-wardrobe.ts';
import { SEASON, seasonHome } from './season-home.ts';
import type { Row, Table } from './table.ts';
import { untoldStability } from './untold-stability.ts';

const GARMENTS = 44;
const PICTURES = 12;
const ROUNDS = 20;
const WISHES = 6;
const HOMES = ['a', 'b', 'c', 'd', 'e', 'f'] as const;
type Board = typeof generatedBoard;

/** A season of a made-up home, with a wish from each of its first gaps, each wanted for another time, or all for one day. */
function homeOf(seed: string, boardOf: Board): SeasonInput {
	const input = seasonHome(
		generatedWardrobe(GARMENTS, `stability ${seed}`),
		boardOf(PICTURES, `stability board ${seed}`),
	);
	const wishes = seasonReport(input)
		.gaps.slice(0, WISHES)
		.map((gap, index) => ({
			...wishFromGap(gap, input, { id: `wish ${index}`, today: input.today }),
			wantedSince: `2025-${String(3 + 2 * (index % 5)).padStart(2, '0')}-01`,
		}));
	return { ...input, wishes };
}

/** The garments as each of the rounds reads them anew, within their photos' stated errors. */
function reread(garments: readonly Garment[]): Garment[][] {
	return rereadsOf(garments, 7)
		.slice(0, ROUNDS)
		.map((round) =>
			garments.map((garment, index) => ({
				...garment,
				swatches: garment.swatches.map((swatch) => ({ ...swatch, lab: round.shifted(index, swatch.lab) })),
			})),
		);
}

const percent = (part: number, whole: number) => (whole === 0 ? 0 : (100 * part) / whole);

const firstThree = (ids: readonly string[]) => ids.slice(0, 3);
const keptOf = (before: readonly string[], now: readonly string[]) =>
	firstThree(before).filter((id) => firstThree(now).includes(id)).length;
const isSameOrder = (one: readonly string[], other: readonly string[]) =>
	firstThree(one).join('\n') === firstThree(other).join('\n');

const gapIds = ({ gaps }: Pick<Report, 'gaps'>) => gaps.map(({ id }) => id);
const wishIds = ({ wishes }: Report) => wishes.map(({ wishId }) => wishId);

const lineUpIds = (input: SeasonInput) =>
	buildLineUp(input, { quotas: SEASON.quotas, targetCount: SEASON.targetCount, mustKeep: [], neverUse: [] }).garmentIds;

/** The season with that line-up (none: an empty one), and the gaps noted as they then stand. */
function withLineUp(input: SeasonInput, garmentIds: readonly string[]): SeasonInput {
	const lineUp = { seasonId: input.season.id, garmentIds, mustKeep: [], neverUse: [] };
	return { ...input, lineUp: { ...lineUp, gapIds: gapsNow({ ...input, lineUp }).map(({ id }) => id) } };
}

const wishedToday = (input: SeasonInput): SeasonInput => ({
	...input,
	wishes: input.wishes.map((wish) => ({ ...wish, wantedSince: input.today })),
});

/** How many of the garments' verdicts flip, and of their sorting: sure verdicts, unsure ones, sorting. */
function flipsOf(before: Report, now: Report) {
	const was = new Map(before.garments.map((one) => [one.garmentId, one]));
	const counts = { sure: 0, sureFlips: 0, unsure: 0, unsureFlips: 0, sortingFlips: 0 };
	for (const garment of now.garments) {
		const then = was.get(garment.garmentId)!;
		const flips = garment.fit.likely !== then.fit.likely ? 1 : 0;
		const isUnsure = then.fit.verdict === 'unsure';
		counts[isUnsure ? 'unsure' : 'sure']++;
		counts[isUnsure ? 'unsureFlips' : 'sureFlips'] += flips;
		if (garment.sorting.suggestion !== then.sorting.suggestion) counts.sortingFlips++;
	}
	return counts;
}

/** What one re-read changes. */
function changesOf({ input, noted, chosen, before }: Home, garments: readonly Garment[]) {
	const again = { ...input, garments };
	const report = seasonReport(again);
	const now = new Set(lineUpIds(again));
	const { garmentIds } = chosen.lineUp!;
	return {
		...flipsOf(before.report, report),
		gapsKept: keptOf(before.gaps, gapIds(report)),
		notedGapsKept: keptOf(before.gaps, gapIds({ gaps: gapsNow({ ...noted, garments }) })),
		chosenGapsKept: keptOf(before.chosenGaps, gapIds({ gaps: gapsNow({ ...chosen, garments }) })),
		wishesMoved: isSameOrder(before.wishes, wishIds(report)) ? 0 : 1,
		todayMoved: isSameOrder(before.wishesOfToday, wishIds(seasonReport(wishedToday(again)))) ? 0 : 1,
		lineUpKept: percent(garmentIds.filter((id) => now.has(id)).length, garmentIds.length),
	};
}

type Changes = ReturnType<typeof changesOf>;
/** A home as it is, with its gaps noted, and with a line-up chosen. */
type Home = {
	readonly input: SeasonInput;
	readonly noted: SeasonInput;
	readonly chosen: SeasonInput;
	readonly before: Before;
};
type Before = {
	readonly report: Report;
	readonly gaps: readonly string[];
	readonly chosenGaps: readonly string[];
	readonly wishes: readonly string[];
	readonly wishesOfToday: readonly string[];
};

function rowOf(seed: string, boardOf: Board): Row {
	const input = homeOf(seed, boardOf);
	const noted = withLineUp(input, []);
	const chosen = withLineUp(input, lineUpIds(input));
	const report = seasonReport(input);
	const before: Before = {
		report,
		gaps: gapIds(report),
		chosenGaps: chosen.lineUp!.gapIds!,
		wishes: wishIds(report),
		wishesOfToday: wishIds(seasonReport(wishedToday(input))),
	};
	const rounds = reread(input.garments).map((garments) => changesOf({ input, noted, chosen, before }, garments));
	const sum = (part: keyof Changes) => rounds.reduce((total, round) => total + round[part], 0);
	const others = (part: 'gapsKept' | 'notedGapsKept' | 'chosenGapsKept') =>
		`${rounds.filter((round) => round[part] < firstThree(before.gaps).length).length} of ${ROUNDS}`;
	return [
		`home ${seed}`,
		percent(sum('sureFlips'), sum('sure')),
		percent(sum('unsureFlips'), sum('unsure')),
		percent(sum('sortingFlips'), ROUNDS * GARMENTS),
		others('gapsKept'),
		others('notedGapsKept'),
		others('chosenGapsKept'),
		`${sum('wishesMoved')} of ${ROUNDS}`,
		`${sum('todayMoved')} of ${ROUNDS}`,
		sum('lineUpKept') / ROUNDS,
	];
}

const COLUMNS = [
	'',
	'sure verdicts that flip, %',
	'unsure ones, %',
	'sorting changed, %',
	'first three gaps are others, never noted',
	'noted when photos were read',
	'once a line-up is chosen',
	'first three wishes in another order',
	'the same, all wished on one day',
	'line-up kept, %',
];

/** What of the judgements changes when every garment is photographed again, within the errors that the readings state. */
export async function run(): Promise<readonly Table[]> {
	const boards: readonly (readonly [name: string, boardOf: Board])[] = [
		['a board of one style', styledBoard],
		['a board of unrelated pictures, the worst case', generatedBoard],
	];
	const tables = boards.map(([name, boardOf]) => ({
		title: `Stability over ${ROUNDS} re-reads of ${GARMENTS} garments, ${name}`,
		columns: COLUMNS,
		rows: HOMES.map((seed) => rowOf(seed, boardOf)),
		notes: ['A verdict flips where the likely one is another; an unsure one says so beforehand.'],
	}));
	return [...tables, untoldStability()];
}
