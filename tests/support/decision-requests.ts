import type { Store } from '../../src/store/store.ts';
import { defaultSeason } from '../../src/wardrobe/days/season-defaults.ts';
import { derivePalette } from '../../src/wardrobe/palette/palette.ts';
import { aReading, aSwatch, INK, OAT, RUST } from './build-wardrobe.ts';
import { addedPhoto, corrected, decided } from './decided.ts';
import { garmentDetails } from './garment-details.ts';
import { cutOut } from './pictures.ts';
import { multipartBody } from './test-app.ts';

const AT = '2026-03-01T08:00:00.000Z';

/** One request that decides: where it goes and with what. `before` = requests that make it possible. */
export type DecisionRequest = {
	readonly url: string;
	readonly body?: unknown;
	readonly headers?: Readonly<Record<string, string>>;
	readonly before?: readonly string[];
	/** It moves through the decisions itself, so that undo does not lead back. */
	readonly moves?: true;
};

/** Routes that write and decide nothing about the wardrobe, each with the reason. */
export const NO_DECISION: Readonly<Record<string, string>> = {
	'POST /api/pair': 'who may come in is no part of the wardrobe',
	'DELETE /api/devices': 'as above',
	'DELETE /api/devices/:id': 'as above',
	'POST /api/photos/:id/retry': 'when a photo is read, not what it is',
	'POST /api/photos/cancel': 'as above',
	'POST /api/photos/:id/light-trial': 'tries out, keeps nothing',
	'POST /api/seasons/:id/line-up/build': 'works out, keeps nothing',
	'POST /api/seasons/:id/line-up/swaps': 'as above',
	'POST /api/seasons/:id/line-up/what-if': 'as above',
	'POST /api/restore': 'a home in the place of another; its stops in the middle are in tests/server/restore.test.ts',
};

/** Ids that {@link furnish} made. */
export type Furnished = { readonly shown: string; readonly second: string; readonly board: string };

/** A home with one of everything, so that every request that decides has something to decide about. */
export async function furnish(store: Store): Promise<Furnished> {
	const about = { originalName: 'IMG_1.png', mediaType: 'image/png', addedAt: AT };
	const add = async (lab: readonly [number, number, number]) => {
		const bytes = await cutOut(lab);
		const { id } = await addedPhoto(store, bytes, about);
		const slot = 'top' as const;
		const reading = aReading([aSwatch(lab, 1, slot)], { widthPx: 200, heightPx: 200 });
		await store.photos.saveReading(id, reading, { display: bytes, thumb: bytes });
		return id;
	};
	const [shown, second, board] = [await add(INK), await add(OAT), await add(RUST)];
	const season = { id: 's1', name: 'Spring', startsOn: '2026-03-01', endsOn: '2026-05-31', addedAt: AT };
	const readings = [aReading([aSwatch(RUST, 0.6, 'top'), aSwatch(INK, 0.4, 'bottom')])];
	const named = { nameFrom: 'user', kindFrom: 'user' } as const;
	await decided(store, {
		seasons: { put: [defaultSeason(season), defaultSeason({ ...season, id: 's2', name: 'Another' })] },
		garments: {
			put: [
				garmentDetails({ ...named, id: 'g1', name: 'Ink shirt', photoIds: [shown, second] }),
				garmentDetails({ ...named, id: 'g2', name: 'Oat skirt', kind: 'skirt', photoIds: [], sortedFor: ['s1'] }),
				garmentDetails({ ...named, id: 'g3', name: 'Old coat', kind: 'coat' }),
			],
		},
		inspirations: { put: [{ id: 'i1', seasonId: 's1', photoId: board, title: 'Street', group: '', addedAt: AT }] },
		wishes: { put: [wish('w1')] },
		candidates: { put: [candidate('c1', board), candidate('c2', board)] },
		makers: { put: [{ id: 'm1', name: 'A weaver', notes: '' }] },
		wears: {
			put: [
				{ garmentId: 'g1', on: '2026-02-01' },
				{ garmentId: 'g2', on: '2026-02-01' },
			],
		},
		palettes: [{ seasonId: 's1', palette: derivePalette(readings, { baseCount: 1, colourCount: 2, seed: 1 }) }],
	});
	await decided(store, { garments: { remove: ['g3'] } }, 'Put the coat in the bin');
	await corrected(store, second, { mask: true }, await cutOut(OAT));
	await store.photos.saveReading(second, aReading([aSwatch(OAT, 1, 'top')]), {});
	return { shown, second, board };
}

const wish = (id: string) => ({
	id,
	seasonId: 's1',
	name: 'A rust top',
	slot: 'top' as const,
	kind: null,
	target: RUST,
	tolerance: 20,
	yearParts: [],
	priceLimit: null,
	expectedWearsPerYear: null,
	wantedSince: '2026-01-01',
	state: 'open' as const,
	paletteColourId: null,
	notes: '',
});

const candidate = (id: string, photoId: string) => ({
	id,
	seasonId: 's1',
	photoId,
	name: 'A rust shirt',
	nameFrom: 'user' as const,
	kind: 'shirt' as const,
	kindFrom: 'user' as const,
	price: 12,
	used: true,
	source: '',
	state: 'open' as const,
	addedAt: AT,
});

