import { BANDS as BANDS_DE } from './de/bands.ts';
import { CLI as CLI_DE } from './de/cli.ts';
import { COLOURS as COLOURS_DE } from './de/colours.ts';
import { DECISIONS as DECISIONS_DE } from './de/decisions.ts';
import { DEVICES_PAGE as DEVICES_PAGE_DE } from './de/devices-page.ts';
import { DIRECTION as DIRECTION_DE } from './de/direction.ts';
import { FIELD_NAMES as FIELD_NAMES_DE } from './de/field-names.ts';
import { FIT as FIT_DE } from './de/fit.ts';
import { GARMENTS as GARMENTS_DE } from './de/garments.ts';
import { HOME as HOME_DE } from './de/home.ts';
import { HOSTING as HOSTING_DE } from './de/hosting.ts';
import { LIGHT as LIGHT_DE } from './de/light.ts';
import { LINE_UP as LINE_UP_DE } from './de/line-up.ts';
import { LOOK_BACK as LOOK_BACK_DE } from './de/look-back.ts';
import { NEXT as NEXT_DE } from './de/next.ts';
import { PAGE as PAGE_DE } from './de/page.ts';
import { PHOTO as PHOTO_DE } from './de/photo.ts';
import { PHOTOS as PHOTOS_DE } from './de/photos.ts';
import { PICTURES as PICTURES_DE } from './de/pictures.ts';
import { POCKET as POCKET_DE } from './de/pocket.ts';
import { REFUSALS as REFUSALS_DE } from './de/refusals.ts';
import { REPORTS as REPORTS_DE } from './de/reports.ts';
import { SEASON as SEASON_DE } from './de/season.ts';
import { SEASONS as SEASONS_DE } from './de/seasons.ts';
import { SERVER as SERVER_DE } from './de/server.ts';
import { SHEET as SHEET_DE } from './de/sheet.ts';
import { SHOP as SHOP_DE } from './de/shop.ts';
import { SORT as SORT_DE } from './de/sort.ts';
import { START as START_DE } from './de/start.ts';
import { TABLES as TABLES_DE } from './de/tables.ts';
import { VOCABULARY as VOCABULARY_DE } from './de/vocabulary.ts';
import { WISH_PAGE as WISH_PAGE_DE } from './de/wish-page.ts';
import { BANDS } from './en/bands.ts';
import { CLI } from './en/cli.ts';
import { COLOURS } from './en/colours.ts';
import { DECISIONS } from './en/decisions.ts';
import { DEVICES_PAGE } from './en/devices-page.ts';
import { DIRECTION } from './en/direction.ts';
import { FIELD_NAMES } from './en/field-names.ts';
import { FIT } from './en/fit.ts';
import { GARMENTS } from './en/garments.ts';
import { HOME } from './en/home.ts';
import { HOSTING } from './en/hosting.ts';
import { LIGHT } from './en/light.ts';
import { LINE_UP } from './en/line-up.ts';
import { LOOK_BACK } from './en/look-back.ts';
import { NEXT } from './en/next.ts';
import { PAGE } from './en/page.ts';
import { PHOTO } from './en/photo.ts';
import { PHOTOS } from './en/photos.ts';
import { PICTURES } from './en/pictures.ts';
import { POCKET } from './en/pocket.ts';
import { REFUSALS } from './en/refusals.ts';
import { REPORTS } from './en/reports.ts';
import { SEASON } from './en/season.ts';
import { SEASONS } from './en/seasons.ts';
import { SERVER } from './en/server.ts';
import { SHEET } from './en/sheet.ts';
import { SHOP } from './en/shop.ts';
import { SORT } from './en/sort.ts';
import { START } from './en/start.ts';
import { TABLES } from './en/tables.ts';
import { VOCABULARY } from './en/vocabulary.ts';
import { WISH_PAGE } from './en/wish-page.ts';
import type { SameKeys } from './same-keys.ts';

/** Every area, in British English and in German. */
const AREAS = [
	[BANDS, BANDS_DE],
	[CLI, CLI_DE],
	[COLOURS, COLOURS_DE],
	[DECISIONS, DECISIONS_DE],
	[DEVICES_PAGE, DEVICES_PAGE_DE],
	[DIRECTION, DIRECTION_DE],
	[FIELD_NAMES, FIELD_NAMES_DE],
	[FIT, FIT_DE],
	[GARMENTS, GARMENTS_DE],
	[HOME, HOME_DE],
	[HOSTING, HOSTING_DE],
	[LIGHT, LIGHT_DE],
	[LINE_UP, LINE_UP_DE],
	[LOOK_BACK, LOOK_BACK_DE],
	[NEXT, NEXT_DE],
	[PAGE, PAGE_DE],
	[PHOTO, PHOTO_DE],
	[PHOTOS, PHOTOS_DE],
	[PICTURES, PICTURES_DE],
	[POCKET, POCKET_DE],
	[REFUSALS, REFUSALS_DE],
	[REPORTS, REPORTS_DE],
	[SEASON, SEASON_DE],
	[SEASONS, SEASONS_DE],
	[SERVER, SERVER_DE],
	[SHEET, SHEET_DE],
	[SHOP, SHOP_DE],
	[SORT, SORT_DE],
	[START, START_DE],
	[TABLES, TABLES_DE],
	[VOCABULARY, VOCABULARY_DE],
	[WISH_PAGE, WISH_PAGE_DE],
] as const;

/** What lies in any of some types, as one type: an intersection, which TypeScript infers where types are only taken in. */
type Joined<Area> = (Area extends unknown ? (taken: Area) => void : never) extends (taken: infer All) => void
	? { readonly [Name in keyof All]: All[Name] }
	: never;

/** Areas as one catalogue; no two of them have words of one name. */
const joined = <Area extends object>(areas: readonly Area[]): Joined<Area> => Object.assign({}, ...areas);

/** Every word of page, reports and sentences in British English, by area. Other languages have the same keys. */
export const ENGLISH = joined(AREAS.map(([english]) => english));

/** Every word in German; the compiler finds what is missing. */
export const GERMAN: SameKeys<typeof ENGLISH> = joined(AREAS.map(([, german]) => german));
