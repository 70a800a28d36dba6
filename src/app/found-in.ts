import type { ENGLISH } from '../language/catalogue.ts';
import { say } from '../language/speak.ts';
import { notFound } from './errors.ts';

/** What things are called that can be asked for. */
type Noun = keyof (typeof ENGLISH)['nouns'];

/** Finds a thing by its id, or refuses with a sentence; `what` as in "garment". */
export const foundIn =
	<T>(things: { get(id: string): Promise<T | null> }, what: Noun) =>
	async (id: string): Promise<T> => {
		const found = await things.get(id);
		if (!found) throw notFound(say(`nouns.${what}`), id);
		return found;
	};
