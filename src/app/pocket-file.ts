import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Store } from '../store/store.ts';
import { pairContextOf } from '../wardrobe/pairs/pair-context.ts';
import { soughtPieces } from '../wardrobe/pictures/sought-pieces.ts';
import { wearableBoard } from '../wardrobe/pictures/wearable-pictures.ts';
import type { PocketData } from '../wardrobe/season/pocket-data.ts';
import type { Garment } from '../wardrobe/words/garment.ts';
import { KIND_NAMES } from '../wardrobe/words/kind.ts';
import { foundIn } from './found-in.ts';
import { loadSeasonInput } from './load-season.ts';
import type { Services } from './services.ts';

/** The whole file stays under 2 MB, so that any phone opens it and any message carries it. */
const POCKET_MAX_BYTES = 2 * 1024 * 1024;
/** Room for pictures: what is left once code, words and the numbers of a large wardrobe have theirs. */
const PICTURE_ROOM_BYTES = POCKET_MAX_BYTES - 800 * 1024;
const LARGEST_PICTURE_PX = 160;
const SMALLEST_PICTURE_PX = 48;

const partOf = (path: string) => readFile(fileURLToPath(new URL(`../../web/${path}`, import.meta.url)), 'utf8');

/** Small enough that all garments' pictures together keep to the room there is. */
function pictureSidePx(count: number): number {
	// Measured on the demo: a WebP thumbnail at quality 55 takes about 0.12 byte a pixel, a third more as a data address.
	const side = Math.sqrt(PICTURE_ROOM_BYTES / Math.max(1, count) / (0.12 * 1.34));
	return Math.round(Math.min(LARGEST_PICTURE_PX, Math.max(SMALLEST_PICTURE_PX, side)));
}

/** A small picture of each garment as a data address; '' where it has no photo, or no room is left. */
async function pocketPictures(store: Store, garments: readonly Garment[]): Promise<string[]> {
	// Loaded here: nothing else in the server's own process needs it, and it takes a tenth of a second of every start.
	const { default: sharp } = await import('sharp');
	const side = pictureSidePx(garments.length);
	let left = PICTURE_ROOM_BYTES;
	const pictures: string[] = [];
	for (const garment of garments) {
		const thumb = garment.photoIds[0] ? await store.photos.derived(garment.photoIds[0], 'thumb') : null;
		const small = thumb
			? await sharp(thumb).resize(side, side, { fit: 'inside' }).webp({ quality: 55 }).toBuffer()
			: null;
		const address = small ? `data:image/webp;base64,${small.toString('base64')}` : '';
		const fits = address.length <= left;
		if (fits) left -= address.length;
		pictures.push(fits ? address : '');
	}
	return pictures;
}

/** Text that may stand inside a script element whatever it holds. */
const safeJson = (value: unknown): string =>
	JSON.stringify(value).replaceAll('<', '\\u003c').replaceAll('\u2028', '\\u2028').replaceAll('\u2029', '\\u2029');

/** One self-contained HTML file: palette, wishes, garments and the judging code; works without any network. */
async function pocketFile(data: PocketData): Promise<string> {
	const [page, style, script] = await Promise.all([
		partOf('pocket/pocket.html'),
		partOf('pocket/pocket.css'),
		partOf('dist-pocket/pocket.js'),
	]);
	const parts: Readonly<Record<string, string>> = {
		style: `<style>${style}</style>`,
		data: `<script id="data" type="application/json">${safeJson(data)}</script>`,
		script: `<script>${script.replaceAll('</script', '<\\/script')}</script>`,
	};
	return page.replace(/<!--(style|data|script)-->/g, (_, name: string) => parts[name]!);
}

/** The pocket page of a season: what is on the rail or stored, palette, wishes. */
export async function seasonPocketFile(services: Services, seasonId: string): Promise<string> {
	const season = await foundIn(services.store.seasons, 'season')(seasonId);
	const input = await loadSeasonInput(services, season);
	const garments = input.garments.filter((garment) => garment.place === 'rail' || garment.place === 'stored');
	const pictures = await pocketPictures(services.store, garments);
	return pocketFile({
		seasonName: season.name,
		madeOn: input.today,
		palette: input.palette,
		wishes: input.wishes,
		sought: soughtPieces(wearableBoard(input), input.garments),
		garments: garments.map((garment, index) => ({ garment, picture: pictures[index]! })),
		pairings: pairContextOf(input).pairings,
		pairWords: input.pairWords,
		kinds: KIND_NAMES,
	});
}
