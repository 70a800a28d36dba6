import '../no-telemetry.ts';
import { type InferenceSession, Tensor } from 'onnxruntime-node';
import type { ClothPicture } from '../../../reading/swatches/cloth-picture.ts';
import { loadedNetwork } from '../network-session.ts';

/** Sides are filled up to a multiple of this, so that all of the network's steps come out even. */
const STEP = 16;

let session: Promise<InferenceSession> | null = null;

/** The pattern network, loaded once a worker. */
const loaded = (): Promise<InferenceSession> => {
	session ??= loadedNetwork('pattern/pattern.onnx');
	return session;
};

type Planes = [red: Float32Array, green: Float32Array, blue: Float32Array, cloth: Float32Array];

/** Each byte as 0..1. */
const SHARES = Float32Array.from({ length: 256 }, (_, byte) => byte / 255);

/** Planes of red, green, blue, 0..1, and of cloth (1 = cloth), in the middle of sides filled up; outside the cloth its mean colour. */
function planes({ widthPx, heightPx, rgb, inside }: ClothPicture): Tensor {
	const filledUp = (side: number) => Math.ceil(side / STEP) * STEP;
	const [width, height] = [filledUp(widthPx), filledUp(heightPx)];
	const area = width * height;
	const values = new Float32Array(4 * area);
	const [red, green, blue, cloth] = [0, 1, 2, 3].map((k) => values.subarray(k * area, (k + 1) * area)) as Planes;
	const start = ((height - heightPx) >> 1) * width + ((width - widthPx) >> 1);
	let r = 0;
	let g = 0;
	let b = 0;
	let count = 0;
	for (let row = 0, at = 0; row < heightPx; row++) {
		for (let to = start + row * width, end = to + widthPx; to < end; to++, at++) {
			if (inside[at] !== 1) continue;
			count++;
			r += rgb[at * 3]!;
			g += rgb[at * 3 + 1]!;
			b += rgb[at * 3 + 2]!;
			red[to] = SHARES[rgb[at * 3]!]!;
			green[to] = SHARES[rgb[at * 3 + 1]!]!;
			blue[to] = SHARES[rgb[at * 3 + 2]!]!;
			cloth[to] = 1;
		}
	}
	const all = 255 * count;
	for (let to = 0; to < area; to++) {
		if (cloth[to] === 1) continue;
		red[to] = r / all;
		green[to] = g / all;
		blue[to] = b / all;
	}
	return new Tensor('float32', values, [1, 4, height, width]);
}

/** Scores of the pattern types, in the order of `PATTERN_TYPES`, for a cloth with some pixels inside. */
export async function patternScores(cloth: ClothPicture): Promise<Float32Array> {
	const answers = await (await loaded()).run({ picture: planes(cloth) });
	return answers.scores!.data as Float32Array;
}
