import { CLI } from './cli.ts';
import { COLOURS } from './colours.ts';
import { DECISIONS } from './decisions.ts';
import { FIT } from './fit.ts';
import { HOME } from './home.ts';
import { HOSTING } from './hosting.ts';
import { LIGHT } from './light.ts';
import { LOOK_BACK } from './look-back.ts';
import { NEXT } from './next.ts';
import { PAGE } from './page.ts';
import { PHOTOS } from './photos.ts';
import { PICTURES } from './pictures.ts';
import { REFUSALS } from './refusals.ts';
import { REPORTS } from './reports.ts';
import { SEASON } from './season.ts';
import { SEASONS } from './seasons.ts';
import { SERVER } from './server.ts';
import { SHOP } from './shop.ts';
import { SORT } from './sort.ts';
import { TABLES } from './tables.ts';
import { THINGS } from './things.ts';
import { WISH_PAGE } from './wish-page.ts';

/** Every word of page, reports and sentences in British English, by area. Other languages have the same keys. */
export const ENGLISH = {
	...CLI,
	...COLOURS,
	...DECISIONS,
	...FIT,
	...HOME,
	...HOSTING,
	...LIGHT,
	...LOOK_BACK,
	...NEXT,
	...PAGE,
	...PHOTOS,
	...PICTURES,
	...REFUSALS,
	...REPORTS,
	...SEASON,
	...SEASONS,
	...SERVER,
	...SHOP,
	...SORT,
	...TABLES,
	...THINGS,
	...WISH_PAGE,
} as const;
