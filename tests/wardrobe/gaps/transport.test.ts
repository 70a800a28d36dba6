import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import solverModule from 'javascript-lp-solver';
import { describe, expect, it } from 'vitest';
import { partialTransport } from '../../../src/wardrobe/gaps/transport.ts';
import { earthMoversDistance } from '../../support/earth-movers-distance.ts';

// The package's types describe its CommonJS build, where the solver is the property `default`; Node imports the ES module.
const solver = solverModule as unknown as typeof solverModule.default;

const rowsOf = (matrix: readonly (readonly number[])[]) => matrix.map((row) => Float64Array.from(row));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** The same problem as a linear program, solved by the general-purpose solver javascript-lp-solver (npm). */
function optimumByLinearProgram(
	supply: readonly number[],
	demand: readonly number[],
	cost: readonly Float64Array[],
	most: number,
): number {
	const variables: Record<string, Record<string, number>> = {};
	for (const [i] of supply.entries()) {
		for (const [j] of demand.entries())
			variables[`x${i}_${j}`] = { saved: most - cost[i]![j]!, [`s${i}`]: 1, [`d${j}`]: 1 };
	}
	const constraints = Object.fromEntries([
		...supply.map((amount, i) => [`s${i}`, { max: amount }]),
		...demand.map((amount, j) => [`d${j}`, { max: amount }]),
	]);
	const { result } = solver.Solve({ optimize: 'saved', opType: 'max', constraints, variables }) as { result: number };
	return most * sum(demand) - result;
}

const problem = fc.integer({ min: 1, max: 5 }).chain((n) =>
	fc.integer({ min: 1, max: 4 }).chain((m) =>
		fc.record({
			supply: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: n, maxLength: n }),
			demand: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: m, maxLength: m }),
			matrix: fc.array(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: m, maxLength: m }), {
				minLength: n,
				maxLength: n,
			}),
		}),
	),
);

describe('partial optimal transport', () => {
	it("gives the published distances of Rubner's two examples", () => {
		// Y. Rubner's example code (IJCV 40(2), 2000), and sums worked out with scipy's linprog; sources in fixtures/reference/README.md.
		type Example = {
			weights1: number[];
			weights2: number[];
			costMatrix?: number[][];
			features1?: number[][];
			features2?: number[][];
			exactEmd?: number;
			emd?: number;
		};
		const { examples, computedByUs } = JSON.parse(readFileSync('fixtures/reference/rubner-emd.json', 'utf8')) as {
			examples: Example[];
			computedByUs: Example[];
		};
		expect(examples).toHaveLength(2);
		for (const { weights1, weights2, costMatrix, features1, features2, exactEmd, emd } of [
			...examples,
			...computedByUs,
		]) {
			const matrix =
				costMatrix ??
				features1!.map((one) =>
					features2!.map((other) => Math.hypot(...one.map((value, axis) => value - other[axis]!))),
				);
			expect(earthMoversDistance(weights1, weights2, rowsOf(matrix))).toBeCloseTo(exactEmd ?? emd!, 5);
		}
	});

	it('reaches the optimum that a linear program finds', () => {
		fc.assert(
			fc.property(problem, fc.integer({ min: 1, max: 40 }), ({ supply, demand, matrix }, most) => {
				const cost = rowsOf(matrix);
				const { cost: carried, missing } = partialTransport(supply, demand, cost, most);
				expect(carried + most * sum(missing)).toBeCloseTo(optimumByLinearProgram(supply, demand, cost, most), 6);
			}),
			{ numRuns: 300, seed: 1 },
		);
	});

	it('neither makes nor loses anything', () => {
		fc.assert(
			fc.property(problem, ({ supply, demand, matrix }) => {
				const { flows, missing, surplus } = partialTransport(supply, demand, rowsOf(matrix), 25);
				for (const [i, amount] of supply.entries())
					expect(sum(flows.filter(({ from }) => from === i).map((flow) => flow.amount)) + surplus[i]!).toBeCloseTo(
						amount,
						9,
					);
				for (const [j, amount] of demand.entries())
					expect(sum(flows.filter(({ to }) => to === j).map((flow) => flow.amount)) + missing[j]!).toBeCloseTo(
						amount,
						9,
					);
			}),
			{ numRuns: 200, seed: 2 },
		);
	});

	it('costs the same in both directions', () => {
		fc.assert(
			fc.property(problem, ({ supply, demand, matrix }) => {
				const turned = demand.map((_, j) => supply.map((__, i) => matrix[i]![j]!));
				expect(earthMoversDistance(supply, demand, rowsOf(matrix))).toBeCloseTo(
					earthMoversDistance(demand, supply, rowsOf(turned)),
					6,
				);
			}),
			{ numRuns: 200, seed: 3 },
		);
	});

	it('answers for nothing to carry', () => {
		expect(partialTransport([], [], [])).toEqual({ flows: [], cost: 0, missing: [], surplus: [] });
		expect(partialTransport([], [1], [], 5)).toEqual({ flows: [], cost: 0, missing: [1], surplus: [] });
		expect(earthMoversDistance([0], [0], rowsOf([[3]]))).toBe(0);
	});
});
