import { COLOURS } from './colours.ts';
import { DECISIONS } from './decisions.ts';
import { FIT } from './fit.ts';
import { NEXT } from './next.ts';
import { PAGE } from './page.ts';
import { PICTURES } from './pictures.ts';
import { REFUSALS } from './refusals.ts';
import { SEASON } from './season.ts';
import { SORT } from './sort.ts';
import { THINGS } from './things.ts';

/** Every word of page, reports and sentences in British English, by area. Other languages have the same keys. */
export const ENGLISH = {
	...COLOURS,
	...DECISIONS,
	...FIT,
	...NEXT,
	...PAGE,
	...PICTURES,
	...REFUSALS,
	...SEASON,
	...SORT,
	...THINGS,
} as const;