/** A request for every route that decides, by method and the name under which it is registered. `seen` tells ids that only a running home knows. */
export async function decisionRequests(
	{ shown, second }: Furnished,
	seen: { readonly gapId: string; readonly colourId: string },
): Promise<Readonly<Record<string, DecisionRequest>>> {
	const { id: _id, ...newWish } = wish('');
	const dates = { name: 'Later', startsOn: '2027-03-01', endsOn: '2027-05-31' };
	const left = { left: 0, top: 0, right: 0.5, bottom: 1 };
	const right = { left: 0.4, top: 0, right: 1, bottom: 1 };
	const upload = multipartBody({ purpose: 'garment' }, [{ name: 'IMG_9.png', bytes: await cutOut([60, 20, 30]) }]);
	const csv = { 'content-type': 'text/csv' };
	return {
		'POST /api/photos': { url: '/api/photos', body: upload.payload, headers: upload.headers },
		'POST /api/grounds': { url: '/api/grounds', body: { photoIds: [shown, second], word: 'one' } },
		'PUT /api/photos/:id/correction': {
			url: `/api/photos/${shown}/correction`,
			body: { byHand: { warmer: 2, lighter: 0 } },
		},
		'PUT /api/photos/:id/mask': {
			url: `/api/photos/${shown}/mask`,
			body: await cutOut(INK),
			headers: { 'content-type': 'image/png' },
		},
		'DELETE /api/photos/:id/mask': { url: `/api/photos/${second}/mask` },
		'POST /api/seasons': { url: '/api/seasons', body: dates },
		'PATCH /api/seasons/:id': { url: '/api/seasons/s1', body: { notes: 'wet' } },
		'POST /api/seasons/:id/sorted': {
			url: '/api/seasons/s1/sorted',
			body: { garments: [{ id: 'g1', place: 'stored', wayOut: null, decided: true }] },
		},
		'DELETE /api/seasons/:id/sorted': { url: '/api/seasons/s1/sorted' },
		'DELETE /api/seasons/:id': { url: '/api/seasons/s1' },
		'POST /api/seasons/:id/copy': { url: '/api/seasons/s1/copy', body: dates },
		'PATCH /api/inspirations/:id': { url: '/api/inspirations/i1', body: { group: 'rain' } },
		'DELETE /api/inspirations/:id': { url: '/api/inspirations/i1' },
		'POST /api/seasons/:id/palette/derive': { url: '/api/seasons/s1/palette/derive', body: { from: 'inspirations' } },
		'POST /api/seasons/:id/palette/edit': {
			url: '/api/seasons/s1/palette/edit',
			body: { edit: 'rename', id: seen.colourId, label: 'my own' },
		},
		'POST /api/garments': { url: '/api/garments', body: { name: 'A scarf', photoIds: [shown] } },
		'PATCH /api/garments/:id': { url: '/api/garments/g1', body: { place: 'stored' } },
		'PATCH /api/garments': { url: '/api/garments', body: { ids: ['g1', 'g2'], changes: { notes: 'both' } } },
		'DELETE /api/garments/:id': { url: '/api/garments/g1' },
		'DELETE /api/garments': { url: '/api/garments', body: { ids: ['g1', 'g2'] } },
		'POST /api/garments/merge': { url: '/api/garments/merge', body: { ids: ['g1', 'g2'] } },
		'POST /api/garments/:id/split': { url: '/api/garments/g1/split', body: { photoId: shown, boxes: [left, right] } },
		'POST /api/garments/:id/part': { url: '/api/garments/g1/part', body: { photoId: second } },
		'POST /api/garments/import': {
			url: '/api/garments/import',
			body: 'name,kind\nShawl,scarf\nCap,hat\n',
			headers: csv,
		},
		'POST /api/wishes': { url: '/api/wishes', body: newWish },
		'POST /api/seasons/:id/wishes/from-gap': {
			url: '/api/seasons/s1/wishes/from-gap',
			body: { gapId: seen.gapId },
		},
		'PATCH /api/wishes/:id': { url: '/api/wishes/w1', body: { state: 'dropped' } },
		'DELETE /api/wishes/:id': { url: '/api/wishes/w1' },
		'PATCH /api/candidates/:id': { url: '/api/candidates/c1', body: { price: 9 } },
		'DELETE /api/candidates/:id': { url: '/api/candidates/c1' },
		'POST /api/candidates/:id/bought': { url: '/api/candidates/c1/bought' },
		'POST /api/candidates/:id/passed': { url: '/api/candidates/c1/passed' },
		'POST /api/makers': { url: '/api/makers', body: { name: 'A knitter', notes: '' } },
		'PATCH /api/makers/:id': { url: '/api/makers/m1', body: { notes: 'slow' } },
		'DELETE /api/makers/:id': { url: '/api/makers/m1' },
		'PATCH /api/seasons/:id/line-up': {
			url: '/api/seasons/s1/line-up',
			body: { garmentIds: ['g1'], mustKeep: ['g1'] },
		},
		'POST /api/wears': { url: '/api/wears', body: { wears: [{ garmentId: 'g1', on: '2026-02-02' }] } },
		'DELETE /api/wears': { url: '/api/wears', body: { garmentId: 'g1', on: '2026-02-01' } },
		'POST /api/wears/import': {
			url: '/api/wears/import',
			body: 'day,garment\n2026-02-03,g1\n2026-02-04,g2\n',
			headers: csv,
		},
		'PUT /api/pair-words': { url: '/api/pair-words', body: { a: 'g1', b: 'g2', word: 'approved' } },
		'POST /api/undo': { url: '/api/undo', moves: true },
		'POST /api/redo': { url: '/api/redo', before: ['/api/undo'], moves: true },
		'POST /api/bin/:id/restore': { url: '/api/bin/g3/restore' },
		'POST /api/demo': { url: '/api/demo' },
	};
}
