import { ISCC_NBS } from '../colour/iscc-nbs.ts';
import { fileTitle } from './file-title.ts';

const SYSTEMATIC = new Set(ISCC_NBS.map(([name]) => name));

/** What the program called a second piece of a photo, and how it told equal names apart, before names came from looks. */
const withoutEnding = (name: string): string => name.replace(/, other$/, '').replace(/ \d+$/, '');

/**
 * Whether the program gave a name that an older home holds: the title of its photo's file, or a systematic colour name such as "Reddish black 3".
 * Somebody typed all others.
 */
export function wasNamedByProgram(name: string, originalName: string | undefined): boolean {
	const title = originalName === undefined ? null : fileTitle(originalName);
	return name === title || withoutEnding(name) === title || SYSTEMATIC.has(withoutEnding(name).toLowerCase());
}
