import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutOut } from '../support/pictures.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
let seasonId: string;
beforeAll(async () => {
	test = await testApp();
	const { body } = await test.send('POST', '/api/seasons', {
		name: 'Wet spring',
		startsOn: '2026-03-01',
		endsOn: '2026-05-31',
	});
	seasonId = body.id;
});
afterAll(() => test?.close());

describe('a season over HTTP', () => {
	it('starts with what a spring usually needs', async () => {
		const { body } = await test.get(`/api/seasons/${seasonId}`);
		expect(body).toMatchObject({ name: 'Wet spring', yearPart: 'spring' });
		expect(body.targetCount).toBe(Object.values<number>(body.quotas).reduce((sum, count) => sum + count, 0));
	});

	it('goes the whole way: inspirations, palette, garments, gap, wish, candidate, bought', async () => {
		const inspirations = await Promise.all(
			(
				[
					[45, 38, 40],
					[80, 3, 14],
					[30, 2, -14],
				] as const
			).map((lab) => cutOut(lab)),
		);
		const files = inspirations.map((bytes, index) => ({ name: `inspiration ${index}.png`, bytes }));
		const added = await test.upload({ purpose: 'inspiration', seasonId }, files);
		expect(added.status).toBe(202);
		expect(added.body.items.every((item: { ok: boolean }) => item.ok)).toBe(true);

		const derived = await test.send('POST', `/api/seasons/${seasonId}/palette/derive`, { from: 'inspirations' });
		expect(derived.body.palette.colours.length).toBeGreaterThanOrEqual(2);

		const garments = await test.upload({ purpose: 'garment' }, [
			{ name: 'oat shirt.png', bytes: await cutOut([79, 3, 13]) },
			{ name: 'notes.jpg', bytes: new TextEncoder().encode('not a photo, a note to myself about photos') },
		]);
		expect(garments.body.items.map((item: { ok: boolean }) => item.ok)).toEqual([true, false]);
		const [garment] = (await test.get('/api/garments')).body;
		expect(garment).toMatchObject({ place: 'rail' });
		expect(garment.name).toMatch(/^(beige|cream|tan) [a-z-]+$/i);
		expect(garment.swatches.length).toBeGreaterThan(0);

		const report = (await test.get(`/api/seasons/${seasonId}/report`)).body;
		expect(report.garments).toHaveLength(1);
		expect(JSON.stringify(report)).not.toContain('null,null');
		const colourGap = report.gaps.find((gap: { kind: string }) => gap.kind === 'colour');
		const wish = await test.send('POST', `/api/seasons/${seasonId}/wishes/from-gap`, { gapId: colourGap.id });
		expect(wish.status).toBe(201);
		expect(wish.body.paletteColourId).toBe(colourGap.paletteColourId);

		const candidate = await test.upload({ purpose: 'candidate', seasonId }, [
			{ name: 'found.png', bytes: await cutOut(wish.body.target) },
		]);
		const { entryId } = candidate.body.items[0];
		const kinds = {
			top: 'shirt',
			outer: 'coat',
			bottom: 'trousers',
			full: 'dress',
			legwear: 'socks',
			shoes: 'shoes',
			accessory: 'scarf',
		} as const;
		await test.send('PATCH', `/api/candidates/${entryId}`, {
			kind: kinds[wish.body.slot as keyof typeof kinds],
			price: 20,
		});
		const check = (await test.get(`/api/candidates/${entryId}/check`)).body;
		expect(check.wishId).toBe(wish.body.id);
		expect(check.sentence.length).toBeGreaterThan(5);

		const bought = await test.send('POST', `/api/candidates/${entryId}/bought`);
		expect(bought.body).toMatchObject({ nameFrom: 'looks', price: 20 });
		expect((await test.get(`/api/seasons/${seasonId}/wishes`)).body[0].state).toBe('answered');
	});

	it('counts the same photo once', async () => {
		const photo = { name: 'again.png', bytes: await cutOut([79, 3, 13]) };
		const { body } = await test.upload({ purpose: 'garment' }, [photo]);
		expect(body.items[0].keptBefore).toBe(true);
		expect(
			(await test.get('/api/garments')).body.filter((garment: { photoIds: string[] }) =>
				garment.photoIds.includes(body.items[0].photoId),
			),
		).toHaveLength(1);
	});

	it('keeps palette edits through deriving again', async () => {
		const { palette } = (await test.get(`/api/seasons/${seasonId}/palette`)).body;
		const [first] = palette.colours;
		await test.send('POST', `/api/seasons/${seasonId}/palette/edit`, { edit: 'rename', id: first.id, label: 'hearth' });
		const again = await test.send('POST', `/api/seasons/${seasonId}/palette/derive`, { from: 'inspirations' });
		expect(again.body.palette.colours.map((colour: { label: string }) => colour.label)).toContain('hearth');
	});

	it('takes a decision back and does it again', async () => {
		const [garment] = (await test.get('/api/garments')).body;
		await test.send('PATCH', `/api/garments/${garment.id}`, { place: 'stored' });
		expect((await test.send('POST', '/api/undo')).body.sentence).toContain(garment.name);
		expect((await test.get(`/api/garments/${garment.id}`)).body.place).toBe('rail');
		await test.send('POST', '/api/redo');
		expect((await test.get(`/api/garments/${garment.id}`)).body.place).toBe('stored');
	});

	it('takes the user’s word for a kind, and says where a kind came from', async () => {
		const [garment] = (await test.get('/api/garments')).body;
		expect((await test.send('PATCH', `/api/garments/${garment.id}`, { kind: 'coat' })).body).toMatchObject({
			kind: 'coat',
			kindFrom: 'user',
		});
	});

	it('writes the palette in open formats', async () => {
		for (const ending of ['css', 'tokens.json', 'svg', 'png'])
			expect((await test.get(`/api/seasons/${seasonId}/palette.${ending}`)).status).toBe(200);
		const { body } = await test.get(`/api/seasons/${seasonId}/palette.tokens.json`);
		const [token] = Object.values<{ $type: string; $value: object }>(body.palette);
		// Design Tokens Format Module, Color Module (W3C community group, 2025.10): colorSpace, components, hex.
		expect(token?.$type).toBe('color');
		expect(token?.$value).toMatchObject({ colorSpace: 'srgb', hex: expect.stringMatching(/^#[0-9a-f]{6}$/) });
	});

	it('previews an import of garments without storing anything', async () => {
		const csv = 'name,kind,price\nLinen shirt,shirt,25\nMystery,spacesuit,1\n';
		const request = (url: string) =>
			test.app.inject({
				method: 'POST',
				url,
				headers: { host: 'localhost', 'content-type': 'text/csv' },
				payload: csv,
			});
		const before = (await test.get('/api/garments')).body.length;
		const preview = (await request('/api/garments/import?preview=true')).json();
		expect(preview).toMatchObject({ added: 1, addedNames: ['Linen shirt'], encoding: 'UTF-8', separator: 'comma' });
		expect(preview.problems[0]).toMatchObject({ line: 3 });
		expect((await test.get('/api/garments')).body).toHaveLength(before);
		expect((await request('/api/garments/import')).json().added).toBe(1);
		expect((await test.get('/api/garments')).body).toHaveLength(before + 1);
	});

	it('makes the pocket page one file under 2 MB that fetches nothing', async () => {
		const { status, body } = await test.get(`/api/seasons/${seasonId}/pocket`);
		expect(status).toBe(200);
		expect(body.length).toBeLessThan(2 * 1024 * 1024);
		expect(body).not.toMatch(/<(script|link|img)[^>]+(src|href)="(?!data:)/);
	});
});

describe('wrong requests', () => {
	it.each([
		['POST', '/api/seasons', { name: 'x', startsOn: '2026-05-01', endsOn: '2026-03-01' }, 400],
		['POST', '/api/seasons', { name: 'x', startsOn: 'soon', endsOn: 'later' }, 400],
		['POST', '/api/seasons', { name: 'x', startsOn: '2026-03-01', endsOn: '2026-05-01', colour: 'red' }, 400],
		['PATCH', '/api/garments/nobody', { name: 'x' }, 404],
		['PATCH', '/api/garments/nobody', { place: 'attic' }, 400],
		['POST', '/api/wears', { wears: [{ garmentId: 'nobody', on: '2026-01-01' }] }, 404],
		['PUT', '/api/pair-words', { a: 'x', b: 'x', word: 'approved' }, 400],
		['POST', '/api/nothing', {}, 404],
	] as const)('%s %s %j answers %i with a sentence', async (method, url, body, status) => {
		const answer = await test.send(method, url, body);
		expect(answer.status).toBe(status);
		expect(answer.body.error.message).toMatch(/^Expected .+/);
	});

	it('puts many garments into the bin as one decision, all or none', async () => {
		const made = [];
		for (const name of ['One', 'Two', 'Three'])
			made.push((await test.send('POST', '/api/garments', { name })).body.id as string);
		const before = (await test.get('/api/garments')).body.length;
		const refused = await test.send('DELETE', '/api/garments', { ids: [...made, 'nobody'] });
		expect(refused.status).toBe(404);
		expect((await test.get('/api/garments')).body).toHaveLength(before);
		expect((await test.send('DELETE', '/api/garments', { ids: made })).body).toEqual({ removed: 3 });
		expect((await test.get('/api/garments')).body).toHaveLength(before - 3);
		await test.send('POST', '/api/undo');
		expect((await test.get('/api/garments')).body).toHaveLength(before);
	});
});
