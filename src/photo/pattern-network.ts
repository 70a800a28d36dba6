import './no-telemetry.ts';
import { type InferenceSession, Tensor } from 'onnxruntime-node';
import type { ClothPicture } from './cloth-picture.ts';
import { loadedNetwork } from './network-session.ts';

/** Sides are filled up to a multiple of this, so that all of the network's steps come out even. */
const STEP = 16;

let session: Promise<InferenceSession> | null = null;

/** The pattern network, loaded once a worker. */
const loaded = (): Promise<InferenceSession> => {
	session ??= loadedNetwork('pattern/pattern.onnx');
	return session;
};

/** Mean red, green, blue of the cloth, 0..1. */
function meanColour({ rgb, inside }: ClothPicture): number[] {
	const sums = [0, 0, 0];
	let count = 0;
	for (let at = 0; at < inside.length; at++) {
		if (!inside[at]) continue;
		count++;
		for (let k = 0; k < 3; k++) sums[k]! += rgb[at * 3 + k]!;
	}
	return sums.map((sum) => sum / (255 * count));
}

/** Planes of red, green, blue, 0..1, and of cloth (1 = cloth), in the middle of sides filled up; outside the cloth its mean colour. */
function planes(cloth: ClothPicture): Tensor {
	const filledUp = (side: number) => Math.ceil(side / STEP) * STEP;
	const [width, height] = [filledUp(cloth.widthPx), filledUp(cloth.heightPx)];
	const area = width * height;
	const values = new Float32Array(4 * area);
	for (const [k, value] of meanColour(cloth).entries()) values.fill(value, k * area, (k + 1) * area);
	const start = ((height - cloth.heightPx) >> 1) * width + ((width - cloth.widthPx) >> 1);
	for (let row = 0, at = 0; row < cloth.heightPx; row++) {
		for (let column = 0; column < cloth.widthPx; column++, at++) {
			if (!cloth.inside[at]) continue;
			const to = start + row * width + column;
			for (let k = 0; k < 3; k++) values[k * area + to] = cloth.rgb[at * 3 + k]! / 255;
			values[3 * area + to] = 1;
		}
	}
	return new Tensor('float32', values, [1, 4, height, width]);
}

/** Scores of the pattern types, in the order of `PATTERN_TYPES`, for a cloth with some pixels inside. */
export async function patternScores(cloth: ClothPicture): Promise<Float32Array> {
	const answers = await (await loaded()).run({ picture: planes(cloth) });
	return answers.scores!.data as Float32Array;
}
