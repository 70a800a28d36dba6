import '../no-telemetry.ts';
import { type InferenceSession, Tensor } from 'onnxruntime-node';
import { clothOfCells } from '../../../reading/apart/garment-marks.ts';
import type { WaysToMiddles } from '../../../reading/apart/ways-to-middles.ts';
import type { OutlinePicture } from '../../../reading/outline/outline-picture.ts';
import type { LabelMap } from '../../../reading/pixels.ts';
import { loadedNetwork } from '../network-session.ts';
import { planesOf } from '../picture-planes.ts';

let session: Promise<InferenceSession> | null = null;

/** The network, loaded once a worker, with the first photo that seems to show several garments. */
const loaded = (): Promise<InferenceSession> => {
	session ??= loadedNetwork('apart/apart.onnx');
	return session;
};

/** What the network says of a photo, given what the outline network was shown of it and the outline. */
export async function waysToMiddles(picture: OutlinePicture, labels: LabelMap): Promise<WaysToMiddles> {
	const { rgb, frame, widthPx, heightPx } = picture;
	const plane = widthPx * heightPx;
	const input = new Float32Array(4 * plane);
	input.set(planesOf(rgb));
	input.set(clothOfCells(labels, frame, widthPx, heightPx), 3 * plane);
	const { told } = await (await loaded()).run({ picture: new Tensor('float32', input, [1, 4, heightPx, widthPx]) });
	const [, , heightCells, widthCells] = told!.dims as [number, number, number, number];
	const answer = told!.data as Float32Array;
	const part = (at: number) => answer.subarray(at * widthCells * heightCells, (at + 1) * widthCells * heightCells);
	return { widthCells, heightCells, middle: part(0), across: part(1), down: part(2) };
}
