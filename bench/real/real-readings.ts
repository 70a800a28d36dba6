import { readFileSync } from 'node:fs';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import { type Kind, slotOfKind } from '../../src/wardrobe/words/kind.ts';
import { newGarment } from '../../src/wardrobe/words/new-garment.ts';
import type { Reading, Swatch, Trust } from '../../src/wardrobe/words/reading.ts';

/** One line of `dyelot read --json`, as far as it is used here. */
type Line = {
	readonly photo: string;
	readonly ok: boolean;
	readonly swatches: readonly Swatch[];
	readonly light: Reading['light'];
	readonly trust: Trust;
};

/** A photo of a list: whose home it is of and what it shows; `outfit` = somebody dressed, of no home. */
type Listed = { readonly photo: string; readonly home: string; readonly kind: Kind | 'outfit' };

const readLines = (file: string): Line[] =>
	readFileSync(file, 'utf8')
		.split('\n')
		.filter((text) => text !== '')
		.map((text) => JSON.parse(text) as Line);

/** The list: a header, then `photo,home,kind` a line. */
const listed = (file: string): Listed[] =>
	readFileSync(file, 'utf8')
		.split('\n')
		.slice(1)
		.filter((text) => text !== '')
		.map((text) => {
			const [photo = '', home = '', kind = ''] = text.split(',');
			return { photo, home, kind: kind as Listed['kind'] };
		});

const asGarment = ({ photo, swatches, trust }: Line, kind: Kind): Garment => ({
	...newGarment(photo, photo, '2026-01-01T00:00:00Z', { kind, kindFrom: 'user', photoIds: [photo] }),
	swatches: swatches.map((swatch) => ({ ...swatch, slot: slotOfKind(kind) })),
	pattern: { type: 'plain', sure: 0.9 },
	trust,
});

const asReading = ({ swatches, light, trust }: Line): Reading => ({
	photoKind: 'worn',
	swatches,
	uncorrected: swatches.map(({ lab }) => lab),
	kindGuesses: [],
	pattern: { type: 'plain', sure: 0.9 },
	patternBySlot: {},
	light,
	trust,
	background: null,
	widthPx: 256,
	heightPx: 384,
	takenAt: null,
});

/** Real homes and real outfits as the program read them. */
export type RealReadings = { readonly homes: readonly (readonly Garment[])[]; readonly outfits: readonly Reading[] };

/** From what `dyelot read --json` said of the photos (`readings`) and what they are of (`list`, see above); photos that could not be read are left out. */
export function realReadings(readings: string, list: string): RealReadings {
	const lineOf = new Map(readLines(readings).map((line) => [line.photo, line]));
	const homes = new Map<string, Garment[]>();
	const outfits: Reading[] = [];
	for (const { photo, home, kind } of listed(list)) {
		const line = lineOf.get(photo);
		if (!line?.ok || line.swatches.length === 0) continue;
		if (kind === 'outfit') outfits.push(asReading(line));
		else homes.set(home, [...(homes.get(home) ?? []), asGarment(line, kind)]);
	}
	return { homes: [...homes.values()], outfits };
}
