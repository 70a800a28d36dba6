import { describe, expect, it } from 'vitest';
import { wishesFor } from '../../src/app/wish-list.ts';
import { aSeasonInput, aWish } from '../support/build-season.ts';

const { season } = aSeasonInput();
const spring26 = { ...season, id: 'spring 26', startsOn: '2026-03-01' };
const spring27 = { ...season, id: 'spring 27', startsOn: '2027-03-01' };
const winter = { ...season, id: 'winter', yearPart: 'winter' as const, startsOn: '2026-12-01' };
const seasons = [spring26, spring27, winter];

describe('the wishes of a season', () => {
	const wish = aWish({ seasonId: 'spring 26', yearParts: ['spring'] });

	it('come along into the next season they serve, until they are answered or dropped', () => {
		expect(wishesFor(spring27, seasons, [wish])).toEqual([wish]);
		expect(wishesFor(winter, seasons, [wish])).toEqual([]);
		expect(wishesFor(winter, seasons, [{ ...wish, yearParts: ['spring', 'winter'] }])).toHaveLength(1);
		expect(wishesFor(spring27, seasons, [{ ...wish, state: 'answered' }])).toEqual([]);
		expect(wishesFor(spring27, seasons, [{ ...wish, state: 'dropped' }])).toEqual([]);
	});

	it('never go back into an earlier season, and stay in their own whatever their state', () => {
		expect(wishesFor(spring26, seasons, [{ ...wish, seasonId: 'spring 27' }])).toEqual([]);
		const beside = { ...spring26, id: 'beside it' };
		expect(wishesFor(beside, [...seasons, beside], [wish])).toEqual([]);
		expect(wishesFor(spring26, seasons, [{ ...wish, state: 'answered' }])).toHaveLength(1);
	});
});
