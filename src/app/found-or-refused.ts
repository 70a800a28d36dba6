import { notFound } from './errors.ts';

/** Finds a thing by its id, or refuses with a sentence; `what` as in "garment". */
export const knownIn =
	<T>(things: { get(id: string): Promise<T | null> }, what: string) =>
	async (id: string): Promise<T> => {
		const found = await things.get(id);
		if (!found) throw notFound(what, id);
		return found;
	};
