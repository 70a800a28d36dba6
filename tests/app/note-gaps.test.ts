import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Judge } from '../../src/app/judging.ts';
import { noteGaps } from '../../src/app/note-gaps.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

describe('the order of gaps, noted once photos are read', () => {
	let home: TestApp;
	let garmentId: string;
	beforeAll(async () => {
		home = await testApp();
		garmentId = (await home.send('POST', '/api/garments', { name: 'Coat' })).body.id;
	});
	afterAll(() => home.close());

	async function newSeason(endsOn = '2999-02-28'): Promise<string> {
		const season = { name: 'Winter', startsOn: '2026-12-01', endsOn };
		return (await home.send('POST', '/api/seasons', season)).body.id;
	}
	/** Notes what a judge says that does something first. */
	async function note(says: readonly string[], first: () => Promise<unknown> = async () => {}): Promise<number> {
		let asked = 0;
		const judge = (async () => {
			asked++;
			await first();
			return says;
		}) as unknown as Judge;
		await noteGaps({ ...home.services, judge });
		return asked;
	}
	const chosen = async (season: string) => (await home.get(`/api/seasons/${season}/line-up`)).body;

	it('is kept for each season that is not over, and is nobody’s decision', async () => {
		const [coming, over] = [await newSeason(), await newSeason('2026-12-02')];
		await home.send('PATCH', `/api/seasons/${over}`, { archived: true });
		const decisions = (await home.get('/api/decisions')).body.length;
		expect(await note(['rust skirt', 'oat shirt'])).toBe(1);
		expect((await chosen(coming)).gapIds).toEqual(['rust skirt', 'oat shirt']);
		expect((await chosen(over)).gapIds).toBeUndefined();
		expect((await home.get('/api/decisions')).body).toHaveLength(decisions);
		await home.send('DELETE', `/api/seasons/${coming}`);
	});

	it('takes back nothing that was chosen while it was worked out', async () => {
		const season = await newSeason();
		const choose = () => home.send('PATCH', `/api/seasons/${season}/line-up`, { garmentIds: [garmentId] });
		await note(['rust skirt'], choose);
		const after = await chosen(season);
		expect(after.garmentIds).toEqual([garmentId]);
		expect(after.gapIds).not.toContain('rust skirt');
		await note(['rust skirt']);
		expect(await chosen(season)).toMatchObject({ garmentIds: [garmentId], gapIds: ['rust skirt'] });
		await home.send('DELETE', `/api/seasons/${season}`);
	});

	it('is noted of no season that was put into the bin meanwhile', async () => {
		const season = await newSeason();
		await note(['rust skirt'], () => home.send('DELETE', `/api/seasons/${season}`));
		expect(await home.services.store.lineUp(season)).toBeNull();
	});
});
