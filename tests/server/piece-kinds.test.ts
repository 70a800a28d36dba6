import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutOut } from '../support/pictures.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
let inspirationId: string;
let seasonId: string;
beforeAll(async () => {
	test = await testApp();
	const season = await test.send('POST', '/api/seasons', { name: 'S', startsOn: '2026-03-01', endsOn: '2026-05-31' });
	seasonId = season.body.id;
	await test.upload({ purpose: 'inspiration', seasonId }, [{ name: 'rust.png', bytes: await cutOut([45, 38, 40]) }]);
	inspirationId = (await test.get(`/api/seasons/${seasonId}/inspirations`)).body[0].id;
});
afterAll(() => test?.close());

describe('what somebody says of a piece of a picture', () => {
	const tell = (pieceKinds: unknown) => test.send('PATCH', `/api/inspirations/${inspirationId}`, { pieceKinds });

	it('is kept, can be said anew, and is taken back by an undo', async () => {
		expect((await tell([{ piece: 0, kind: 'coat' }])).body.pieceKinds).toEqual([{ piece: 0, kind: 'coat' }]);
		expect((await tell([{ piece: 0, kind: 'blazer' }])).body.pieceKinds).toEqual([{ piece: 0, kind: 'blazer' }]);
		await test.send('POST', '/api/undo');
		const [kept] = (await test.get(`/api/seasons/${seasonId}/inspirations`)).body;
		expect(kept.pieceKinds).toEqual([{ piece: 0, kind: 'coat' }]);
	});

	it('is refused where it is no kind or no piece', async () => {
		expect((await tell([{ piece: 0, kind: 'toga' }])).status).toBe(400);
		expect((await tell([{ piece: -1, kind: 'coat' }])).status).toBe(400);
		expect((await tell('coat')).status).toBe(400);
	});
});
