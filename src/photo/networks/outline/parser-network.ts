import '../no-telemetry.ts';
import { Tensor } from 'onnxruntime-node';
import { loadedNetwork } from '../network-session.ts';
import { planesOf } from '../picture-planes.ts';

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
	/** Log odds that nothing in the picture can be told piece by piece. */
	readonly noPieces: number;
	/** Log odds that more than one garment is seen, where nobody wears any. */
	readonly several: number;
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
			const answers = await session.run({
				[session.inputNames[0]!]: new Tensor('float32', planesOf(rgb), [1, 3, heightPx, widthPx]),
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
				noPieces: floats('no_pieces')[0]!,
				several: floats('several')[0]!,
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
