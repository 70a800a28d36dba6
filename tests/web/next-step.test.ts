import { describe, expect, it } from 'vitest';
import { seasonReport } from '../../src/wardrobe/season/report.ts';
import { PLACES_IN_SEASON } from '../../web/src/shell/addresses.ts';
import { nextStepOf } from '../../web/src/shell/next-step.ts';
import { aSeasonInput } from '../support/build-season.ts';
import { aGarment } from '../support/build-wardrobe.ts';

const begun = seasonReport(aSeasonInput({ garments: [], inspirations: [] }));
const withGarments = seasonReport(aSeasonInput({ garments: [aGarment({ id: 'a' })] }));

describe('what comes next', () => {
	it.each(PLACES_IN_SEASON)('is another page than %s, with a reason', (place) => {
		for (const report of [begun, withGarments]) {
			const { to, why } = nextStepOf(place, report);
			expect(to).not.toBe(place);
			expect(why).toMatch(/^[\p{Lu}\d].+[.?]$/u);
		}
	});

	it('after Direction is the garments until there are some, then Sort', () => {
		expect(nextStepOf('direction', begun).to).toBe('garments');
		expect(nextStepOf('direction', withGarments).to).toBe('sort');
	});

	it('after the garments speaks of kinds that nobody has confirmed', () => {
		expect(nextStepOf('garments', withGarments, 3).why).toContain('3 kinds');
		expect(nextStepOf('garments', withGarments, 0).why).not.toContain('kind');
	});
});
