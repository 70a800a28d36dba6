import { say } from '../../../src/language/speak.ts';
import { useStatus } from '../api/wardrobe.ts';

/** The version of the program that answers; nothing until it is known. */
export function VersionLine() {
	const { data } = useStatus();
	return data ? <span className="quiet small">{say('door.version', { version: data.version })}</span> : null;
}
