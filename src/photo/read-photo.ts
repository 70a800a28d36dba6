import { readFile } from 'node:fs/promises';
import type { Lab65 } from '../colour/lab65.ts';
import { colourName } from '../colour/name.ts';
import { say } from '../language/speak.ts';
import { seenGround } from '../reading/ground/seen-ground.ts';
import { patchColour } from '../reading/light/eyedropper.ts';
import { outlineOf } from '../reading/outline/outline.ts';
import { labelOfSlot, type Pixels } from '../reading/pixels.ts';
import { type PixelReading, readingOfPixels } from '../reading/reading-of-pixels.ts';
import { type Shade, shadesOf } from '../reading/swatches/shades.ts';
import type { Light } from '../wardrobe/words/light.ts';
import { type Correction, neutralsOf, type Pattern, type Reading } from '../wardrobe/words/reading.ts';
import { SLOTS, type Slot } from '../wardrobe/words/slot.ts';
import { accentsOf } from './accents.ts';
import { type DecodedPhoto, decodePhoto } from './file/decode.ts';
import { type DerivedPictures, derivedPictures } from './file/derived-pictures.ts';
import { maskFromFile } from './file/mask-file.ts';
import { type ReadFailure, readFailure } from './file/read-failure.ts';
import { piecesLaidOut } from './laid-out-pieces.ts';
import { parsePhoto } from './networks/outline/parser.ts';
import { patternOf } from './networks/pattern/pattern.ts';
import { piecesOfPhoto } from './pieces-of-photo.ts';

export type Point = { readonly x: number; readonly y: number };

/** What is wanted of a reading beyond the reading itself. */
export type ReadOptions = {
	/** What the user told about the photo; points in pixels of the upright original. */
	readonly correction?: Correction;
	/** The user's outline as a grey PNG, 255 = clothes; wins over the parser. */
	readonly mask?: Uint8Array;
	/** The light that the photo shares with others: its ground's or its same-light group's. */
	readonly sharedLight?: Light | null;
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
	const neutrals = neutralsOf(correction).map((point) => ({ ...point, ...toAnalysis(photo, point) }));
	return { ...correction, neutrals };
}

/** Pattern of each slot seen; none for a scene. `pictureScale`: pixels of the upright original per analysed one. */
async function patternsOf(
	pixels: Pixels,
	{ marks, swatches }: PixelReading,
	pictureScale: number,
): Promise<[Slot, Pattern][]> {
	const patterns: [Slot, Pattern][] = [];
	for (const slot of SLOTS) {
		const own = swatches.filter((swatch) => swatch.slot === slot);
		if (own.length > 0) patterns.push([slot, await patternOf(pixels, marks, labelOfSlot(slot), own, pictureScale)]);
	}
	return patterns;
}

/** The colour at a point of the upright original. */
function pointColour(photo: DecodedPhoto, point: Point, correct: PixelReading['correct']): PointColour {
	const { x, y } = toAnalysis(photo, point);
	const uncorrected = patchColour(photo.analysis, x, y);
	const lab = correct(uncorrected);
	return { ...point, lab, uncorrected, name: colourName(lab) };
}

async function readDecoded(photo: DecodedPhoto, options: ReadOptions): Promise<Omit<ReadSuccess, 'ms'> | ReadFailure> {
	const { analysis } = photo;
	const mask = options.mask ? await maskFromFile(options.mask, analysis) : null;
	const parse = await parsePhoto(analysis);
	const { photoKind, labels, kindGuesses } = outlineOf(analysis, parse, mask);
	const isScene = photoKind === 'scene';
	const read = readingOfPixels(analysis, isScene ? null : labels, {
		correction: scaledCorrection(photo, options.correction ?? {}),
		camera: photo.camera,
		sharedLight: options.sharedLight ?? null,
		...(isScene ? { accents: await accentsOf(analysis) } : {}),
	});
	if (!read) return readFailure('not-a-photo', say('photoFiles.transparent'));
	const { swatches, uncorrected, background, marks, cloths, correct } = read;
	const { light, ownLight, trust, quality, neutrals } = read;
	const pictureScale = photo.widthPx / analysis.widthPx;
	const picture = { pixels: analysis, read, pictureScale, noPieces: parse.noPieces };
	const patterns = await patternsOf(analysis, read, pictureScale);
	// The whole clothing's pattern is its largest piece's.
	const main = patterns.find(([slot]) => slot === swatches[0]!.slot)?.[1];
	const reading: Reading = {
		photoKind,
		swatches,
		uncorrected,
		kindGuesses,
		pattern: main ?? (await patternOf(analysis, marks, 1, swatches, pictureScale)),
		patternBySlot: Object.fromEntries(patterns),
		...(photoKind === 'worn'
			? {
					pieces: await piecesOfPhoto({
						...picture,
						labels,
						shown: parse.picture,
						patterns: new Map(patterns),
					}),
				}
			: {}),
		...(photoKind === 'single' && !mask && !analysis.alpha ? await piecesLaidOut(picture, labels, parse) : {}),
		light,
		ownLight,
		trust,
		quality,
		...(neutrals ? { neutrals } : {}),
		background,
		...(photoKind === 'single' ? { ground: seenGround(analysis, labels) } : {}),
		widthPx: photo.widthPx,
		heightPx: photo.heightPx,
		takenAt: photo.takenAt,
	};
	return {
		ok: true,
		reading,
		derived: options.derived ? await derivedPictures(photo.display, analysis, labels) : {},
		...(options.shades ? { shades: shadesOf(cloths, options.shades) } : {}),
		...(options.at ? { at: options.at.map((point) => pointColour(photo, point, correct)) } : {}),
	};
}

/** Why a file cannot be opened, by the system's code (POSIX.1-2017, errno.h). */
const UNOPENED = ['EACCES', 'EISDIR', 'ENOENT', 'ENOTDIR'] as const;

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
		const { code = 'unknown' } = error as NodeJS.ErrnoException;
		const named = UNOPENED.find((one) => one === code);
		const message = say('photoFiles.unopened', {
			path: String(source),
			what: named ? say(`unopened.${named}`) : say('unopened.other', { code }),
		});
		return { ...readFailure('missing', message), ms: elapsed() };
	}
	const photo = await decodePhoto(bytes);
	const result = photo.ok ? await readDecoded(photo, options) : photo;
	return { ...result, ms: elapsed() };
}
