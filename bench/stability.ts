import { rereadsOf } from '../src/wardrobe/fit/rereads.ts';
import { buildLineUp } from '../src/wardrobe/line-up/line-up.ts';
import { type Report, seasonReport } from '../src/wardrobe/season/report.ts';
import { wishFromGap } from '../src/wardrobe/wishes/wishes.ts';
import type { Garment } from '../src/wardrobe/words/garment.ts';
import type { SeasonInput } from '../src/wardrobe/words/season-input.ts';
import { generatedBoard, generatedWardrobe, styledBoard } from './generated-wardrobe.ts';
import { SEASON, seasonHome } from './season-home.ts';
import type { Row, Table } from './table.ts';

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

/** How the first names of a list stay: whether the first three are the same ones, and in the same order. */
const firstThree = (ids: readonly string[]) => ids.slice(0, 3);
const sameOrder = (one: readonly string[], other: readonly string[]) =>
	firstThree(one).join('\n') === firstThree(other).join('\n');
const sameSet = (one: readonly string[], other: readonly string[]) =>
	sameOrder([...firstThree(one)].sort(), [...firstThree(other)].sort());

const lineUpIds = (input: SeasonInput) =>
	buildLineUp(input, { quotas: SEASON.quotas, targetCount: SEASON.targetCount, mustKeep: [], neverUse: [] }).garmentIds;

function rowOf(seed: string, boardOf: Board): Row {
	const input = homeOf(seed, boardOf);
	const sameDay = (one: SeasonInput) => ({
		...one,
		wishes: one.wishes.map((wish) => ({ ...wish, wantedSince: one.today })),
	});
	const idsOf = ({ wishes }: Report) => wishes.map(({ wishId }) => wishId);
	const beforeSameDay = idsOf(seasonReport(sameDay(input)));
	const before = seasonReport(input);
	const members = lineUpIds(input);
	const of = (report: Report) => new Map(report.garments.map((one) => [one.garmentId, one]));
	const was = of(before);
	let sure = 0;
	let sureFlips = 0;
	let unsure = 0;
	let unsureFlips = 0;
	let sortingFlips = 0;
	let gapsKept = 0;
	let wishesKept = 0;
	let sameDayKept = 0;
	let kept = 0;
	for (const garments of reread(input.garments)) {
		const again = { ...input, garments };
		const report = seasonReport(again);
		for (const now of report.garments) {
			const then = was.get(now.garmentId)!;
			const flips = now.fit.likely !== then.fit.likely;
			if (then.fit.verdict === 'unsure') {
				unsure++;
				if (flips) unsureFlips++;
			} else {
				sure++;
				if (flips) sureFlips++;
			}
			if (now.sorting.suggestion !== then.sorting.suggestion) sortingFlips++;
		}
		if (
			sameSet(
				before.gaps.map(({ id }) => id),
				report.gaps.map(({ id }) => id),
			)
		)
			gapsKept++;
		if (sameOrder(idsOf(before), idsOf(report))) wishesKept++;
		if (sameOrder(beforeSameDay, idsOf(seasonReport(sameDay(again))))) sameDayKept++;
		const now = new Set(lineUpIds(again));
		kept += percent(members.filter((id) => now.has(id)).length, members.length);
	}
	return [
		`home ${seed}`,
		percent(sureFlips, sure),
		percent(unsureFlips, unsure),
		percent(sortingFlips, ROUNDS * GARMENTS),
		`${ROUNDS - gapsKept} of ${ROUNDS}`,
		`${ROUNDS - wishesKept} of ${ROUNDS}`,
		`${ROUNDS - sameDayKept} of ${ROUNDS}`,
		kept / ROUNDS,
	];
}

const COLUMNS = [
	'',
	'sure verdicts that flip, %',
	'unsure ones, %',
	'sorting changed, %',
	'first three gaps are others',
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
	return boards.map(([name, boardOf]) => ({
		title: `Stability over ${ROUNDS} re-reads of ${GARMENTS} garments, ${name}`,
		columns: COLUMNS,
		rows: HOMES.map((seed) => rowOf(seed, boardOf)),
		notes: ['A verdict flips where the likely one is another; an unsure one says so beforehand.'],
	}));
}
