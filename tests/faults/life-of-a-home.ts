import { createHash } from 'node:crypto';
import type { Store } from '../../src/store/store.ts';
import type { GarmentDetails } from '../../src/wardrobe/words/garment.ts';
import type { Palette } from '../../src/wardrobe/words/palette-colour.ts';
import type { Wear } from '../../src/wardrobe/words/wear.ts';
import { aReading, aSwatch, OAT } from '../support/build-wardrobe.ts';
import { addedPhoto, corrected, decided, undone } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';

/** One call to the store, each of them acknowledged or not at all. */
export type Step =
	| { readonly do: 'add photo' | 'save reading' | 'correct'; readonly text: string; readonly version: number }
	| { readonly do: 'put'; readonly garments: readonly GarmentDetails[]; readonly remove: readonly string[] }
	| { readonly do: 'wear'; readonly wears: readonly Wear[] }
	| { readonly do: 'palette'; readonly palette: string }
	| { readonly do: 'undo' };

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text.repeat(40));
const idOf = (text: string): string => createHash('sha256').update(bytesOf(text)).digest('hex');
const maskOf = (text: string, version: number) => bytesOf(`outline ${version} of ${text}`);

/** What happens in one round: an import of two photos with their garments, corrections, wears, decisions, some taken back. */
export function stepsOfRound(round: number): Step[] {
	const [one, two] = [`photo ${round}a `, `photo ${round}b `];
	const garment = (id: string, notes: string, text: string) =>
		garmentDetails({ id: `${id}${round}`, name: `${id} ${round} 🧥`, notes, photoIds: [idOf(text)] });
	return [
		{ do: 'add photo', text: one, version: 1 },
		{ do: 'put', garments: [garment('coat', 'new', one)], remove: [] },
		{ do: 'save reading', text: one, version: 1 },
		{ do: 'put', garments: [garment('coat', 'changed', one)], remove: [] },
		{ do: 'correct', text: one, version: 2 },
		{ do: 'wear', wears: [{ garmentId: `coat${round}`, on: '2026-03-01' }] },
		{ do: 'undo' },
		{ do: 'add photo', text: two, version: 1 },
		{ do: 'put', garments: [garment('shirt', 'new', two), garment('skirt', 'new', two)], remove: [`coat${round}`] },
		{ do: 'correct', text: one, version: 3 },
		{ do: 'palette', palette: `palette of round ${round}` },
		{ do: 'save reading', text: two, version: 1 },
		{ do: 'undo' },
	];
}

/** A palette of one colour, known again by its label. */
const paletteNamed = (label: string): Palette => ({
	colours: [
		{
			id: 'c1',
			lab: OAT,
			spread: 2,
			weight: 1,
			role: 'base',
			name: 'oat',
			label,
			photos: 1,
			firmness: 1,
			locked: false,
			origin: 'by-hand',
		},
	],
});

/** Carries out one step. */
export async function carryOut(store: Store, step: Step): Promise<void> {
	const at = '2026-03-01T08:00:00.000Z';
	if (step.do === 'add photo')
		await addedPhoto(store, bytesOf(step.text), { originalName: step.text, mediaType: 'image/jpeg', addedAt: at });
	else if (step.do === 'save reading')
		await store.photos.saveReading(idOf(step.text), aReading([aSwatch(OAT)]), {
			thumb: bytesOf(`thumbnail of ${step.text}`),
			display: bytesOf(`large copy of ${step.text}`),
		});
	else if (step.do === 'correct')
		await corrected(store, idOf(step.text), { mask: true }, maskOf(step.text, step.version));
	else if (step.do === 'put')
		await decided(store, { garments: { put: step.garments, remove: step.remove } }, 'Decided');
	else if (step.do === 'wear') await decided(store, { wears: { put: step.wears } }, 'Worn');
	else if (step.do === 'palette')
		await decided(
			store,
			{ palettes: [{ seasonId: 's1', palette: paletteNamed(step.palette) }] },
			'Derived the palette',
		);
	else await undone(store);
}

/** What can be decided and taken back. */
type Decided = {
	readonly garments: Readonly<Record<string, GarmentDetails>>;
	readonly binned: readonly string[];
	readonly wears: readonly Wear[];
	readonly palette: string | null;
};
type PhotoState = { readonly version: number; readonly read: boolean; readonly mask: string | null };

/** What a home must hold: the decisions made, oldest first, and the photos. */
export type Expected = {
	readonly history: readonly Decided[];
	readonly photos: Readonly<Record<string, PhotoState>>;
};

const NOTHING: Decided = { garments: {}, binned: [], wears: [], palette: null };
export const EMPTY_HOME: Expected = { history: [], photos: {} };

const hex = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

function decidedAfter(before: Decided, step: Step): Decided {
	if (step.do === 'put') {
		const garments = { ...before.garments, ...Object.fromEntries(step.garments.map((one) => [one.id, one])) };
		const removed = step.remove.filter((id) => garments[id]);
		for (const id of removed) delete garments[id];
		return { ...before, garments, binned: [...before.binned, ...removed].sort() };
	}
	if (step.do === 'wear') return { ...before, wears: [...before.wears, ...step.wears] };
	if (step.do === 'palette') return { ...before, palette: step.palette };
	return before;
}

/** What the home must hold after one more step. */
export function after({ history, photos }: Expected, step: Step): Expected {
	if (step.do === 'undo') return { history: history.slice(0, -1), photos };
	if (step.do === 'put' || step.do === 'wear' || step.do === 'palette')
		return { history: [...history, decidedAfter(history.at(-1) ?? NOTHING, step)], photos };
	const id = idOf(step.text);
	const before = photos[id] ?? { version: 1, read: false, mask: null };
	const decided = step.do === 'correct' ? [...history, history.at(-1) ?? NOTHING] : history;
	const states: Record<typeof step.do, PhotoState> = {
		'add photo': before,
		'save reading': { ...before, read: true },
		correct: { ...before, version: step.version, mask: hex(maskOf(step.text, step.version)) },
	};
	return { history: decided, photos: { ...photos, [id]: states[step.do] } };
}

/** What a store holds, in the form of `Expected`, with only the newest state of decisions; originals are checked against their names. */
export async function heldBy(store: Store) {
	const photos: Record<string, PhotoState> = {};
	for (const { id, version, reading, correction } of await store.photos.list()) {
		if (hex(await store.photos.original(id)) !== id) throw new Error(`the original of ${id} is not what was added`);
		const mask = correction.mask ? await store.photos.derived(id, 'mask') : null;
		photos[id] = { version, read: reading !== null, mask: mask && hex(mask) };
	}
	const newest: Decided = {
		garments: Object.fromEntries((await store.garments.list()).map(({ version: _, ...one }) => [one.id, one])),
		binned: (await store.bin()).map(({ id }) => id).sort(),
		wears: inOrder(await store.wears()),
		palette: (await store.palette('s1'))?.colours[0]?.label ?? null,
	};
	return { decisions: (await store.decisions(100_000)).filter(({ undone }) => !undone).length, newest, photos };
}

/** Wears have no order of their own. */
const inOrder = (wears: readonly Wear[]): Wear[] =>
	[...wears].sort((a, b) => (`${a.on} ${a.garmentId}` < `${b.on} ${b.garmentId}` ? -1 : 1));
const orderly = (decided: Decided): Decided => ({ ...decided, wears: inOrder(decided.wears) });

/** The same form for what was expected. */
export const heldWhen = ({ history, photos }: Expected) => ({
	decisions: history.length,
	newest: orderly(history.at(-1) ?? NOTHING),
	photos,
});
