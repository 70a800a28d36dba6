import { describe, expect, it } from 'vitest';
import { seasonReport } from '../../../src/wardrobe/season/report.ts';
import { wishFromGap, wishStandings } from '../../../src/wardrobe/wishes/wishes.ts';
import { aSeasonInput, aWish } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const garments = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'ink boots', kind: 'boots', lab: INK }),
];
const makers = [{ id: 'm', name: 'a weaver', notes: '' }];
const standings = (wishes: readonly ReturnType<typeof aWish>[], more = {}) =>
	seasonReport(aSeasonInput({ garments, makers, wishes, ...more })).wishes;

describe('a wish', () => {
	it('comes from a gap with its colour, slot and season', () => {
		const input = aSeasonInput({ garments });
		const gap = seasonReport(input).gaps.find(({ id }) => id === 'colour rust')!;
		const wish = wishFromGap(gap, input, { id: 'new', today: '2026-03-10' });
		expect(wish).toMatchObject({
			id: 'new',
			slot: gap.slot,
			target: RUST,
			paletteColourId: 'rust',
			yearParts: ['spring'],
			wantedSince: '2026-03-10',
			state: 'open',
			priceLimit: null,
		});
		const [standing] = standings([wish]);
		expect(standing).toMatchObject({ outfitsAdded: gap.outfitsAdded, wantedDays: 0, newInDays: 30, makers: [] });
	});

	it('opens new, from makers you trust, only after your own waiting time', () => {
		const [waiting] = standings([aWish({ wantedSince: '2026-02-09' })]);
		expect(waiting).toMatchObject({ wantedDays: 29, newInDays: 1, makers: [] });
		expect(waiting!.sentence).toContain('used. If you still want it in 1 day, look for a new one too');
		const [ripe] = standings([aWish({ wantedSince: '2026-02-08' })]);
		expect(ripe).toMatchObject({ wantedDays: 30, newInDays: 0, makers });
		expect(ripe!.sentence).toContain('so your waiting time is over');
	});

	it('wanted from a day that has not come waits its whole time', () => {
		expect(standings([aWish({ wantedSince: '2030-01-01' })])[0]).toMatchObject({ wantedDays: 0, newInDays: 30 });
	});

	it('has more points the more outfits it adds and the more it covers', () => {
		const points = (one: object) =>
			standings([aWish({ id: 'a', ...one }), aWish({ id: 'b', slot: 'bottom', kind: null })]).find(
				({ wishId }) => wishId === 'a',
			)!.priority;
		expect(points({ slot: 'bottom', kind: null })).toBeGreaterThan(points({ slot: 'accessory', kind: 'bag' }));
		expect(points({})).toBeGreaterThan(points({ paletteColourId: null }));
	});

	it('of about as many points comes first where it waits longest, then the more seasons it serves and the less it costs', () => {
		const order = (one: object, other: object) =>
			standings([aWish({ id: 'a', ...one }), aWish({ id: 'b', ...other })]).map(({ wishId }) => wishId);
		expect(order({ slot: 'bottom', kind: null }, { wantedSince: '2025-12-01' })).toEqual(['b', 'a']);
		expect(order({}, { yearParts: ['spring', 'autumn'] })).toEqual(['b', 'a']);
		expect(order({ priceLimit: 200 }, { priceLimit: 50 })).toEqual(['b', 'a']);
		expect(order({ priceLimit: null }, { priceLimit: 0 })).toEqual(['b', 'a']);
		expect(order({}, {})).toEqual(['a', 'b']);
	});

	it('says which stored piece could fill it first', () => {
		const stored = aGarment({ id: 'stored rust shirt', kind: 'shirt', lab: RUST, place: 'stored' });
		const [standing] = standings([aWish()], { garments: [...garments, stored] });
		expect(standing!.storedFirst).toBe('stored rust shirt');
		expect(standing!.sentence).toContain('First bring stored rust shirt back: it is stored and could do.');
	});

	it('that is answered or dropped is no longer ranked', () => {
		expect(standings([aWish({ state: 'answered' }), aWish({ id: 'b', state: 'dropped' })])).toEqual([]);
	});

	it('has a place in the list, told with what speaks for it and without a figure to weigh; an only wish has none to tell', () => {
		const wishes = [aWish({ id: 'old', wantedSince: '2025-03-10' }), aWish({ id: 'new', wantedSince: '2026-03-09' })];
		const [first, second] = wishStandings(aSeasonInput({ wishes }), [], ({ id }) => ({
			outfits: [4],
			pictures: 0,
			likely: id === 'new' ? 1 : 0,
		}));
		expect([first!.place, second!.place]).toEqual([1, 2]);
		expect(first!.sentence).toMatch(/^Look for it first: you have wanted it for a while, and it would add outfits\. /);
		expect(second!.sentence).toMatch(/^Number 2 of 2: it may complete a picture, and it would add outfits\. /);
		const [only] = wishStandings(aSeasonInput({ wishes: wishes.slice(0, 1) }), [], () => ({
			outfits: [4],
			pictures: 0,
			likely: 0,
		}));
		expect(only!.sentence).not.toContain('first:');
	});

	it('says that the longest wanted comes first only where that is so', () => {
		const sentences = (...wishes: Parameters<typeof aWish>[0][]) =>
			standings(wishes.map((wish, index) => aWish({ id: `${index}`, ...wish }))).map(({ sentence }) => sentence);
		const longest = 'One other wish is worth about as much: the one wanted longer comes first.';
		expect(sentences({}, { wantedSince: '2025-12-01' }).every((one) => one.includes(longest))).toBe(true);
		for (const one of sentences({}, {})) expect(one).toContain('take whichever you find first');
	});

	it('is called cheap only where its limit is low beside the dearest', () => {
		const reasons = (priceLimit: number) =>
			wishStandings(
				aSeasonInput({ wishes: [200, priceLimit].map((limit) => aWish({ id: `${limit}`, priceLimit: limit })) }),
				[],
				() => ({ outfits: [0], pictures: 0, likely: 0 }),
			).find(({ wishId }) => wishId === `${priceLimit}`)!;
		expect(reasons(50).sentence).toContain('it need not cost much');
		expect(reasons(170).parts.price).toBeGreaterThan(0);
		expect(reasons(170).sentence).not.toContain('it need not cost much');
	});

	it('speaks of no waiting time to somebody who waits for nothing', () => {
		const { season } = aSeasonInput();
		const [only] = standings([aWish({ wantedSince: '2026-03-10' })], { season: { ...season, waitingDays: 0 } });
		expect(only!.sentence).toMatch(/ Look for it used first, then new from makers you trust\.$/);
	});

	it('of a gap holds words alone in its note, since figures change and the note stays', () => {
		const input = aSeasonInput({ garments });
		for (const gap of seasonReport(input).gaps)
			expect(wishFromGap(gap, input, { id: 'new', today: '2026-03-10' }).notes).not.toMatch(/\d/);
	});

	it('rises by waiting, and its priority is the sum of its parts', () => {
		const standing = (wantedSince: string) =>
			wishStandings(aSeasonInput({ wishes: [aWish({ wantedSince })] }), [], () => ({
				outfits: [4],
				pictures: 2,
				likely: 6,
			}))[0]!;
		const [young, old] = [standing('2026-03-09'), standing('2025-03-10')];
		expect(old.priority).toBeGreaterThan(young.priority);
		expect(old.parts).toMatchObject({ pictures: 35, outfits: 5, waiting: 40 });
		for (const one of [young, old])
			expect(one.priority).toBe(Object.values(one.parts).reduce((sum, points) => sum + points, 0));
		expect(old.sentence).toContain('With it you could wear 2 more pictures.');
	});
});
