import type { ChangedEntry } from '../../../src/store/store.ts';
import { pathTo } from './call.ts';

/** A photo whose reading ended, or began again. */
export type PhotoEvent = { readonly id: string; readonly status: 'waiting' | 'read' | 'failed' };

/** Kinds that the judgements of every season take. */
const EVERYWHERE: ReadonlySet<string> = new Set(['garment', 'wear', 'pair-word', 'maker', 'season', 'palette']);

/** Lists whose address is not made of their kind. */
const LISTS: Readonly<Record<string, string>> = {
	garment: pathTo('listGarments'),
	season: pathTo('listSeasons'),
	maker: pathTo('listMakers'),
	'pair-word': pathTo('listPairWords'),
	wear: pathTo('listWears'),
	device: pathTo('listDevices'),
};
const LISTS_OF_SEASON: Readonly<Record<string, string>> = {
	inspiration: 'inspirations',
	wish: 'wishes',
	candidate: 'candidates',
	palette: 'palette',
	'line-up': 'line-up',
};

/** The season that an entry belongs to; palettes and line-ups are named by theirs. */
const seasonOf = ({ kind, id, seasonId }: ChangedEntry): string | undefined =>
	kind === 'palette' || kind === 'line-up' ? id : seasonId;

function isTouched(path: string, entry: ChangedEntry): boolean {
	const [, seasonId, part] = /^\/api\/seasons\/([^/]+)\/([^/?]+)$/.exec(path) ?? [];
	if (part === 'report') return EVERYWHERE.has(entry.kind) || seasonOf(entry) === seasonId;
	if (part !== undefined) return LISTS_OF_SEASON[entry.kind] === part && seasonOf(entry) === seasonId;
	return path.split('?')[0] === LISTS[entry.kind];
}

/** Whether what was fetched under this key may be other now that these entries were changed. */
export function touchedByEntries(key: readonly unknown[], entries: readonly ChangedEntry[]): boolean {
	const [what, of] = key;
	// Whether a piece fits, or a swap pays, follows from everything that a report follows from.
	if (what === 'check') return true;
	if (what === 'what-if')
		return entries.some((entry) => isTouched(pathTo('getReport', { params: { id: String(of) } }), entry));
	if (what === 'bin') return true;
	return typeof what === 'string' && entries.some((entry) => isTouched(what, entry));
}

/** Whether what was fetched under this key may be other after these photos were read, or wait to be. */
export function touchedByPhotos(key: readonly unknown[], photos: readonly PhotoEvent[]): boolean {
	const [what, of] = key;
	const ids = Array.isArray(of) ? (of as readonly unknown[]) : [of];
	if (what === 'photos' || what === 'photo') return photos.some(({ id }) => ids.includes(id));
	// Colours and names come with a reading, so only its end counts for the rest.
	if (photos.every(({ status }) => status === 'waiting')) return false;
	return (
		what === 'check' || what === 'what-if' || (typeof what === 'string' && /\/(report|garments|grounds)$/.test(what))
	);
}
