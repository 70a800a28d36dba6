import { isSaid, say } from './speak.ts';

/** The word for a field that a request, a stored thing or a table calls `name`; some are named by a kind or a sort of piece. The name itself where it has no word. */
export function fieldWord(name: string): string {
	const key = [`fieldNames.${name}`, `kinds.${name}`, `slots.${name}`].find(isSaid);
	return key === undefined ? name : say(key);
}

/** The words for a path of fields, from the outermost in; a place in a list is told by its number, 1 the first. */
export const fieldPathWords = (path: readonly string[]): string =>
	path
		.map((name) => (/^\d+$/.test(name) ? say('fieldNames.number', { number: Number(name) + 1 }) : fieldWord(name)))
		.join(', ');
