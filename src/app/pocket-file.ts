import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { isSaid, say, spokenLanguage } from '../language/speak.ts';
import type { Store } from '../store/store.ts';
import { leanInput, type PocketData } from '../wardrobe/season/pocket-data.ts';
import type { Garment } from '../wardrobe/words/garment.ts';
import type { SeasonInput } from '../wardrobe/words/season-input.ts';
import { foundIn } from './found-in.ts';
import { loadSeasonInput } from './load-season.ts';
import type { Services } from './services.ts';

/** The whole file stays under 2 MB, so that any phone opens it and any message carries it. */
const POCKET_MAX_BYTES = 2 * 1024 * 1024;
/** Room for the page's own markup and style. */
const MARKUP_BYTES = 16 * 1024;
const LARGEST_PICTURE_PX = 160;
const SMALLEST_PICTURE_PX = 48;

const partOf = (path: string) => readFile(fileURLToPath(new URL(`../../web/${path}`, import.meta.url)), 'utf8');

/** Small enough that all garments' pictures together keep to the room there is. */
function pictureSidePx(count: number, roomBytes: number): number {
	// Measured on the demo: a WebP thumbnail at quality 55 takes about 0.12 byte a pixel, a third more as a data address.
	const side = Math.sqrt(Math.max(0, roomBytes) / Math.max(1, count) / (0.12 * 1.34));
	return Math.round(Math.min(LARGEST_PICTURE_PX, Math.max(SMALLEST_PICTURE_PX, side)));
}

/** A small picture of each garment as a data address, by its id; none where it has no photo, or no room is left. */
async function pocketPictures(
	store: Store,
	garments: readonly Garment[],
	roomBytes: number,
): Promise<Record<string, string>> {
	// Loaded here: nothing else in the server's own process needs it, and it takes a tenth of a second of every start.
	const { default: sharp } = await import('sharp');
	const side = pictureSidePx(garments.length, roomBytes);
	let left = roomBytes;
	const pictures: Record<string, string> = {};
	for (const garment of garments) {
		const thumb = garment.photoIds[0] ? await store.photos.derived(garment.photoIds[0], 'thumb') : null;
		const small = thumb
			? await sharp(thumb).resize(side, side, { fit: 'inside' }).webp({ quality: 55 }).toBuffer()
			: null;
		if (!small) continue;
		const address = `data:image/webp;base64,${small.toString('base64')}`;
		const bytes = address.length + garment.id.length + JSON_AROUND_BYTES;
		if (bytes > left) continue;
		left -= bytes;
		pictures[garment.id] = address;
	}
	return pictures;
}

/** Quotation marks, colon and comma around a picture. */
const JSON_AROUND_BYTES = 6;

/** Numbers are carried to a thousandth: far finer than a photo tells, at a third of the letters. */
const shortened = (_: string, value: unknown): unknown =>
	typeof value === 'number' && !Number.isInteger(value) ? Number(value.toFixed(3)) : value;

/** Text that may stand inside a script element whatever it holds. */
const safeJson = (value: unknown): string =>
	JSON.stringify(value, shortened)
		.replaceAll('<', '\\u003c')
		.replaceAll('\u2028', '\\u2028')
		.replaceAll('\u2029', '\\u2029');

/** The page's markup with its words in the language spoken, `{pocket.title}` for each. */
const spokenMarkup = (markup: string): string =>
	markup
		.replace(/\{(pocket\.\w+)\}/g, (_, key: string) => {
			if (!isSaid(key)) throw new TypeError(`expected words for ${key} in the pocket page`);
			return say(key).replaceAll('&', '&amp;').replaceAll('"', '&quot;');
		})
		.replace('<html lang="en">', `<html lang="${spokenLanguage()}">`);

/** One self-contained HTML file: the season, the judging code and as many pictures as there is room for; works without any network. */
async function pocketFile(input: SeasonInput, store: Store): Promise<string> {
	const data: PocketData = { language: spokenLanguage(), input: leanInput(input), pictures: {} };
	const [page, style, script] = await Promise.all([
		partOf('pocket/pocket.html'),
		partOf('pocket/pocket.css'),
		partOf('dist-pocket/pocket.js'),
	]);
	const used = Buffer.byteLength(safeJson(data)) + Buffer.byteLength(script) + Buffer.byteLength(style) + MARKUP_BYTES;
	const shown = input.garments.filter(({ place }) => place === 'rail' || place === 'stored');
	const pictures = await pocketPictures(store, shown, POCKET_MAX_BYTES - used);
	const parts: Readonly<Record<string, string>> = {
		style: `<style>${style}</style>`,
		data: `<script id="data" type="application/json">${safeJson({ ...data, pictures })}</script>`,
		script: `<script>${script.replaceAll('</script', '<\\/script')}</script>`,
	};
	return spokenMarkup(page).replace(/<!--(style|data|script)-->/g, (_, name: string) => parts[name]!);
}

/** The pocket page of a season: everything that a piece found for sale is held against. */
export async function seasonPocketFile(services: Services, seasonId: string): Promise<string> {
	const season = await foundIn(services.store.seasons, 'season')(seasonId);
	return pocketFile(await loadSeasonInput(services, season), services.store);
}
