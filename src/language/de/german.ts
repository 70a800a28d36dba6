import type { ENGLISH } from '../en/english.ts';
import type { SameKeys } from '../same-keys.ts';
import { BANDS } from './bands.ts';
import { CLI } from './cli.ts';
import { COLOURS } from './colours.ts';
import { DECISIONS } from './decisions.ts';
import { DEVICES_PAGE } from './devices-page.ts';
import { DIRECTION } from './direction.ts';
import { FIELD_NAMES } from './field-names.ts';
import { FIT } from './fit.ts';
import { GARMENTS } from './garments.ts';
import { HOME } from './home.ts';
import { HOSTING } from './hosting.ts';
import { LIGHT } from './light.ts';
import { LINE_UP } from './line-up.ts';
import { LOOK_BACK } from './look-back.ts';
import { NEXT } from './next.ts';
import { PAGE } from './page.ts';
import { PHOTO } from './photo.ts';
import { PHOTOS } from './photos.ts';
import { PICTURES } from './pictures.ts';
import { POCKET } from './pocket.ts';
import { REFUSALS } from './refusals.ts';
import { REPORTS } from './reports.ts';
import { SEASON } from './season.ts';
import { SEASONS } from './seasons.ts';
import { SERVER } from './server.ts';
import { SHEET } from './sheet.ts';
import { SHOP } from './shop.ts';
import { SORT } from './sort.ts';
import { START } from './start.ts';
import { TABLES } from './tables.ts';
import { VOCABULARY } from './vocabulary.ts';
import { WISH_PAGE } from './wish-page.ts';

/** Every word in German; the compiler finds what is missing. */
export const GERMAN: SameKeys<typeof ENGLISH> = {
	...BANDS,
	...CLI,
	...COLOURS,
	...DECISIONS,
	...DEVICES_PAGE,
	...DIRECTION,
	...FIELD_NAMES,
	...FIT,
	...GARMENTS,
	...HOME,
	...HOSTING,
	...LIGHT,
	...LINE_UP,
	...LOOK_BACK,
	...NEXT,
	...PAGE,
	...PHOTO,
	...PHOTOS,
	...PICTURES,
	...POCKET,
	...REFUSALS,
	...REPORTS,
	...SEASON,
	...SEASONS,
	...SERVER,
	...SHEET,
	...SHOP,
	...SORT,
	...START,
	...TABLES,
	...VOCABULARY,
	...WISH_PAGE,
};
