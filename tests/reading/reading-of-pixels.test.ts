import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { decodePhoto } from '../../src/photo/file/decode.ts';
import { maskFromFile } from '../../src/photo/file/mask-file.ts';
import { parsePhoto } from '../../src/photo/networks/outline/parser.ts';
import { readPhoto } from '../../src/photo/read-photo.ts';
import { PAPER_LIGHTNESS } from '../../src/reading/light/neutral-guard.ts';
import { HAIR, type Pixels, pixelsFromRgba, SKIN } from '../../src/reading/pixels.ts';
import { type PixelReading, readingOfPixels } from '../../src/reading/reading-of-pixels.ts';
import { KINDS, type Kind } from '../../src/wardrobe/words/kind.ts';
import type { Reading } from '../../src/wardrobe/words/reading.ts';
import type { Slot } from '../../src/wardrobe/words/slot.ts';
import { readingInHand } from '../../web/pocket/reading-in-hand.ts';

/** Rendered garments and the true mask of each: fixtures/renders/README.md. */
const RENDERS = fileURLToPath(new URL('../../fixtures/renders/', import.meta.url));
const photos = readdirSync(RENDERS)
	.filter((name) => name.endsWith('.jpg'))
	.filter((_, index) => index % 4 === 0);

/** The picture as a browser's canvas would hold it. */
function onCanvas({ rgb, widthPx, heightPx }: Pixels): Pixels {
	const rgba = new Uint8ClampedArray(widthPx * heightPx * 4).fill(255);
	for (let i = 0; i < widthPx * heightPx; i++) rgba.set(rgb.subarray(i * 3, i * 3 + 3), i * 4);
	return pixelsFromRgba(rgba, widthPx, heightPx);
}

const kindOfSlot = (slot: Slot) => (Object.keys(KINDS) as Kind[]).find((kind) => KINDS[kind].slot === slot)!;

/** What both tell, as bytes. */
const told = ({ swatches, uncorrected, light, trust, background }: Reading | PixelReading) =>
	JSON.stringify({ swatches, uncorrected, light, trust, background });

describe('one way from pixels to colours', () => {
	it('the reading process and the pocket page tell the same of a photo and a mask, to the byte', async () => {
		let compared = 0;
		for (const name of photos) {
			const bytes = readFileSync(RENDERS + name);
			const mask = readFileSync(RENDERS + name.replace('.jpg', '.mask.png'));
			const photo = await decodePhoto(bytes);
			if (!photo.ok) throw new Error(photo.message);
			// At home a network takes skin and hair out of the background; the pocket page has none.
			if ((await parsePhoto(photo.analysis)).classes.some((label) => label === SKIN || label === HAIR)) continue;
			const marked = await maskFromFile(mask, photo.analysis);
			for (const white of [null, { x: 20, y: 30 }]) {
				const neutrals = white ? [{ ...white, lightness: PAPER_LIGHTNESS }] : [];
				const atHome = await readPhoto(bytes, { mask, correction: { neutrals } });
				if (!atHome.ok) throw new Error(atHome.message);
				const kind = kindOfSlot(atHome.reading.swatches[0]!.slot!);
				const held = { pixels: onCanvas(photo.analysis), camera: photo.camera };
				const inHand = readingInHand(held, marked, kind, neutrals);
				expect(told(inHand!), name).toBe(told(atHome.reading));
				compared++;
			}
		}
		expect(compared).toBeGreaterThanOrEqual(16);
	});

	it('tells nothing where nothing is marked or all is transparent', () => {
		const pixels = { widthPx: 2, heightPx: 2, rgb: new Uint8Array(12), alpha: null };
		expect(readingInHand({ pixels, camera: 'phone' }, new Uint8Array(4), 'shirt', [])).toBeNull();
		expect(readingOfPixels({ ...pixels, alpha: new Uint8Array(4) }, null)).toBeNull();
	});
});
