import { paletteCss } from '../store/export/palette-css.ts';
import { paletteSvg } from '../store/export/palette-svg.ts';
import { paletteTokens } from '../store/export/palette-tokens.ts';
import type { HomeReads } from '../store/store.ts';
import type { Palette } from '../wardrobe/words/palette-colour.ts';
import { paletteOf } from './decisions/palette-answer.ts';
import { foundIn } from './found-in.ts';

/** Endings of the files in which a palette can be taken along. */
export const PALETTE_FILES = ['css', 'tokens.json', 'svg', 'png'] as const;
export type PaletteFileEnding = (typeof PALETTE_FILES)[number];

type Format = {
	readonly type: string;
	readonly make: (palette: Palette, name: string) => unknown | Promise<unknown>;
};

async function palettePng(palette: Palette, name: string): Promise<Buffer> {
	// Loaded here, as in the pocket file: the server's own process draws nothing else.
	const { default: sharp } = await import('sharp');
	return sharp(Buffer.from(paletteSvg(palette, name)))
		.png()
		.toBuffer();
}

const FORMATS: Readonly<Record<PaletteFileEnding, Format>> = {
	css: { type: 'text/css', make: paletteCss },
	'tokens.json': { type: 'application/json', make: paletteTokens },
	svg: { type: 'image/svg+xml', make: paletteSvg },
	png: { type: 'image/png', make: palettePng },
};

/** The season's palette as a file: its media type and what is in it. */
export async function paletteFile(
	home: HomeReads,
	seasonId: string,
	ending: PaletteFileEnding,
): Promise<{ readonly type: string; readonly body: unknown }> {
	const season = await foundIn(home.seasons, 'season')(seasonId);
	const { type, make } = FORMATS[ending];
	return { type, body: await make(await paletteOf(home, seasonId), season.name) };
}
