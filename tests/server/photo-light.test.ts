import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { PhotoRecord } from '../../src/store/store.ts';
import { withSheetAndCard } from '../support/pictures.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

const PAPER = { x: 60, y: 60, lightness: 95 };
const CARD = { x: 60, y: 340, lightness: 50 };
const CLOTH = { x: 260, y: 200, lightness: 95 };

let test: TestApp;
let ids: string[];
beforeAll(async () => {
	test = await testApp();
	const files = [0, 1].map(async (n) => ({ name: `${n}.png`, bytes: await withSheetAndCard(n) }));
	const { body } = await test.upload({ purpose: 'garment' }, await Promise.all(files));
	ids = body.items.map(({ photoId }: { photoId: string }) => photoId);
});
afterAll(() => test?.close());

const photo = async (id: string): Promise<PhotoRecord> => (await test.get(`/api/photos/${id}`)).body;
const correct = async (id: string, correction: object) => {
	const answer = await test.send('PUT', `/api/photos/${id}/correction`, correction);
	await test.services.jobs.settled();
	return answer;
};

describe('a neutral that is tried out', () => {
	it('is judged, shown before and after, and not kept', async () => {
		const before = await photo(ids[0]!);
		const { status, body } = await test.send('POST', `/api/photos/${ids[0]}/light-trial`, { neutrals: [PAPER, CARD] });
		expect(status).toBe(200);
		expect(body.neutrals).toMatchObject([
			{ answer: 'taken', kind: 'white' },
			{ answer: 'taken', kind: 'grey' },
		]);
		expect(body.light.source).toBe('neutral-pointed');
		expect(body.trust.error).toBeLessThan(before.reading!.trust.error);
		expect(await photo(ids[0]!)).toEqual(before);
	});

	it('is refused where it is the rust cloth: nothing is corrected by it, and nothing counts as surer', async () => {
		const before = await photo(ids[0]!);
		const { body } = await test.send('POST', `/api/photos/${ids[0]}/light-trial`, { neutrals: [CLOTH] });
		expect(body.neutrals).toMatchObject([{ answer: 'refused', sentence: expect.stringContaining('orange') }]);
		expect(body.neutrals[0].model.white).toHaveLength(3);
		expect(body.light.reason).toContain('not used');
		expect(body.trust.error).toBe(before.reading!.trust.error);
		expect(body.swatches).toEqual(before.reading!.swatches);
	});

	it.each([
		['no point', { neutrals: [] }],
		['three points', { neutrals: [PAPER, CARD, CLOTH] }],
		['a point outside', { neutrals: [{ x: -1, y: 3 }] }],
	])('is not tried with %s', async (_, body) => {
		expect((await test.send('POST', `/api/photos/${ids[0]}/light-trial`, body)).status).toBe(400);
	});
});

describe('a new light on a photo that was read', () => {
	it('by hand is put on the stored colours at once; the photo is not read again', async () => {
		const before = await photo(ids[0]!);
		const read = vi.spyOn(test.services.pool, 'read');
		const { body } = await correct(ids[0]!, { byHand: { warmer: 3, lighter: 2 } });
		expect(body).toMatchObject({ status: 'read', reading: { light: { source: 'by-hand' } } });
		expect(body.reading.swatches[0].lab[2]).toBeCloseTo(before.reading!.swatches[0]!.lab[2] + 6, 9);
		await correct(ids[0]!, {});
		expect((await photo(ids[0]!)).reading).toEqual(before.reading);
		expect(read).not.toHaveBeenCalled();
		read.mockRestore();
	});

	it('of a group follows the one photo with a neutral, and goes when that goes; only that photo is read again', async () => {
		const [one, other] = ids as [string, string];
		const read = vi.spyOn(test.services.pool, 'read');
		await correct(one, { lightGroup: 'by the bed' });
		await correct(other, { lightGroup: 'by the bed' });
		expect(read).not.toHaveBeenCalled();
		const alone = (await photo(other)).reading!;
		await correct(one, { lightGroup: 'by the bed', neutrals: [PAPER, CARD] });
		const shared = (await photo(other)).reading!;
		expect(shared.light).toMatchObject({ source: 'group', model: (await photo(one)).reading!.light.model });
		expect(shared.swatches).not.toEqual(alone.swatches);
		expect(shared.uncorrected).toEqual(alone.uncorrected);
		await correct(one, { lightGroup: 'by the bed' });
		expect((await photo(other)).reading).toEqual(alone);
		expect(read).toHaveBeenCalledTimes(2);
		read.mockRestore();
	});
});
