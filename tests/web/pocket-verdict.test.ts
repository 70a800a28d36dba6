import { describe, expect, it } from 'vitest';
import { inLanguage } from '../../src/language/speak.ts';
import { leanInput } from '../../src/wardrobe/season/pocket-data.ts';
import { checkCandidate } from '../../src/wardrobe/wishes/candidate-check.ts';
import type { SeasonInput } from '../../src/wardrobe/words/season-input.ts';
import { verdictOf } from '../../web/pocket/verdict.ts';
import { aCandidate, aSeasonInput, aWish } from '../support/build-season.ts';
import { aGarment, INK, OAT, RUST, TEAL } from '../support/build-wardrobe.ts';

const garments = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT, notes: 'a long note', care: 'by hand' }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'ink boots', kind: 'boots', lab: INK }),
	aGarment({ id: 'rust jumper', kind: 'jumper', lab: RUST }),
	aGarment({ id: 'gone coat', kind: 'coat', lab: TEAL, place: 'gone' }),
];
const input = aSeasonInput({ garments, wishes: [aWish()] });
/** As it comes out of the file. */
const carried = JSON.parse(JSON.stringify(leanInput(input))) as SeasonInput;

describe('the pocket page', () => {
	it.each([
		['rust jumper', RUST, 30],
		['teal jumper', TEAL, 90],
		['ink jumper', INK, null],
	] as const)('says of a %s what the page at home says, in both languages', (_, lab, price) => {
		const { swatches, pattern, trust } = aGarment({ id: 'found', kind: 'jumper', lab });
		const candidate = aCandidate({ kind: 'jumper', price, used: true, swatches, pattern, trust });
		for (const language of ['en-GB', 'de'] as const) {
			const [pocket, home] = inLanguage(language, () => [
				verdictOf(carried, { kind: 'jumper', price, used: true }, { swatches, pattern, trust }),
				checkCandidate(candidate, input),
			]);
			const told = ({ fit, recommendation, wishId, partnerCount, expectedCostPerWear }: typeof home) => ({
				verdict: fit.verdict,
				recommendation,
				wishId,
				partnerCount,
				expectedCostPerWear,
			});
			expect(told(pocket)).toEqual(told(home));
			// Names differ: the find has none of its own.
			expect(pocket.reasons.length).toBe(home.reasons.length);
		}
	});

	it('carries no notes and no photos’ names', () => {
		expect(JSON.stringify(carried)).not.toMatch(/a long note|by hand/);
		expect(carried.garments).toHaveLength(garments.length);
	});
});
