import '../no-telemetry.ts';
import { type InferenceSession, Tensor } from 'onnxruntime-node';
import { CROP_SIDE } from '../../../reading/kinds/piece-crop.ts';
import { NUMBER_COUNT } from '../../../reading/kinds/piece-numbers.ts';
import { SCORE_COUNT } from '../../../reading/kinds/told-kinds.ts';
import type { OutlinePicture } from '../../../reading/outline/outline-picture.ts';
import { SLOTS, type Slot } from '../../../wardrobe/words/slot.ts';
import { loadedNetwork } from '../network-session.ts';
import { planesOf } from '../picture-planes.ts';

/** Size of a mask over the whole photo: three eighths of the outline network's picture. */
export const MASK_WIDTH = 96;
export const MASK_HEIGHT = 144;

/** One piece as the network takes it. */
export type PieceInput = {
	readonly slot: Slot;
	/** Planes of red, green, blue and mark: `pieceCrop`. */
	readonly crop: Float32Array;
	/** Share of each cell of the whole photo that is the piece, 0..1: `frameMask`. */
	readonly mask: Float32Array;
	/** `pieceNumbers`. */
	readonly numbers: Float32Array;
};

let session: Promise<InferenceSession> | null = null;

/** The kinds' network, loaded once a worker, with the first worn pieces. */
const loaded = (): Promise<InferenceSession> => {
	session ??= loadedNetwork('kinds/kinds.onnx');
	return session;
};

/** The parts of all pieces one after the other. */
function joined(parts: readonly Float32Array[], dims: readonly number[]): Tensor {
	const size = dims.reduce((product, side) => product * side, 1);
	const values = new Float32Array(parts.length * size);
	for (const [index, part] of parts.entries()) values.set(part, index * size);
	return new Tensor('float32', values, [parts.length, ...dims]);
}

/** `SCORE_COUNT` scores of each piece of one photo, given what the outline network was shown of it; at least one piece. */
export async function kindScores(pieces: readonly PieceInput[], picture: OutlinePicture): Promise<Float32Array[]> {
	const slots = pieces.map(({ slot }) => Float32Array.from(SLOTS, (one) => (one === slot ? 1 : 0)));
	const answers = await (await loaded()).run({
		crops: joined(
			pieces.map(({ crop }) => crop),
			[4, CROP_SIDE, CROP_SIDE],
		),
		masks: joined(
			pieces.map(({ mask }) => mask),
			[1, MASK_HEIGHT, MASK_WIDTH],
		),
		slots: joined(slots, [SLOTS.length]),
		numbers: joined(
			pieces.map(({ numbers }) => numbers),
			[NUMBER_COUNT],
		),
		frame: new Tensor('float32', planesOf(picture.rgb), [1, 3, picture.heightPx, picture.widthPx]),
	});
	const scores = answers.scores!.data as Float32Array;
	return pieces.map((_, index) => scores.subarray(index * SCORE_COUNT, (index + 1) * SCORE_COUNT));
}
