import { COLOURS } from './colours.ts';
import { FIT } from './fit.ts';
import { NEXT } from './next.ts';
import { PAGE } from './page.ts';
import { PICTURES } from './pictures.ts';
import { SEASON } from './season.ts';
import { THINGS } from './things.ts';

/** Every word of page, reports and sentences in British English, by area. Other languages have the same keys. */
export const ENGLISH = { ...PICTURES, ...THINGS, ...FIT, ...COLOURS, ...SEASON, ...PAGE, ...NEXT } as const;
