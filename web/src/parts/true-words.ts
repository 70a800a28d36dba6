import { say } from '../../../src/language/speak.ts';

/** CIEDE2000 under which most people see no difference (as for `colours.seenFrom`), under which it is small, and under which it is no other colour yet. The last two are our choice. */
const UNSEEN = 3;
const SMALL = 6;
const VISIBLE = 10;

/** How true the colours of a photo are, in words. `error`: how far they are off four times in five, in CIEDE2000 units. */
export const trueWords = (error: number): string =>
	say(
		error <= UNSEEN
			? 'photo.trueColours'
			: error <= SMALL
				? 'photo.nearlyTrue'
				: error <= VISIBLE
					? 'photo.visiblyOff'
					: 'photo.farOff',
	);
