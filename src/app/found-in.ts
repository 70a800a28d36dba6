import type { ENGLISH } from '../language/catalogue.ts';
import { say } from '../language/speak.ts';
import { notFound } from './errors.ts';

/** What entries are called that can be asked for. */
type Noun = keyof (typeof ENGLISH)['nouns'];

/** Finds an entry by its id, or refuses with a sentence; `what` as in "garment". */
export const foundIn =
	<T>(entries: { get(id: string): Promise<T | null> }, what: Noun) =>
	async (id: string): Promise<T> => {
		const found = await entries.get(id);
		if (!found) throw notFound(say(`nouns.${what}`), id);
		return found;
	};
