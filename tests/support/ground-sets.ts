import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { LINEAR_OF_8_BIT } from '../../src/colour/lab-pixels.ts';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { medianLab } from '../../src/colour/median-lab.ts';
import type { GroundPhoto } from '../../src/reading/ground/agreed-ground.ts';
import { seenGround } from '../../src/reading/ground/seen-ground.ts';
import { UNTOLD_PHONE } from '../../src/reading/light/light-model.ts';
import type { LabelMap, Pixels } from '../../src/reading/pixels.ts';
import { insideClothes, sampleOf } from '../../src/reading/swatches/cloth-pixels.ts';
import type { Light } from '../../src/wardrobe/words/light.ts';
import { deterministicNoise } from './noise.ts';

/** A rendered photo of one garment on a ground, as a phone would have taken it. */
export type GroundShot = {
	readonly id: string;
	readonly ground: string;
	readonly garment: string;
	/** The cloth's true colour, the largest one. */
	readonly truth: Lab65;
	/** The cloth's colour in the photo. */
	readonly seen: Lab65;
	/** The photo as its ground's set knows it. */
	readonly photo: GroundPhoto;
};

/** What a photo says of its light that has nothing neutral in it. */
const UNTOLD: Light = { source: 'none', cast: null, strength: 0, reason: '', model: UNTOLD_PHONE, error: 10 };

/** What a phone's automatic settings do from one photo to the next, in stops as standard deviations, and what it does to all of them. */
const DRIFT = { warmth: 0.35, green: 0.08, exposure: 0.5 };
const PHONE = { press: 0.5, saturation: 1.2, noise: 1.2 };

const folder = new URL('../../fixtures/grounds/', import.meta.url);

type Truth = {
	readonly file: string;
	readonly maskFile: string;
	readonly ground: string;
	readonly garment: string;
	readonly colours: readonly { readonly lab: Lab65; readonly share: number }[];
};

const rawOf = (file: string, channels: 1 | 3) =>
	sharp(fileURLToPath(new URL(file, folder)))
		.toColourspace(channels === 1 ? 'b-w' : 'srgb')
		.raw()
		.toBuffer({ resolveWithObject: true });

/** Bytes of sRGB (IEC 61966-2-1), unrounded, of linear light in so many steps. */
const STEPS = 8192;
const ENCODED = Float64Array.from(
	{ length: STEPS + 1 },
	(_, step) => 255 * (step / STEPS <= 0.0031308 ? (12.92 * step) / STEPS : 1.055 * (step / STEPS) ** (1 / 2.4) - 0.055),
);

/** About normal, mean 0, deviation 1: twelve even numbers added up. */
const normal = (next: () => number): number => Array.from({ length: 12 }, next).reduce((sum, one) => sum + one, 0) / 2;

/** The exact picture as a phone writes it: balanced and exposed a little wrong, lights pressed together, more saturated, a little noise. */
function asPhoned(exact: Uint8Array, seed: number): Uint8Array {
	const next = deterministicNoise(seed);
	for (let warm = 0; warm < 8; warm++) next();
	const [warmth, green] = [DRIFT.warmth * normal(next), DRIFT.green * normal(next)];
	const stops = DRIFT.exposure * normal(next);
	// Warmth as black bodies have it, and magenta against green across it, both as `lamp-casts.ts` has them.
	const gains = [0.53 * warmth + 0.85 * green, 0, -0.85 * warmth + 0.53 * green].map((gain) => 2 ** (gain + stops));
	const out = new Uint8Array(exact.length);
	const linear = new Float64Array(3);
	for (let at = 0; at < exact.length; at += 3) {
		for (let k = 0; k < 3; k++) linear[k] = gains[k]! * LINEAR_OF_8_BIT[exact[at + k]!]!;
		const grey = 0.2126 * linear[0]! + 0.7152 * linear[1]! + 0.0722 * linear[2]!;
		// Lights above middle grey are pressed under 1, as every phone's curve does.
		const pressed = (1 + PHONE.press) / (1 + PHONE.press * grey);
		for (let k = 0; k < 3; k++) {
			const light = pressed * (grey + PHONE.saturation * (linear[k]! - grey));
			const byte = ENCODED[Math.round(STEPS * Math.min(1, Math.max(0, light)))]!;
			out[at + k] = Math.min(255, Math.max(0, byte + PHONE.noise * next() + 0.5));
		}
	}
	return out;
}

/** All shots of all grounds, each phoned with a drift of its own; `round` gives another drift. */
export async function groundShots(round = 0): Promise<GroundShot[]> {
	const truths = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as Truth[];
	return Promise.all(
		truths.map(async ({ file, maskFile, ground, garment, colours }, index) => {
			const [picture, mask] = await Promise.all([rawOf(file, 3), rawOf(maskFile, 1)]);
			const { width: widthPx, height: heightPx } = picture.info;
			const rgb = asPhoned(new Uint8Array(picture.data), 7919 * (index + 1) + 104729 * round);
			const pixels: Pixels = { widthPx, heightPx, rgb, alpha: null };
			const classes = Uint8Array.from(mask.data, (value) => (value >= 128 ? 1 : 0));
			const labels: LabelMap = { widthPx, heightPx, classes };
			const truth = [...colours].sort((a, b) => b.share - a.share)[0]!.lab;
			const seen = medianLab(sampleOf(pixels, insideClothes(labels).marks, 1, 'top').labs);
			const photo: GroundPhoto = {
				id: file,
				ground: seenGround(pixels, labels)!,
				camera: 'phone',
				ownLight: UNTOLD,
				cloth: [seen],
			};
			return { id: file, ground, garment, truth, seen, photo };
		}),
	);
}

/** The shots of several drifts as one set of photos a ground: as many as a wardrobe photographed on one floor has. */
export async function groundShotsOf(rounds: number): Promise<GroundShot[]> {
	const all = await Promise.all(Array.from({ length: rounds }, (_, round) => groundShots(round)));
	return all.flatMap((shots, round) =>
		shots.map((shot) => {
			const id = `${shot.id} ${round}`;
			return { ...shot, id, photo: { ...shot.photo, id } };
		}),
	);
}
