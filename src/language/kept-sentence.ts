import type { Lab65 } from '../colour/lab65.ts';
import { colourWord } from '../colour/words/colour-word.ts';
import { BEGINS, keptForm, keptList, PARTS } from './kept-form.ts';
import { dayText, listText } from './numbers.ts';
import { type Blanks, isSaid, type SentenceKey, say, spokenLanguage } from './speak.ts';

// What is stored is no sentence but its name and what fills its blanks, so that it shows in the reader's language, whoever wrote it. Texts with such
// sentences in them can be put together like any other.
const INNERMOST = /\uE000([^\uE000\uE002]*)\uE002/g;

/** The sentence as it is stored; its blanks may hold stored sentences. */
export const keptWords = (key: SentenceKey, blanks: Blanks = {}): string => keptForm(key, blanks);

/** A day as it is stored within a sentence; the reader's language writes it. */
export const keepDay = (day: string): string => keptForm('day', { day });

/** Names in a row as they are stored within a sentence. */
export { keptList as keepList };

/** A colour as it is stored within a sentence; the reader's language has its word. `error` as for that word. */
export const keepColour = ([L, a, b]: Lab65, error: number): string => keptForm('colour', { L, a, b, error });

/** What one stored part says; as it is where this program knows no such name. */
function saidOf(whole: string, inner: string): string {
	const [name = '', ...parts] = inner.split(PARTS);
	const blanks = parts.map((part): [string, string | number] => {
		const at = part.indexOf('=');
		const value = part.slice(at + 2);
		return [part.slice(0, at), part[at + 1] === '#' ? Number(value) : value];
	});
	if (name === 'colour') {
		const [L, a, b, error] = blanks.map(([, value]) => Number(value)) as [number, number, number, number];
		return colourWord([L, a, b], spokenLanguage(), error);
	}
	if (name === 'day') return dayText(String(blanks[0]?.[1] ?? ''));
	if (name === 'list') return listText(blanks.map(([, value]) => String(value)));
	const isCounted = isSaid(`${name}_other`);
	return isCounted || isSaid(name) ? say(name as SentenceKey, Object.fromEntries(blanks)) : whole.slice(1, -1);
}

/** A text with all stored sentences in it said in the language spoken; the innermost first. Any other text is given back as it is. */
export function spoken(text: string): string {
	let said = text;
	while (said.includes(BEGINS)) {
		const next = said.replace(INNERMOST, saidOf);
		if (next === said) return said;
		said = next;
	}
	return said;
}

/** The same for a text of JSON, in which the sentences stand within strings. */
export function spokenJson(json: string): string {
	let said = json;
	while (said.includes(BEGINS)) {
		const next = said.replace(INNERMOST, (whole, inner: string) =>
			JSON.stringify(saidOf(whole, JSON.parse(`"${inner}"`) as string)).slice(1, -1),
		);
		if (next === said) return said;
		said = next;
	}
	return said;
}
