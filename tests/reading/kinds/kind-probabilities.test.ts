import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindProbabilities } from '../../../src/reading/kinds/kind-probabilities.ts';
import { SCORE_COUNT, TOLD_KINDS } from '../../../src/reading/kinds/told-kinds.ts';
import { KIND_SURE_FROM } from '../../../src/wardrobe/words/kind.ts';
import { SLOTS } from '../../../src/wardrobe/words/slot.ts';

const placeOf = (kind: string) => TOLD_KINDS.findIndex((told) => told.kind === kind);
const placeOfSlot = (slot: (typeof SLOTS)[number]) => TOLD_KINDS.length + SLOTS.indexOf(slot);

const scoresWith = (high: readonly (readonly [place: number, score: number])[]): Float32Array => {
	const scores = new Float32Array(SCORE_COUNT);
	for (const [place, score] of high) scores[place] = score;
	return scores;
};

describe('what a piece may be', () => {
	it('says a kind that stands out, within a slot that stands out', () => {
		const told = kindProbabilities(
			scoresWith([
				[placeOf('jeans'), 8],
				[placeOfSlot('bottom'), 9],
			]),
		);
		expect(told.kinds[0]!.kind).toBe('jeans');
		expect(told.kinds[0]!.probability).toBeGreaterThan(KIND_SURE_FROM);
	});

	it('offers two where two are as likely', () => {
		const scores = scoresWith([
			[placeOf('coat'), 6],
			[placeOf('jacket'), 6],
			[placeOfSlot('outer'), 9],
		]);
		const told = kindProbabilities(scores);
		expect(new Set(told.kinds.slice(0, 2).map(({ kind }) => kind))).toEqual(new Set(['coat', 'jacket']));
		expect(told.kinds[0]!.probability).toBeCloseTo(told.kinds[1]!.probability, 6);
		expect(told.kinds[0]!.probability).toBeLessThan(KIND_SURE_FROM);
	});

	it('hears the slot that somebody has told', () => {
		const scores = scoresWith([
			[placeOf('skirt'), 6],
			[placeOf('dress'), 6],
			[placeOfSlot('bottom'), 9],
		]);
		expect(kindProbabilities(scores).kinds[0]!.kind).toBe('skirt');
		expect(kindProbabilities(scores, 'full').kinds[0]!.kind).toBe('dress');
	});

	it('says nothing for sure of what is no piece', () => {
		const told = kindProbabilities(
			scoresWith([
				[placeOf('bag'), 9],
				[SCORE_COUNT - 1, 9],
			]),
		);
		expect(told.nothing).toBeGreaterThan(0.95);
		expect(told.kinds.every(({ probability }) => probability < KIND_SURE_FROM)).toBe(true);
	});

	it('keeps probabilities that sum to at most one, in falling order, whatever the scores', () => {
		const scores = fc.array(fc.float({ min: -30, max: 30, noNaN: true }), {
			minLength: SCORE_COUNT,
			maxLength: SCORE_COUNT,
		});
		fc.assert(
			fc.property(scores, fc.option(fc.constantFrom(...SLOTS)), (values, slot) => {
				const { kinds, nothing } = kindProbabilities(Float32Array.from(values), slot);
				const sum = kinds.reduce((total, { probability }) => total + probability, nothing);
				expect(sum).toBeLessThanOrEqual(1 + 1e-6);
				for (const [at, one] of kinds.entries())
					if (at > 0) expect(one.probability).toBeLessThanOrEqual(kinds[at - 1]!.probability);
			}),
		);
	});

	it('changes nothing when all scores of a slot rise together', () => {
		const scores = Float32Array.from({ length: SCORE_COUNT }, (_, i) => Math.sin(i * 12.9) * 3);
		const raised = scores.map((score, place) => (TOLD_KINDS[place]?.slot === 'shoes' ? score + 5 : score));
		const [plain, other] = [kindProbabilities(scores), kindProbabilities(raised)];
		for (const [at, one] of plain.kinds.entries()) expect(other.kinds[at]!.probability).toBeCloseTo(one.probability, 5);
	});
});
