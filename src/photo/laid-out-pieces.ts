import { deltaE2000 } from '../colour/delta-e.ts';
import { medianLab } from '../colour/median-lab.ts';
import { garmentMarks } from '../reading/apart/garment-marks.ts';
import { clothRegions, laidOutGarments, splitProposal } from '../reading/apart/laid-out.ts';
import type { PieceBox } from '../reading/kinds/piece-box.ts';
import { kindGuesses } from '../reading/outline/kind-guesses.ts';
import type { LabelMap, Pixels } from '../reading/pixels.ts';
import { sampleOf } from '../reading/swatches/cloth-pixels.ts';
import { type Kind, slotOfKind } from '../wardrobe/words/kind.ts';
import type { LikelyKind, PictureBox, Piece, Reading } from '../wardrobe/words/reading.ts';
import { waysToMiddles } from './networks/apart/apart-network.ts';
import { type ParsedPhoto, parsePhoto } from './networks/outline/parser.ts';
import { patternOf } from './networks/pattern/pattern.ts';
import { kindsKept, ownSwatches, type PictureOfPieces, sureKind } from './piece-of-photo.ts';

/** Part of a garment's longer side that its own picture shows around it. */
const AROUND = 0.08;

/** A garment that lies by itself: what it may be, where (a pair in two places), and its pixels. */
export type SeenGarment = {
	readonly kinds: readonly LikelyKind[];
	readonly boxes: readonly PieceBox[];
	readonly marks: Uint8Array;
};

/** The part of a picture in a box and a little around it, as a picture of its own. */
function partOf({ rgb, widthPx, heightPx }: Pixels, box: PieceBox): Pixels {
	const margin = Math.round(AROUND * Math.max(box.right - box.left, box.bottom - box.top));
	const left = Math.max(0, box.left - margin);
	const right = Math.min(widthPx, box.right + margin);
	const top = Math.max(0, box.top - margin);
	const bottom = Math.min(heightPx, box.bottom + margin);
	const part = new Uint8Array((right - left) * (bottom - top) * 3);
	for (let row = top, to = 0; row < bottom; row++, to += (right - left) * 3)
		part.set(rgb.subarray((row * widthPx + left) * 3, (row * widthPx + right) * 3), to);
	return { widthPx: right - left, heightPx: bottom - top, rgb: part, alpha: null };
}

/** From this probability on it is looked where garments part: nearly all pictures of several, 7 % of photos of one (the outline network's training report). */
const SEVERAL_FROM = 0.05;

/** Kinds that come in twos: both together are one garment. */
const PAIRED: ReadonlySet<Kind> = new Set([
	'shoes',
	'boots',
	'heels',
	'sandals',
	'flats',
	'trainers',
	'socks',
	'gloves',
]);
/** The two of a pair are about as large, and of a colour (CIEDE2000): one may lie in the other's shadow, or show its sole. */
const PAIR_AREAS = 2;
const PAIR_COLOURS = 15;
/** From this probability on the kind of a garment that lies by itself is said; measured on composites, see the kinds network's model card. */
const SURE_FROM = 0.8;

const isOfTwo = ({ kinds }: SeenGarment): boolean => kinds[0] !== undefined && PAIRED.has(kinds[0].kind);

function isPair(pixels: Pixels, one: SeenGarment, other: SeenGarment): boolean {
	// One of them known for a shoe is enough: its fellow may lie on its side.
	if (!isOfTwo(one) && !isOfTwo(other)) return false;
	const [first, second] = [one, other].map(({ marks }) => sampleOf(pixels, marks, 1, null));
	const ratio = first!.area / second!.area;
	if (ratio > PAIR_AREAS || ratio < 1 / PAIR_AREAS) return false;
	return deltaE2000(medianLab(first!.labs), medianLab(second!.labs)) < PAIR_COLOURS;
}

/** Regions that are the two of a pair, joined. */
function pairsJoined(pixels: Pixels, seen: readonly SeenGarment[]): SeenGarment[] {
	const joined: SeenGarment[] = [];
	for (const one of seen) {
		const at = joined.findIndex((other) => other.boxes.length === 1 && isPair(pixels, one, other));
		const first = joined[at];
		if (!first) joined.push(one);
		else
			joined[at] = {
				kinds: isOfTwo(first) ? first.kinds : one.kinds,
				boxes: [...first.boxes, ...one.boxes],
				marks: first.marks.map((mark, place) => mark | one.marks[place]!),
			};
	}
	return joined;
}

function pictureBox({ boxes }: SeenGarment, { widthPx, heightPx }: Pixels): PictureBox {
	return {
		left: Math.min(...boxes.map(({ left }) => left)) / widthPx,
		top: Math.min(...boxes.map(({ top }) => top)) / heightPx,
		right: Math.max(...boxes.map(({ right }) => right)) / widthPx,
		bottom: Math.max(...boxes.map(({ bottom }) => bottom)) / heightPx,
	};
}

async function pieceOf(picture: PictureOfPieces, { kinds, marks }: SeenGarment): Promise<Piece[]> {
	const [first] = kinds;
	if (!first) return [];
	const slot = slotOfKind(first.kind);
	const swatches = ownSwatches(picture, { slot, marks });
	if (swatches.length === 0) return [];
	const area = marks.reduce((sum, mark) => sum + mark, 0);
	const kept = kindsKept(picture, kinds);
	return [
		{
			slot,
			kind: sureKind(kept, SURE_FROM),
			kinds: kept,
			share: area / marks.length,
			pattern: await patternOf(picture.pixels, marks, 1, swatches, picture.pictureScale),
			swatches,
		},
	];
}

/** The garments that a photo without a person shows apart from each other, touching or not; fewer than two where it shows one. */
export async function garmentsApart(pixels: Pixels, labels: LabelMap, parse: ParsedPhoto): Promise<SeenGarment[]> {
	if (parse.several < SEVERAL_FROM && clothRegions(labels) < 2) return [];
	const numbers = garmentMarks(labels, parse.picture.frame, await waysToMiddles(parse.picture, labels));
	const garments = laidOutGarments(numbers, labels.widthPx);
	if (garments.length < 2) return [];
	const seen: SeenGarment[] = [];
	for (const { marks, box } of garments) {
		const { garmentKind } = await parsePhoto(partOf(pixels, box));
		seen.push({ kinds: kindGuesses(garmentKind), boxes: [box], marks });
	}
	return pairsJoined(pixels, seen);
}

/**
 * The garments of a photo that shows several and nobody who wears them (a bed with three things, a collage of cut-outs), the largest first, and how the
 * photo may be split; nothing where one garment is seen. Each is looked at again by itself, so that one garment costs nothing more.
 */
export async function piecesLaidOut(
	picture: PictureOfPieces,
	labels: LabelMap,
	parse: ParsedPhoto,
): Promise<Pick<Reading, 'pieces' | 'proposal'>> {
	const apart = await garmentsApart(picture.pixels, labels, parse);
	if (apart.length < 2) return {};
	const pieces: Piece[] = [];
	for (const one of apart) pieces.push(...(await pieceOf(picture, one)));
	return {
		pieces: pieces.sort((one, other) => other.share - one.share),
		proposal: splitProposal(apart.map((one) => pictureBox(one, picture.pixels))),
	};
}
