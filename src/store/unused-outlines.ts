import type { Connection } from './entry-state.ts';
import type { Outline, PhotoFiles } from './photo-files.ts';

/**
 * Those of the outlines that nothing points at any more: a decision that would have brought them was never made, or can no longer be done
 * again. What a photo has, or a decision may bring back, is none of them.
 */
export async function unusedOutlines<T extends Outline>(db: Connection, outlines: readonly T[]): Promise<T[]> {
	if (outlines.length === 0) return [];
	const rows = await db.selectFrom('photos').select(['id', 'mask']).where('mask', 'is not', null).execute();
	const wanted = new Set(rows.map(({ id, mask }) => `${id} ${mask}`));
	const decisions = await db.selectFrom('decisions').select('changes').where('changes', 'like', '%mask-%').execute();
	const aside = await db.selectFrom('set_aside').select('body').where('body', 'like', '%mask-%').execute();
	const texts = [...decisions.map(({ changes }) => changes), ...aside.map(({ body }) => body)];
	const named = new Set(texts.flatMap((text) => text.match(/mask-[0-9a-f]+/g) ?? []));
	return outlines.filter(({ photoId, name }) => !wanted.has(`${photoId} ${name}`) && !named.has(name));
}

/** A decision that brings an outline is made within moments of its file; a day later it was not made. */
const SETTLED_MS = 24 * 3600 * 1000;

/** Drops the outlines of a home that nothing points at, where other programs may be about to decide: only those that are a day old. */
export async function dropUnusedOutlines(
	db: Connection,
	files: Pick<PhotoFiles, 'outlines' | 'removeDerived'>,
	now: Date,
): Promise<void> {
	const settled = (await files.outlines()).filter(({ writtenAt }) => now.getTime() - writtenAt.getTime() > SETTLED_MS);
	for (const { photoId, name } of await unusedOutlines(db, settled)) await files.removeDerived(photoId, name);
}
