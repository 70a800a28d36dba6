import { readFile } from 'node:fs/promises';
import type { Lab65 } from '../colour/lab65.ts';
import { colourName } from '../colour/name.ts';
import { backgroundColour } from '../reading/light/background.ts';
import { patchColour } from '../reading/light/eyedropper.ts';
import { lightOf } from '../reading/light/light.ts';
import { trustOf } from '../reading/light/trust.ts';
import { photoQuality } from '../reading/photo-quality.ts';
import { type Pixels, visiblePixels } from '../reading/pixels.ts';
import { clothPixels, framePixels, insideClothes } from '../reading/swatches/cloth-pixels.ts';
import { type Shade, shadesOf } from '../reading/swatches/shades.ts';
import { type RawSwatch, swatchesOf } from '../reading/swatches/swatches.ts';
import type { Correction, Pattern, Reading } from '../wardrobe/words/reading.ts';
import { SLOTS, type Slot } from '../wardrobe/words/slot.ts';
import { type DecodedPhoto, decodePhoto } from './file/decode.ts';
import { type DerivedPictures, derivedPictures } from './file/derived-pictures.ts';
import { type ReadFailure, readFailure } from './file/read-failure.ts';
import { outlineOf } from './networks/outline/outline.ts';
import { parsePhoto } from './networks/outline/parser.ts';
import { patternOf } from './networks/pattern/pattern.ts';
import { sceneSwatches } from './scene.ts';

export type Point = { readonly x: number; readonly y: number };

/** What is wanted of a reading beyond the reading itself. */
export type ReadOptions = {
	/** What the user told about the photo; points in pixels of the upright original. */
	readonly correction?: Correction;
	/** The user's outline as a grey PNG, 255 = clothes; wins over the parser. */
	readonly mask?: Uint8Array;
	/** White of the photo's same-light group as it looks uncorrected. */
	readonly groupCast?: Lab65 | null;
	/** Number of plain clusters wanted besides the swatches. */
	readonly shades?: number;
	/** Points whose colour is wanted, in pixels of the upright original. */
	readonly at?: readonly Point[];
	/** Also make thumbnail, display copy, label map and cut-out. */
	readonly derived?: boolean;
};

export type PointColour = Point & { readonly lab: Lab65; readonly uncorrected: Lab65; readonly name: string };

export type ReadSuccess = {
	readonly ok: true;
	readonly reading: Reading;
	readonly derived: Partial<DerivedPictures>;
	readonly shades?: readonly Shade[];
	readonly at?: readonly PointColour[];
	/** Milliseconds the reading took. */
	readonly ms: number;
};

export type ReadResult = ReadSuccess | (ReadFailure & { readonly ms: number });

/** Points of the upright original in pixels of the analysed picture. */
const toAnalysis = ({ analysis, widthPx, heightPx }: DecodedPhoto, { x, y }: Point): Point => ({
	x: (x / widthPx) * analysis.widthPx,
	y: (y / heightPx) * analysis.heightPx,
});

function scaledCorrection(photo: DecodedPhoto, correction: Correction): Correction {
	const { neutral } = correction;
	return neutral ? { ...correction, neutral: { ...neutral, ...toAnalysis(photo, neutral) } } : correction;
}

/** Pattern of each slot seen. `pictureScale`: pixels of the upright original per analysed one. */
async function patternsOf(
	pixels: Pixels,
	marks: Uint8Array,
	raw: readonly RawSwatch[],
	pictureScale: number,
): Promise<[Slot, Pattern][]> {
	const patterns: [Slot, Pattern][] = [];
	for (const [index, slot] of SLOTS.entries()) {
		const own = raw.filter((swatch) => swatch.slot === slot);
		if (own.length > 0) patterns.push([slot, await patternOf(pixels, marks, index + 1, own, pictureScale)]);
	}
	return patterns;
}

async function readDecoded(photo: DecodedPhoto, options: ReadOptions): Promise<Omit<ReadSuccess, 'ms'> | ReadFailure> {
	const { analysis } = photo;
	const outline = await outlineOf(analysis, await parsePhoto(analysis), options);
	const isScene = outline.photoKind === 'scene';
	const inside = isScene ? null : insideClothes(outline.labels);
	const cloths = inside ? clothPixels(analysis, inside) : [framePixels(analysis)];
	const raw = isScene ? await sceneSwatches(analysis) : swatchesOf(cloths);
	if (raw.length === 0)
		return readFailure('not-a-photo', 'Expected something to see in the photo; all of it is transparent.');

	const { light, correct } = lightOf(
		analysis,
		isScene ? null : outline.labels,
		scaledCorrection(photo, options.correction ?? {}),
		options.groupCast ?? null,
	);
	const swatches = raw.map(({ lab, share, slot }) => {
		const corrected = correct(lab);
		return { lab: corrected, share, slot, name: colourName(corrected) };
	});
	const pictureScale = photo.widthPx / analysis.widthPx;
	const patterns = inside ? await patternsOf(analysis, inside.marks, raw, pictureScale) : [];
	// The whole clothing's pattern is its largest piece's.
	const main = patterns.find(([slot]) => slot === raw[0]!.slot)?.[1];
	const reading: Reading = {
		photoKind: outline.photoKind,
		swatches,
		uncorrected: raw.map(({ lab }) => lab),
		kindGuesses: outline.kindGuesses,
		pattern: main ?? (await patternOf(analysis, visiblePixels(analysis), 1, raw, pictureScale)),
		patternBySlot: Object.fromEntries(patterns),
		light,
		trust: trustOf(light, photoQuality(analysis, isScene ? null : outline.labels)),
		background: isScene ? null : backgroundColour(analysis, outline.labels),
		widthPx: photo.widthPx,
		heightPx: photo.heightPx,
		takenAt: photo.takenAt,
	};
	return {
		ok: true,
		reading,
		derived: options.derived ? await derivedPictures(photo.display, analysis, outline.labels) : {},
		...(options.shades ? { shades: shadesOf(cloths, options.shades) } : {}),
		...(options.at
			? {
					at: options.at.map((point) => {
						const { x, y } = toAnalysis(photo, point);
						const uncorrected = patchColour(analysis, x, y);
						const lab = correct(uncorrected);
						return { ...point, lab, uncorrected, name: colourName(lab) };
					}),
				}
			: {}),
	};
}

/**
 * Reads one photo: decode, outline, swatches, light, pattern, trust. Same bytes and options, same numbers (but for `ms`). `source` is a path or
 * the file's bytes. What a photo can do to us is a result, never an exception.
 */
export async function readPhoto(source: string | Uint8Array, options: ReadOptions = {}): Promise<ReadResult> {
	const start = performance.now();
	const elapsed = () => Math.round(performance.now() - start);
	let bytes: Uint8Array;
	try {
		bytes = typeof source === 'string' ? await readFile(source) : source;
	} catch (error) {
		const message = `Expected a photo that can be opened; ${String(source)} cannot (${(error as NodeJS.ErrnoException).code}).`;
		return { ...readFailure('missing', message), ms: elapsed() };
	}
	const photo = await decodePhoto(bytes);
	const result = photo.ok ? await readDecoded(photo, options) : photo;
	return { ...result, ms: elapsed() };
}
