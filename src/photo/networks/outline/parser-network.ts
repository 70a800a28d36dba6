import '../no-telemetry.ts';
import { Tensor } from 'onnxruntime-node';
import { loadedNetwork } from '../network-session.ts';
import { MAP_NAMES, type OutlineMaps } from './outline-maps.ts';

/** Per-channel mean and deviation that the network was trained with (RGB, 0..1). */
const MEAN = [0.485, 0.456, 0.406] as const;
const DEVIATION = [0.229, 0.224, 0.225] as const;

/** Raw answers of the network for one picture. */
export type NetworkAnswer = {
	/** Class scores, `classCount` planes of `heightPx` x `widthPx`. */
	readonly logits: Float32Array;
	readonly classCount: number;
	readonly widthPx: number;
	readonly heightPx: number;
	/** Scores of worn, single, scene. */
	readonly photoKind: Float32Array;
	/** Scores of the garment kinds it knows, alphabetical. */
	readonly garmentKind: Float32Array;
	/** Its own maps, as the runtime holds them. */
	readonly maps: OutlineMaps['tensors'];
};

/** The loaded garment parser: takes an RGB picture of exactly its input size. */
export type ParserNetwork = {
	readonly widthPx: number;
	readonly heightPx: number;
	run(rgb: Uint8Array): Promise<NetworkAnswer>;
};

async function loadNetwork(): Promise<ParserNetwork> {
	const session = await loadedNetwork('outline/outline.onnx');
	const input = session.inputMetadata[0];
	if (!input?.isTensor) throw new TypeError('expected a picture as the first input of the garment parser');
	const [, , heightPx, widthPx] = input.shape as number[];
	if (!heightPx || !widthPx) throw new TypeError('expected a fixed picture size in the garment parser');
	return {
		widthPx,
		heightPx,
		async run(rgb) {
			const plane = widthPx * heightPx;
			const values = new Float32Array(plane * 3);
			for (let channel = 0; channel < 3; channel++) {
				const scale = 1 / (255 * DEVIATION[channel]!);
				const shift = MEAN[channel]! / DEVIATION[channel]!;
				for (let i = 0; i < plane; i++) values[channel * plane + i] = rgb[i * 3 + channel]! * scale - shift;
			}
			const answers = await session.run({
				[session.inputNames[0]!]: new Tensor('float32', values, [1, 3, heightPx, widthPx]),
			});
			const logits = answers.logits!;
			const floats = (name: string) => answers[name]!.data as Float32Array;
			return {
				logits: logits.data as Float32Array,
				classCount: logits.dims[1]!,
				heightPx: logits.dims[2]!,
				widthPx: logits.dims[3]!,
				photoKind: floats('photo_kind'),
				garmentKind: floats('garment_kind'),
				maps: Object.fromEntries(MAP_NAMES.map((name) => [name, answers[name]!])) as OutlineMaps['tensors'],
			};
		},
	};
}

let network: Promise<ParserNetwork> | null = null;

/** The garment parser, loaded once a worker. */
export function parserNetwork(): Promise<ParserNetwork> {
	network ??= loadNetwork();
	return network;
}
