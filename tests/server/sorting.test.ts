import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test.close());

const aSeason = async (name: string) =>
	(await test.send('POST', '/api/seasons', { name, startsOn: '2026-09-01', endsOn: '2026-11-30' })).body;
const aPiece = async (name: string): Promise<Garment> => (await test.send('POST', '/api/garments', { name })).body;
const seen = async (id: string): Promise<Garment> => (await test.get(`/api/garments/${id}`)).body;
const sortStation = async (seasonId: string) => {
	const { body } = await test.get(`/api/seasons/${seasonId}/report`);
	return body.stations.find(({ station }: { station: string }) => station === 'sort');
};

describe('the state of a garment', () => {
	it('is told with its day, and an undo takes both back', async () => {
		const jeans = await aPiece('Jeans');
		expect(jeans).toMatchObject({ condition: 'good' });
		expect(jeans.conditionSince).toBeUndefined();
		const { body } = await test.send('PATCH', `/api/garments/${jeans.id}`, { condition: 'worn-out' });
		const today = new Date().toISOString().slice(0, 10);
		expect(body).toMatchObject({ condition: 'worn-out', conditionSince: today });
		// The same state said again keeps its day; nobody but the program sets it.
		const again = await test.send('PATCH', `/api/garments/${jeans.id}`, { condition: 'worn-out', notes: 'knee' });
		expect(again.body).toMatchObject({ conditionSince: today });
		expect((await test.send('PATCH', `/api/garments/${jeans.id}`, { conditionSince: '2020-01-01' })).status).toBe(400);
		await test.send('POST', '/api/undo');
		await test.send('POST', '/api/undo');
		expect((await seen(jeans.id)).conditionSince).toBeUndefined();
		await test.send('DELETE', `/api/garments/${jeans.id}`);
	});
});

describe('a round of sorting', () => {
	it('lives in the home: many garments are decided at once, one undo takes all of it back', async () => {
		const season = await aSeason('Heather');
		const [coat, boots] = [await aPiece('Oilskin coat'), await aPiece('Boots')];
		expect(await sortStation(season.id)).toMatchObject({ state: 'open', sentence: '0 of 2 decided' });
		const garments = [
			{ id: coat.id, place: 'stored', wayOut: null, decided: true },
			{ id: boots.id, place: 'leaving', wayOut: 'swap', decided: true },
		];
		const { status, body } = await test.send('POST', `/api/seasons/${season.id}/sorted`, { garments });
		expect(status).toBe(200);
		expect(body.versions[coat.id]).toBe((await seen(coat.id)).version);
		expect(await seen(boots.id)).toMatchObject({ place: 'leaving', wayOut: 'swap', sortedFor: [season.id] });
		expect(await sortStation(season.id)).toMatchObject({ state: 'done', sentence: '2 of 2 decided' });

		await test.send('POST', '/api/undo');
		expect((await seen(coat.id)).place).toBe('rail');
		expect(await sortStation(season.id)).toMatchObject({ state: 'open' });
		await test.send('POST', '/api/redo');

		const other = await aSeason('Frost');
		expect(await sortStation(other.id)).toMatchObject({ state: 'open', sentence: '0 of 2 decided' });
	});

	it('is begun anew without moving anything, and a single decision is taken back', async () => {
		const season = await aSeason('Bracken');
		const scarf = await aPiece('Scarf');
		const decide = (decided: boolean, place: string) =>
			test.send('POST', `/api/seasons/${season.id}/sorted`, {
				garments: [{ id: scarf.id, place, wayOut: null, decided }],
			});
		await decide(true, 'stored');
		await decide(false, 'rail');
		expect(await seen(scarf.id)).toMatchObject({ place: 'rail', sortedFor: [] });
		await decide(true, 'stored');
		const again = await test.send('DELETE', `/api/seasons/${season.id}/sorted`);
		expect(again.body).toEqual({ changed: 1 });
		expect(await seen(scarf.id)).toMatchObject({ place: 'stored', sortedFor: [] });
	});

	it('overwrites nothing that another window changed meanwhile', async () => {
		const season = await aSeason('Rowan');
		const hat = await aPiece('Hat');
		await test.send('PATCH', `/api/garments/${hat.id}`, { place: 'gone', version: hat.version });
		const late = await test.send('POST', `/api/seasons/${season.id}/sorted`, {
			garments: [{ id: hat.id, place: 'stored', wayOut: null, decided: true }],
			versions: { [hat.id]: hat.version },
		});
		expect(late.status).toBe(409);
		expect(late.body.error.code).toBe('stale');
		expect((await seen(hat.id)).place).toBe('gone');
	});
});
