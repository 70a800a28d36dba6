import { bestSet, greedySet } from '../src/wardrobe/line-up/line-up-search.ts';
import { generatedLineUp } from './generated-line-up.ts';
import type { Row, Table } from './table.ts';

const SIZES = [60, 120, 240] as const;
/** Parts of the pairs supported: from hardly anything to nearly half. */
const DENSITIES = [0.15, 0.25, 0.35, 0.45] as const;
const SEEDS = ['a', 'b'] as const;
/** Starts of the search that stands for the best known set. */
const LONG_STARTS = 30;

const shortBy = (objective: number, best: number) => 100 * (1 - objective / best);

/** The search, a greedy pass and the bound against the best set that a search ten times as long finds. */
export async function run(): Promise<readonly Table[]> {
	const rows: Row[] = [];
	const notes: string[] = [];
	for (const size of SIZES) {
		const short: number[] = [];
		for (const density of DENSITIES) {
			for (const seed of SEEDS) {
				const problem = generatedLineUp(size, density, `line-up ${size} ${density} ${seed}`);
				bestSet(problem);
				const before = process.cpuUsage();
				const found = bestSet(problem);
				const { user, system } = process.cpuUsage(before);
				const long = bestSet(problem, LONG_STARTS);
				const best = Math.max(long.objective, found.objective);
				const greedy = greedySet(problem);
				short.push(shortBy(found.objective, best));
				rows.push([
					`${size} garments, ${Math.round(density * 100)} % of pairs, ${seed}`,
					Math.round(100 * found.parts.palette),
					(user + system) / 1000,
					shortBy(found.objective, best),
					shortBy(greedy.objective, best),
					shortBy(best, problem.bound),
				]);
			}
		}
		notes.push(
			`${size} garments: at worst ${Math.max(...short).toFixed(2)} % short of the best known, over ${short.length} wardrobes.`,
		);
	}
	return [
		{
			title: 'Line-up of 33 from generated wardrobes',
			columns: [
				'',
				'palette covered %',
				'ms (CPU)',
				'search short by %',
				'greedy short by %',
				'best known under the bound by %',
			],
			rows,
			notes: [...notes, `Best known = the better of the search and one of ${LONG_STARTS} starts.`],
		},
	];
}
