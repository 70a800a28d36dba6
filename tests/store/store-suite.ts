import { afterAll, describe, expect, it } from 'vitest';
import { KeyReusedError } from '../../src/store/deciding.ts';
import { photoIdOf } from '../../src/store/photo-files.ts';
import { type Store, UNASKED } from '../../src/store/store.ts';
import { defaultSeason } from '../../src/wardrobe/days/season-defaults.ts';
import { EMPTY_PALETTE } from '../../src/wardrobe/words/palette-colour.ts';
import type { Reading } from '../../src/wardrobe/words/reading.ts';
import { addedPhoto, corrected, decided, putGarments, redone, undone } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';

export const SUITE_TIME = '2026-03-01T08:00:00.000Z';
const bytes = new TextEncoder().encode('a photo, as far as the store is concerned');
const mask = new TextEncoder().encode('an outline drawn by hand');
const about = { originalName: 'coat.jpg', mediaType: 'image/jpeg', addedAt: SUITE_TIME };

/** A home that a test opens, closes and opens again, at a moment of its choice. */
export type SuiteHome = {
	/** Opens the same home each time. */
	open(now?: () => Date): Promise<{ readonly store: Store; close(): Promise<void> }>;
};

/** What every store must do, whatever database and place for files is below. `newHome` gives an empty home. */
export function describeStore(name: string, newHome: () => Promise<SuiteHome>): void {
	const opened: { close(): Promise<void> }[] = [];
	afterAll(async () => {
		for (const one of opened.splice(0)) await one.close();
	});
	async function fresh(): Promise<Store> {
		const home = await (await newHome()).open();
		opened.push(home);
		return home.store;
	}
	const ids = (entries: readonly { id: string }[]) => entries.map(({ id }) => id);

	describe(`${name}: what was put in`, () => {
		it('comes back after closing and opening again, in any script', async () => {
			const home = await newHome();
			const first = await home.open();
			const coat = garmentDetails({
				id: 'g1',
				name: 'Mantel 🧥 מעיל \u0000 \ud800',
				notes: "'; DROP TABLE entries; --",
			});
			await putGarments(first.store, coat, 'Added a coat');
			await first.close();
			const again = await home.open();
			expect(await again.store.garments.get('g1')).toMatchObject(coat);
			await again.close();
		});

		it('is listed in one order on every database, by code point', async () => {
			const store = await fresh();
			for (const id of ['b', 'a', 'B', 'Ä', 'a-1', 'a1'])
				await decided(store, { makers: { put: [{ id, name: id } as never] } }, `Added ${id}`);
			expect(ids(await store.makers.list())).toEqual(['B', 'a', 'a-1', 'a1', 'b', 'Ä']);
		});

		it('keeps entries of different kinds apart', async () => {
			const store = await fresh();
			await putGarments(store, garmentDetails({ id: 'same' }), 'Added a garment');
			expect(await store.wishes.get('same')).toBeNull();
			expect(await store.wishes.list()).toEqual([]);
		});

		it('holds palettes, line-ups and words on pairs by what they belong to', async () => {
			const store = await fresh();
			expect(await store.palette('s1')).toBeNull();
			await decided(
				store,
				{ palettes: [{ seasonId: 's1', palette: { colours: [], method: 'inspirations' } as never }] },
				'Derived the palette',
			);
			expect(await store.palette('s1')).toMatchObject({ colours: [], method: 'inspirations' });
			await decided(store, { lineUps: [{ seasonId: 's1', garmentIds: ['g1'] } as never] }, 'Chose the line-up');
			expect(await store.lineUp('s1')).toMatchObject({ seasonId: 's1', garmentIds: ['g1'] });
			await decided(store, { pairWords: [{ a: 'g2', b: 'g1', word: 'approved' }] }, 'They go together');
			await decided(store, { pairWords: [{ a: 'g1', b: 'g2', word: 'refused' }] }, 'They do not');
			expect((await store.pairWords()).map(({ word }) => word)).toEqual(['refused']);
			await decided(store, { pairWords: [{ a: 'g1', b: 'g2', word: null }] }, 'Nothing said');
			expect(await store.pairWords()).toEqual([]);
		});

		it('gives the wears of a range of days, both ends included', async () => {
			const store = await fresh();
			const wear = (on: string) => ({ garmentId: 'g1', on });
			await decided(
				store,
				{ wears: { put: ['2026-01-31', '2026-02-01', '2026-02-28', '2026-03-01'].map(wear) } },
				'Noted four wears',
			);
			expect((await store.wears({ from: '2026-02-01', to: '2026-02-28' })).map(({ on }) => on)).toEqual([
				'2026-02-01',
				'2026-02-28',
			]);
			expect(await store.wears({ from: '2026-03-01' })).toEqual([wear('2026-03-01')]);
			await decided(store, { wears: { remove: [wear('2026-03-01')] } }, 'Not worn after all');
			expect(await store.wears()).toHaveLength(3);
		});
	});

	describe(`${name}: decisions`, () => {
		it('can be taken back and done again, in order', async () => {
			const store = await fresh();
			await putGarments(store, garmentDetails({ id: 'g1', place: 'rail' }), 'Added');
			await putGarments(store, garmentDetails({ id: 'g1', place: 'stored' }), 'Stored the shirt');
			expect(await undone(store)).toMatchObject({ sentence: 'Stored the shirt', undone: true, at: SUITE_TIME });
			expect((await store.garments.get('g1'))?.place).toBe('rail');
			await undone(store);
			expect(await store.garments.get('g1')).toBeNull();
			expect(await undone(store)).toBeNull();
			await redone(store);
			await redone(store);
			expect((await store.garments.get('g1'))?.place).toBe('stored');
			expect(await redone(store)).toBeNull();
		});

		it('of several entries at once are taken back at once', async () => {
			const store = await fresh();
			await decided(
				store,
				{
					wears: {
						put: [
							{ garmentId: 'g1', on: '2026-02-01' },
							{ garmentId: 'g2', on: '2026-02-01' },
						],
					},
				},
				'Noted two wears',
			);
			await undone(store);
			expect(await store.wears()).toEqual([]);
		});

		it('that put some and take others away are one decision', async () => {
			const store = await fresh();
			const [g1, g2, joined] = ['g1', 'g2', 'g3'].map((id) => garmentDetails({ id }));
			await putGarments(store, [g1!, g2!], 'Imported two garments');
			await decided(store, { garments: { put: [joined!], remove: ['g1', 'g2', 'nobody'] } }, 'Joined two garments');
			expect(ids(await store.garments.list())).toEqual(['g3']);
			expect(ids(await store.bin()).sort()).toEqual(['g1', 'g2']);
			await undone(store);
			expect(ids(await store.garments.list())).toEqual(['g1', 'g2']);
			await undone(store);
			expect(await store.garments.list()).toEqual([]);
		});

		it('of more entries than one statement takes are one, taken back and done again at once', async () => {
			const store = await fresh();
			const many = Array.from({ length: 1_201 }, (_, at) => garmentDetails({ id: `g${at}`, photoIds: [`p${at}`] }));
			await putGarments(store, many, 'Took in a table');
			// One entry twice: the later word counts, and both are taken back.
			const [g0] = many;
			await putGarments(store, [{ ...g0!, notes: 'one' }, ...many.slice(1), { ...g0!, notes: 'two' }], 'Said twice');
			expect(await store.garments.get('g0')).toMatchObject({ notes: 'two' });
			expect(await store.showing('garment', 'p1200')).toEqual(['g1200']);
			await undone(store);
			expect(await store.garments.get('g0')).toMatchObject({ notes: g0!.notes });
			await undone(store);
			expect(await store.garments.count()).toBe(0);
			expect(await store.showing('garment', 'p1200')).toEqual([]);
			expect(await store.sizeOfNext('undo')).toBe(0);
			expect(await store.sizeOfNext('redo')).toBeGreaterThan(1_201);
			await redone(store);
			expect(await store.garments.get('g1200')).toMatchObject(many[1_200]!);
			await undone(store);
			await redone(store);
			expect(await store.garments.count()).toBe(1_201);
		});

		it('about entries of several kinds are taken back at once', async () => {
			const store = await fresh();
			const worn = { garmentId: 'g1', on: '2026-02-01' };
			await putGarments(store, garmentDetails({ id: 'g2' }), 'Added');
			await decided(
				store,
				{
					garments: { put: [garmentDetails({ id: 'g1' })], remove: ['g2'] },
					wears: { put: [worn] },
					palettes: [{ seasonId: 's1', palette: EMPTY_PALETTE }],
				},
				'Decided all at once',
			);
			expect(ids(await store.garments.list())).toEqual(['g1']);
			expect(await store.wears()).toEqual([worn]);
			expect(await store.palette('s1')).toMatchObject(EMPTY_PALETTE);
			expect((await undone(store))?.sentence).toBe('Decided all at once');
			expect(ids(await store.garments.list())).toEqual(['g2']);
			expect(await store.wears()).toEqual([]);
			expect(await store.palette('s1')).toBeNull();
		});

		it('are passed over by what the program notes of an entry: taking back and doing again leave the note', async () => {
			const store = await fresh();
			const coat = garmentDetails({ id: 'g1', name: 'IMG_1', kindFrom: 'none' });
			const named = async () => (await store.garments.get('g1')) ?? 'gone';
			await putGarments(store, coat, 'Added');
			await putGarments(store, { ...coat, price: 5 }, 'Priced');
			const noted = await store.note(async (home) => ({
				garments: { put: [{ ...(await home.garments.get('g1'))!, name: 'Dark olive', kindFrom: 'photo' }] },
			}));
			expect(noted).toEqual([{ kind: 'garment', id: 'g1' }]);
			expect((await store.decisions(10)).map(({ sentence }) => sentence)).toEqual(['Priced', 'Added']);
			await undone(store);
			expect(await named()).toMatchObject({ name: 'Dark olive', kindFrom: 'photo', price: null });
			await redone(store);
			expect(await named()).toMatchObject({ name: 'Dark olive', kindFrom: 'photo', price: 5 });
			await undone(store);
			await undone(store);
			expect(await named()).toBe('gone');
			await redone(store);
			expect(await named()).toMatchObject({ name: 'Dark olive', kindFrom: 'photo', price: null });
			await decided(store, { garments: { remove: ['g1'] } }, 'Deleted');
			await undone(store);
			expect(await named()).toMatchObject({ name: 'Dark olive' });
		});

		it('read and write in one go: of many made at once from what was read, none is lost', async () => {
			const store = await fresh();
			await putGarments(store, garmentDetails({ id: 'g1', notes: '' }));
			const addALetter = () =>
				store.decide(UNASKED, async (home) => {
					const garment = (await home.garments.get('g1'))!;
					return {
						does: { garments: { put: [{ ...garment, notes: `${garment.notes}x` }] } },
						sentence: 'Noted',
						answer: async (after) => (await after.garments.get('g1'))!.notes.length,
					};
				});
			const answers = await Promise.all(Array.from({ length: 20 }, addALetter));
			expect(answers.map(({ answer }) => answer).sort((a, b) => a - b)).toEqual(
				Array.from({ length: 20 }, (_, index) => index + 1),
			);
			expect((await store.garments.get('g1'))?.notes).toHaveLength(20);
		});

		it('that fail change nothing, and can be asked for again with the same key', async () => {
			const store = await fresh();
			const asked = { key: 'a-key-of-the-page', request: 'POST /api/garments' };
			const plan = (fails: boolean) => async () => ({
				does: { garments: { put: [garmentDetails({ id: 'g1' })] } },
				sentence: 'Added',
				answer: async () => {
					if (fails) throw new Error('it broke');
					return 'done';
				},
			});
			await expect(store.decide(asked, plan(true))).rejects.toThrow('it broke');
			expect(await store.garments.list()).toEqual([]);
			expect(await store.decisions(10)).toEqual([]);
			expect((await store.decide(asked, plan(false))).answer).toBe('done');
		});

		it('with a key are made once, however often and however close together they are asked for', async () => {
			const home = await newHome();
			let at = SUITE_TIME;
			const { store, close } = await home.open(() => new Date(at));
			const asked = { key: 'a-key-of-the-page', request: 'POST /api/garments' };
			let made = 0;
			const add = () =>
				store.decide(asked, async () => {
					const id = `g${++made}`;
					const does = { garments: { put: [garmentDetails({ id })] } };
					return { does, sentence: `Added ${id}`, answer: async () => ({ id }) };
				});
			const outcomes = [...(await Promise.all([add(), add(), add(), add()])), await add()];
			expect(outcomes.map(({ answer }) => answer)).toEqual(Array(5).fill({ id: 'g1' }));
			expect(outcomes.map(({ repeated }) => repeated).sort()).toEqual([false, true, true, true, true]);
			expect(ids(await store.garments.list())).toEqual(['g1']);
			const other = { ...asked, request: 'POST /api/makers' };
			await expect(store.undo(other)).rejects.toThrow(KeyReusedError);
			const takeBack = { key: 'another-key', request: 'POST /api/undo' };
			expect((await store.undo(takeBack)).answer?.sentence).toBe('Added g1');
			expect((await store.undo(takeBack)).answer?.sentence).toBe('Added g1');
			// Answers are kept for a day.
			at = new Date(Date.parse(SUITE_TIME) + 24 * 3600 * 1000 + 1).toISOString();
			expect((await add()).answer).toEqual({ id: 'g2' });
			await close();
		});

		it('raise the version of what they change, and tell which fields changed since a version', async () => {
			const store = await fresh();
			await putGarments(store, [garmentDetails({ id: 'g1' }), garmentDetails({ id: 'g2' })]);
			const seen = (await store.garments.get('g1'))!;
			expect(await store.changesSince('garment', 'g1', seen.version)).toEqual([]);
			await putGarments(store, { ...seen, notes: 'torn' });
			await putGarments(store, { ...seen, notes: 'torn', place: 'stored' });
			const now = (await store.garments.get('g1'))!;
			expect(now.version).toBeGreaterThan(seen.version);
			expect((await store.changesSince('garment', 'g1', seen.version)).sort()).toEqual(['notes', 'place']);
			expect((await store.garments.get('g2'))?.version).toBe(seen.version);
			await undone(store);
			const back = (await store.garments.get('g1'))!;
			expect(back.version).toBeGreaterThan(now.version);
			expect(await store.changesSince('garment', 'g1', now.version)).toEqual(['place']);
		});

		it('about corrections of photos are taken back and done again with their outlines', async () => {
			const store = await fresh();
			const { id } = await addedPhoto(store, bytes, about);
			await corrected(store, id, { byHand: { warmer: 2, lighter: 0 } }, null);
			await corrected(store, id, { mask: true }, mask);
			await undone(store);
			expect(await store.photos.get(id)).toMatchObject({
				correction: { byHand: { warmer: 2, lighter: 0 } },
				status: 'waiting',
				version: 4,
			});
			expect(await store.photos.derived(id, 'mask')).toBeNull();
			await redone(store);
			expect(Buffer.from((await store.photos.derived(id, 'mask'))!)).toEqual(Buffer.from(mask));
			await undone(store);
			await undone(store);
			expect((await store.photos.get(id))?.correction).toEqual({});
		});

		it('made anew end what could have been done again', async () => {
			const store = await fresh();
			await putGarments(store, garmentDetails({ id: 'g1' }), 'Added one');
			await undone(store);
			await putGarments(store, garmentDetails({ id: 'g2' }), 'Added another');
			expect(await redone(store)).toBeNull();
			expect(ids(await store.garments.list())).toEqual(['g2']);
		});

		it('that change nothing are not noted', async () => {
			const store = await fresh();
			await putGarments(store, garmentDetails({ id: 'g1' }), 'Added');
			await putGarments(store, garmentDetails({ id: 'g1' }), 'Changed nothing');
			expect((await store.decisions(10)).map(({ sentence }) => sentence)).toEqual(['Added']);
		});

		it('made at the same moment all count, and each can be taken back', async () => {
			const store = await fresh();
			const names = Array.from({ length: 20 }, (_, index) => `g${String(index).padStart(2, '0')}`);
			await Promise.all(names.map((id) => putGarments(store, garmentDetails({ id }), `Added ${id}`)));
			expect(ids(await store.garments.list())).toEqual(names);
			expect(await store.decisions(100)).toHaveLength(20);
			for (const _ of names) await undone(store);
			expect(await store.garments.list()).toEqual([]);
		});
	});

	describe(`${name}: the bin`, () => {
		it('keeps a deleted garment and gives it back whole', async () => {
			const store = await fresh();
			const coat = garmentDetails({ id: 'g1', name: 'Coat' });
			await putGarments(store, coat, 'Added');
			expect(await decided(store, { garments: { remove: ['g1'] } }, 'Deleted')).toHaveLength(1);
			expect(await store.garments.list()).toEqual([]);
			expect(await decided(store, { garments: { remove: ['g1'] } }, 'Deleted twice')).toEqual([]);
			expect(await store.bin()).toEqual([{ id: 'g1', what: 'garment', name: 'Coat', deletedAt: SUITE_TIME }]);
			expect((await store.restoreFromBin('g1')).answer).toBe(true);
			expect(await store.garments.get('g1')).toMatchObject(coat);
			expect(await store.bin()).toEqual([]);
			expect((await store.restoreFromBin('g1')).answer).toBe(false);
		});

		it('gives back, with a season, the garments that went with it, and no others', async () => {
			const home = await newHome();
			let at = SUITE_TIME;
			const { store, close } = await home.open(() => new Date(at));
			const season = { id: 's1', name: 's', startsOn: '2026-03-01', endsOn: '2026-05-31', addedAt: SUITE_TIME };
			await decided(store, { seasons: { put: [defaultSeason(season)] } }, 'Added');
			for (const id of ['g1', 'g2', 'g3']) await putGarments(store, garmentDetails({ id }), 'Added');
			await decided(store, { garments: { remove: ['g3'] } }, 'Deleted');
			at = new Date(Date.parse(SUITE_TIME) + 1000).toISOString();
			await decided(store, { seasons: { remove: ['s1'] }, garments: { remove: ['g1', 'g2'] } }, 'Deleted with it');
			expect((await store.restoreFromBin('s1')).answer).toBe(true);
			expect(ids(await store.garments.list())).toEqual(['g1', 'g2']);
			expect(ids(await store.bin())).toEqual(['g3']);
			await undone(store);
			expect(ids(await store.bin()).sort()).toEqual(['g1', 'g2', 'g3', 's1']);
			await close();
		});

		it('is left by an entry whose deletion is taken back', async () => {
			const store = await fresh();
			await putGarments(store, garmentDetails({ id: 'g1' }), 'Added');
			await decided(store, { garments: { remove: ['g1'] } }, 'Deleted');
			await undone(store);
			expect(await store.bin()).toEqual([]);
			expect(ids(await store.garments.list())).toEqual(['g1']);
		});

		it('is emptied of what has lain in it for more than 90 days', async () => {
			const home = await newHome();
			const first = await home.open();
			await putGarments(first.store, garmentDetails({ id: 'g1' }), 'Added');
			await decided(first.store, { garments: { remove: ['g1'] } }, 'Deleted');
			await first.close();
			const binAfter = async (days: number) => {
				const later = await home.open(() => new Date(Date.parse(SUITE_TIME) + days * 24 * 3600 * 1000));
				const bin = await later.store.bin();
				await later.close();
				return bin;
			};
			expect(await binAfter(89)).toHaveLength(1);
			expect(await binAfter(91)).toEqual([]);
		});
	});

	describe(`${name}: photos`, () => {
		it('are stored once, by what is in them', async () => {
			const store = await fresh();
			const first = await addedPhoto(store, bytes, about);
			const second = await addedPhoto(store, bytes, { ...about, originalName: 'other.jpg', addedAt: '2026-04-01' });
			expect(second).toEqual(first);
			// SHA-256 (FIPS 180-4) of the same text by Python's hashlib.
			expect(first.id).toBe('ede06020a1e1669b535100d3581b2f3f6b0accac661d4815e1c7e1b27178e060');
			expect(Buffer.from(await store.photos.original(first.id))).toEqual(Buffer.from(bytes));
			expect(await store.photos.list()).toEqual([first]);
		});

		it('sent twice at the same moment are one photo', async () => {
			const store = await fresh();
			const added = await Promise.all([1, 2, 3, 4].map(() => addedPhoto(store, bytes, about)));
			expect(new Set(ids(added)).size).toBe(1);
			expect(await store.photos.list()).toHaveLength(1);
		});

		it('keep their reading and small pictures, and the reading survives a later failure', async () => {
			const store = await fresh();
			const { id } = await addedPhoto(store, bytes, about);
			const reading = { scene: false, swatches: [] } as unknown as Reading;
			await store.photos.saveReading(id, reading, { thumb: mask });
			expect(await store.photos.get(id)).toMatchObject({ status: 'read', reading, failure: null });
			expect(Buffer.from((await store.photos.derived(id, 'thumb'))!)).toEqual(Buffer.from(mask));
			expect(await store.photos.derived(id, 'display')).toBeNull();
			await store.photos.saveFailure(id, { reason: 'too-slow', message: 'It took too long.' });
			expect(await store.photos.get(id)).toMatchObject({ status: 'failed', reading, failure: { reason: 'too-slow' } });
		});

		it('raise their version with each correction, keep the newest outline, and wait to be read again', async () => {
			const store = await fresh();
			const { id } = await addedPhoto(store, bytes, about);
			const photo = await corrected(store, id, { mask: true }, mask);
			expect(photo).toMatchObject({ version: 2, status: 'waiting', correction: { mask: true } });
			expect(Buffer.from((await store.photos.derived(id, 'mask'))!)).toEqual(Buffer.from(mask));
			await corrected(store, id, { mask: true }, bytes);
			expect(Buffer.from((await store.photos.derived(id, 'mask'))!)).toEqual(Buffer.from(bytes));
			await corrected(store, id, {}, null);
			expect(await store.photos.derived(id, 'mask')).toBeNull();
		});

		it('corrected from two places at once get both versions, one after the other', async () => {
			const store = await fresh();
			const { id } = await addedPhoto(store, bytes, about);
			const versions = await Promise.all([
				corrected(store, id, { mask: true }, mask),
				corrected(store, id, { mask: true }, bytes),
			]);
			expect(versions.map(({ version }) => version).sort()).toEqual([2, 3]);
			expect((await store.photos.get(id))?.version).toBe(3);
			expect(await store.photos.derived(id, 'mask')).not.toBeNull();
		});

		it('are found by id, a thousand at once', async () => {
			const store = await fresh();
			const { id } = await addedPhoto(store, bytes, about);
			const many = Array.from({ length: 1000 }, (_, index) => photoIdOf(new TextEncoder().encode(String(index))));
			expect(ids(await store.photos.list([...many, id]))).toEqual([id]);
			expect(await store.photos.list([])).toEqual([]);
		});

		it('refuse an id that could be a path', async () => {
			const store = await fresh();
			await expect(store.photos.derived('../../../etc/passwd', 'thumb')).rejects.toThrow(TypeError);
			await expect(store.photos.original('..')).rejects.toThrow(TypeError);
		});
	});

	describe('paired devices', () => {
		const device = (id: string) => ({
			id,
			tokenHash: `hash of ${id}`,
			device: 'iPhone',
			pairedAt: '2026-03-01T10:00:00.000Z',
			seenAt: '2026-03-01T10:00:00.000Z',
		});

		it('are kept until they are removed, and undo passes over them', async () => {
			const store = await fresh();
			const { pairings } = store;
			for (const id of ['a', 'b', 'c']) await pairings.add(device(id));
			await pairings.saveSeen('b', '2026-03-09T10:00:00.000Z');
			expect(await pairings.list()).toEqual([
				device('a'),
				{ ...device('b'), seenAt: '2026-03-09T10:00:00.000Z' },
				device('c'),
			]);
			await pairings.remove(['a', 'c', 'unknown']);
			await pairings.remove([]);
			expect(ids(await pairings.list())).toEqual(['b']);
			expect(await undone(store)).toBeNull();
		});

		it('are never two of one token', async () => {
			const { pairings } = await fresh();
			await pairings.add(device('a'));
			await expect(pairings.add({ ...device('b'), tokenHash: 'hash of a' })).rejects.toThrow(/unique/i);
		});
	});
}
