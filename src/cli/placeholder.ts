import { isSaid, say } from '../language/speak.ts';

/** What a call takes, such as `PHOTO...` or `X,Y[,L]`, with its words in the language spoken. */
export const placeholder = (taken: string): string =>
	taken.replace(/[A-Z]{4,}/g, (word) => {
		const key = `placeholders.${word}`;
		return isSaid(key) ? say(key) : word;
	});
