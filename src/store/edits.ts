import type { Wear } from '../wardrobe/words/wear.ts';
import type { Edits, EntryEdit } from './carry-out.ts';
import { CORRECTION } from './entry-state.ts';
import type { Changes, Decided } from './store.ts';

/** A body as it is stored: without the version, which the row carries. */
function bodyOf(entry: object): object {
	const { version: _carriedByTheRow, ...body } = entry as { version?: number };
	return body;
}

const editsOfKind = <T extends { readonly id: string }>(
	kind: string,
	{ put = [], remove = [] }: Changes<T> = {},
): EntryEdit[] => [
	...put.map((item) => ({ kind, id: item.id, body: bodyOf(item) })),
	...remove.map((id) => ({ kind, id, body: null })),
];

const wearId = ({ garmentId, on }: Wear) => `${on} ${garmentId}`;

/** The same pair whichever way round it is named. */
const pairId = (a: string, b: string) => [a, b].sort().join(' ');

/** The edits that carry out what was decided. */
export function editsOf(decided: Decided): Edits {
	const { wears, palettes = [], lineUps = [], pairWords = [], corrections = [], photos = [] } = decided;
	const entries: EntryEdit[] = [
		...editsOfKind('season', decided.seasons),
		...editsOfKind('garment', decided.garments),
		...editsOfKind('inspiration', decided.inspirations),
		...editsOfKind('wish', decided.wishes),
		...editsOfKind('candidate', decided.candidates),
		...editsOfKind('maker', decided.makers),
		...(wears?.put ?? []).map((wear) => ({ kind: 'wear', id: wearId(wear), body: wear })),
		...(wears?.remove ?? []).map((wear) => ({ kind: 'wear', id: wearId(wear), body: null })),
		...palettes.map(({ seasonId, palette }) => ({ kind: 'palette', id: seasonId, body: bodyOf(palette) })),
		...lineUps.map((choice) => ({ kind: 'line-up', id: choice.seasonId, body: bodyOf(choice) })),
		...pairWords.map(({ a, b, word }) => ({
			kind: 'pair-word',
			id: pairId(a, b),
			body: word === null ? null : { garmentA: a, garmentB: b, word },
		})),
		...corrections.map(({ photoId, correction, mask }) => ({
			kind: CORRECTION,
			id: photoId,
			body: { correction, mask },
		})),
	];
	return { entries, photos };
}
