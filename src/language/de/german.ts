import type { ENGLISH } from '../en/english.ts';
import type { SameKeys } from '../same-keys.ts';
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

/** Every word in German; the compiler finds what is missing. */
export const GERMAN: SameKeys<typeof ENGLISH> = {
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
};
