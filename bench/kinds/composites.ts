import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Pixels } from '../../src/reading/pixels.ts';

/** One garment of a composite: its kind's folder, and its pixels there. */
export type Placed = { readonly kind: string; readonly marks: Uint8Array };
export type Composite = { readonly pixels: Pixels; readonly garments: readonly Placed[] };

const [WIDTH, HEIGHT] = [480, 640];
/** Cells of some lay-outs: left, top, width, height as shares of the picture. */
const LAYOUTS: readonly (readonly (readonly [number, number, number, number])[])[] = [
	[
		[0.03, 0.2, 0.45, 0.6],
		[0.52, 0.2, 0.45, 0.6],
	],
	[
		[0.1, 0.03, 0.8, 0.45],
		[0.1, 0.52, 0.8, 0.45],
	],
	[
		[0.03, 0.03, 0.45, 0.45],
		[0.52, 0.03, 0.45, 0.45],
		[0.2, 0.52, 0.6, 0.45],
	],
	[
		[0.03, 0.03, 0.45, 0.45],
		[0.52, 0.03, 0.45, 0.45],
		[0.03, 0.52, 0.45, 0.45],
		[0.52, 0.52, 0.45, 0.45],
	],
];

/** Numbers 0..1 from a seed, the same each time (Marsaglia 2003, xorshift). */
export function drawing(seed: number): () => number {
	let state = seed * 2654435761 + 1;
	return () => {
		state ^= state << 13;
		state ^= state >>> 17;
		state ^= state << 5;
		return (state >>> 0) / 4294967296;
	};
}

/** The largest corner of a photo that shows ground only, mirrored until it fills the picture. */
async function groundOf(photo: string, outline: string): Promise<Buffer> {
	const { data, info } = await sharp(outline)
		.extractChannel(0)
		.toColourspace('b-w')
		.raw()
		.toBuffer({ resolveWithObject: true });
	const { width, height } = info;
	let best = { left: 0, top: 0, width: 8, height: 8 };
	for (const share of [0.6, 0.5, 0.4, 0.3, 0.2, 0.15]) {
		const [w, h] = [Math.floor(width * share), Math.floor(height * share)];
		const corners = [
			[0, 0],
			[width - w, 0],
			[0, height - h],
			[width - w, height - h],
		] as const;
		const isGround = ([left, top]: readonly [number, number]) => {
			for (let y = top; y < top + h; y++)
				for (let x = left; x < left + w; x++) if (data[y * width + x]! > 0) return false;
			return true;
		};
		const free = corners.find(isGround);
		if (free) {
			best = { left: free[0], top: free[1], width: w, height: h };
			break;
		}
	}
	const half = await sharp(photo)
		.extract(best)
		.resize(WIDTH / 2, HEIGHT / 2, { fit: 'fill' })
		.toBuffer();
	return sharp(half)
		.extend({ right: WIDTH / 2, bottom: HEIGHT / 2, extendWith: 'mirror' })
		.removeAlpha()
		.raw()
		.toBuffer();
}

type Source = { readonly kind: string; readonly photo: string; readonly outline: string };

/** A garment cut out, turned a little and fitted into a box: red, green, blue, alpha. */
async function cutOut({ photo, outline }: Source, boxWidth: number, boxHeight: number, degrees: number) {
	const { data: rgb, info } = await sharp(photo).removeAlpha().raw().toBuffer({ resolveWithObject: true });
	const alpha = await sharp(outline).extractChannel(0).toColourspace('b-w').blur(0.8).raw().toBuffer();
	const rgba = new Uint8Array(info.width * info.height * 4);
	for (let at = 0; at < alpha.length; at++) {
		for (let c = 0; c < 3; c++) rgba[at * 4 + c] = rgb[at * 3 + c]!;
		rgba[at * 4 + 3] = alpha[at]!;
	}
	const turned = await sharp(rgba, { raw: { width: info.width, height: info.height, channels: 4 } })
		.rotate(degrees, { background: { r: 0, g: 0, b: 0, alpha: 0 } })
		.png()
		.toBuffer();
	const trimmed = await sharp(turned)
		.trim({ background: { r: 0, g: 0, b: 0, alpha: 0 }, threshold: 1 })
		.png()
		.toBuffer();
	return sharp(trimmed).resize(boxWidth, boxHeight, { fit: 'inside' }).raw().toBuffer({ resolveWithObject: true });
}

/** How garments lie: side by side, or so much nearer the middle and larger that they touch and cover each other. */
export type LaidHow = 'apart' | 'touching';
const NEARER = { apart: 1, touching: 0.72 } as const;
const LARGER = { apart: 1, touching: 1.15 } as const;
/** Share of the picture that must be left to see of a covered garment. */
const LEAST_SEEN = 0.02;

/** A picture of garments cut out along their outlines and laid on the ground of another photo, later ones over earlier ones. */
export async function composite(sources: readonly Source[], seed: number, how: LaidHow): Promise<Composite> {
	const draw = drawing(seed);
	for (let i = 0; i < 8; i++) draw();
	const pick = <T>(from: readonly T[]): T => from[Math.floor(draw() * from.length)]!;
	const layout = LAYOUTS[seed % LAYOUTS.length]!;
	const ground = pick(sources);
	const rgb = new Uint8Array(await groundOf(ground.photo, ground.outline));
	const garments: Placed[] = [];
	for (const [left, top, width, height] of layout) {
		const source = pick(sources);
		const size = (0.8 + 0.18 * draw()) * LARGER[how];
		const { data, info } = await cutOut(
			source,
			Math.round(width * WIDTH * size),
			Math.round(height * HEIGHT * size),
			Math.round(20 * draw() - 10),
		);
		const [x0, y0] = [
			Math.round((0.5 + (left + width / 2 - 0.5) * NEARER[how]) * WIDTH - info.width / 2),
			Math.round((0.5 + (top + height / 2 - 0.5) * NEARER[how]) * HEIGHT - info.height / 2),
		];
		const marks = new Uint8Array(WIDTH * HEIGHT);
		for (let y = 0; y < info.height; y++)
			for (let x = 0; x < info.width; x++) {
				const from = (y * info.width + x) * 4;
				const at = (y + y0) * WIDTH + x + x0;
				const share = data[from + 3]! / 255;
				for (let c = 0; c < 3; c++) rgb[at * 3 + c] = data[from + c]! * share + rgb[at * 3 + c]! * (1 - share);
				if (share <= 0.5) continue;
				marks[at] = 1;
				for (const below of garments) below.marks[at] = 0;
			}
		garments.push({ kind: source.kind, marks });
	}
	const seen = garments.filter(({ marks }) => marks.reduce((sum, mark) => sum + mark, 0) >= LEAST_SEEN * marks.length);
	return { pixels: { widthPx: WIDTH, heightPx: HEIGHT, rgb, alpha: null }, garments: seen };
}

/** Photos and outlines of a list of names "KIND_NAME", as bench/parser/outlines.ts wrote them. */
export const sourcesOf = (photos: string, outlines: string, list: string): Source[] =>
	readFileSync(list, 'utf8')
		.split('\n')
		.filter(Boolean)
		.map((name) => ({
			kind: name.split('_')[0]!,
			photo: join(photos, name.replace('_', '/').concat('.jpg')),
			outline: join(outlines, `${name}.png`),
		}));
