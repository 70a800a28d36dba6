import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ServerEvent } from '../../src/app/events.ts';
import { RUST } from '../support/build-wardrobe.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test.close());

const garment = async (name: string) => (await test.send('POST', '/api/garments', { name })).body;

/** The same request with a key, as the page sends it. */
async function keyed(key: string, url: string, payload: object) {
	const headers = { host: 'localhost:4810', 'idempotency-key': key };
	const { statusCode, payload: text } = await test.app.inject({ method: 'POST', url, headers, payload });
	return { status: statusCode, body: JSON.parse(text) };
}

describe('two windows that change one entry', () => {
	it('never overwrite what they have not seen: the later one is told what changed, and by its newest version may go on', async () => {
		const seen = await garment('Oilskin');
		const path = `/api/garments/${seen.id}`;
		const first = await test.send('PATCH', path, { notes: 'from my sister', version: seen.version });
		expect(first.body.version).toBeGreaterThan(seen.version);
		const late = await test.send('PATCH', path, { notes: 'torn', version: seen.version });
		expect(late.status).toBe(409);
		expect(late.body.error).toMatchObject({
			code: 'stale',
			message: expect.stringMatching(/^Expected the newest state .*garment "Oilskin": notes/),
			changed: [{ kind: 'garment', id: seen.id, now: { notes: 'from my sister', version: first.body.version } }],
		});
		expect(late.body.error.changed[0].fields).toContain('notes');
		const again = await test.send('PATCH', path, { price: 9, version: late.body.error.changed[0].now.version });
		expect(again.body).toMatchObject({ price: 9, notes: 'from my sister' });
	});

	it('change or delete several at once only where none was changed meanwhile', async () => {
		const [one, other] = [await garment('One'), await garment('Other')];
		await test.send('PATCH', `/api/garments/${other.id}`, { place: 'stored' });
		const ids = [one.id, other.id];
		const versions = { [one.id]: one.version, [other.id]: other.version };
		const changed = await test.send('PATCH', '/api/garments', { ids, versions, changes: { place: 'leaving' } });
		expect(changed.status).toBe(409);
		expect((await test.send('DELETE', '/api/garments', { ids, versions })).status).toBe(409);
		expect((await test.get(`/api/garments/${one.id}`)).body.place).toBe('rail');
	});

	it('hear at once which entries the other changed', async () => {
		const heard: ServerEvent[] = [];
		const stop = test.services.events.listen((event) => void heard.push(event));
		const { id } = await garment('Heard of');
		stop();
		expect(heard).toEqual([{ event: 'changed', data: { entries: [{ kind: 'garment', id }] } }]);
	});
});

describe('a request sent twice', () => {
	it('makes one entry, answered alike; its key is for no other request', async () => {
		const url = '/api/garments';
		const answers = await Promise.all([1, 2, 3, 4].map(() => keyed('four-posts-of-one', url, { name: 'Only one' })));
		expect(new Set(answers.map(({ body }) => body.id)).size).toBe(1);
		const all = (await test.get('/api/garments')).body as { name: string }[];
		expect(all.filter(({ name }) => name === 'Only one')).toHaveLength(1);
		const other = await keyed('four-posts-of-one', url, { name: 'Another' });
		expect(other).toMatchObject({ status: 422, body: { error: { code: 'key-reused' } } });
		// Lengths of this project's own choice.
		for (const [letters, status] of [
			[7, 400],
			[8, 201],
			[200, 201],
			[201, 400],
		] as const)
			expect((await keyed('k'.repeat(letters), url, { name: 'Another' })).status, String(letters)).toBe(status);
	});
});

describe('a palette that another window changed', () => {
	it('is not changed by who has not seen that, and is by who has', async () => {
		const dates = { name: 'Spring', startsOn: '2026-03-01', endsOn: '2026-05-31' };
		const { id } = (await test.send('POST', '/api/seasons', dates)).body;
		const edit = `/api/seasons/${id}/palette/edit`;
		const first = await test.send('POST', `${edit}?version=0`, { edit: 'add', hex: '#884422' });
		expect(first.status).toBe(200);
		const late = await test.send('POST', `${edit}?version=0`, { edit: 'add', hex: '#224488' });
		expect(late).toMatchObject({ status: 409, body: { error: { code: 'stale', changed: [{ kind: 'palette' }] } } });
		const derive = `/api/seasons/${id}/palette/derive`;
		expect((await test.send('POST', `${derive}?version=0`, { from: 'garments' })).status).toBe(409);
		const { version } = first.body.palette;
		const again = await test.send('POST', `${edit}?version=${version}`, { edit: 'add', hex: '#224488' });
		expect(again.body.palette.colours).toHaveLength(2);
	});
});

describe('ids that name nothing', () => {
	it('are refused as colours of wishes, and where a set is built, swapped or tried out', async () => {
		const dates = { name: 'Autumn', startsOn: '2026-09-01', endsOn: '2026-11-30' };
		const { id: seasonId } = (await test.send('POST', '/api/seasons', dates)).body;
		const wish = {
			seasonId,
			name: 'A rust top',
			slot: 'top',
			kind: null,
			target: RUST,
			tolerance: 20,
			yearParts: [],
			priceLimit: null,
			expectedWearsPerYear: null,
			wantedSince: '2026-01-01',
			state: 'open',
			paletteColourId: null,
			notes: '',
		};
		const unknown = { ...wish, paletteColourId: 'nothing' };
		expect((await test.send('POST', '/api/wishes', unknown)).status).toBe(404);
		expect((await test.send('POST', '/api/wishes', { ...wish, seenIn: 'nothing' })).status).toBe(404);
		const { id: wishId } = (await test.send('POST', '/api/wishes', wish)).body;
		expect((await test.send('PATCH', `/api/wishes/${wishId}`, { paletteColourId: 'nothing' })).status).toBe(404);
		const { id } = await garment('Known');
		const lineUp = `/api/seasons/${seasonId}/line-up`;
		const asked: readonly (readonly [string, object])[] = [
			['build', { mustKeep: ['nothing'], neverUse: [] }],
			['build', { mustKeep: [], neverUse: [], prove: true, garmentIds: [id, 'nothing'] }],
			['swaps', { garmentIds: [id], garmentId: 'nothing' }],
			['what-if', { garmentIds: [id], remove: [], add: ['nothing'] }],
		];
		for (const [what, body] of asked) {
			const { status, body: answer } = await test.send('POST', `${lineUp}/${what}`, body);
			expect([what, status, answer.error.message]).toEqual([what, 404, expect.stringMatching(/garment.*"nothing"/)]);
		}
	});

	it('are taken where they were chosen before the garment went to the bin', async () => {
		const { id } = await garment('Chosen, then binned');
		const dates = { name: 'Winter', startsOn: '2026-12-01', endsOn: '2027-02-28' };
		const { id: seasonId } = (await test.send('POST', '/api/seasons', dates)).body;
		await test.send('PATCH', `/api/seasons/${seasonId}/line-up`, { garmentIds: [id] });
		await test.send('DELETE', `/api/garments/${id}`);
		const tried = await test.send('POST', `/api/seasons/${seasonId}/line-up/what-if`, {
			garmentIds: [id],
			remove: [],
			add: [],
		});
		expect(tried.status).toBe(200);
	});
});
