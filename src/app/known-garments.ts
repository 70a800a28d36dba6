import { say } from '../language/speak.ts';
import type { HomeReads } from '../store/store.ts';
import { notFound } from './errors.ts';

/** Refuses ids that name no garment; `passed` are not looked at (they were taken before). */
export async function refuseUnknownGarments(
	home: HomeReads,
	ids: readonly string[],
	passed: readonly string[] = [],
): Promise<void> {
	const asked = new Set(ids);
	for (const id of passed) asked.delete(id);
	if (asked.size === 0) return;
	for (const { id } of await home.garments.list()) asked.delete(id);
	const [unknown] = asked;
	if (unknown !== undefined) throw notFound(say('nouns.garment'), unknown);
}
