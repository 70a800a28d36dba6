import { labFromSrgb, srgbFromLab } from '../../colour/lab65.ts';
import type { LightModel } from '../../wardrobe/words/light.ts';
import { correctedBy } from './light-model.ts';

/** Steps along each channel of the table that the picture is looked up in: between them it is read off a straight line, a byte step off at most in most colours. */
const STEPS = 17;

/** The corrected colour, encoded sRGB 0..1, at each point of the table: red outermost, three numbers a point. */
function tableOf(model: LightModel | null): Float32Array {
	const correct = correctedBy(model);
	const table = new Float32Array(STEPS ** 3 * 3);
	const at = (step: number) => step / (STEPS - 1);
	let into = 0;
	for (let r = 0; r < STEPS; r++) {
		for (let g = 0; g < STEPS; g++) {
			for (let b = 0; b < STEPS; b++) {
				table.set(srgbFromLab(correct(labFromSrgb([at(r), at(g), at(b)]))), into);
				into += 3;
			}
		}
	}
	return table;
}

/**
 * The picture with its light taken out, for looking at only: `rgba` four bytes a pixel in, a new array of the same layout out, alpha kept.
 * Colours that no screen of sRGB can show are cut channel by channel.
 */
export function correctedPicture(rgba: Uint8ClampedArray, model: LightModel | null): Uint8ClampedArray<ArrayBuffer> {
	const table = tableOf(model);
	const out = new Uint8ClampedArray(rgba.length);
	const low = [0, 0, 0];
	const part = [0, 0, 0];
	for (let at = 0; at < rgba.length; at += 4) {
		for (let k = 0; k < 3; k++) {
			const place = (rgba[at + k]! / 255) * (STEPS - 1);
			low[k] = Math.min(STEPS - 2, Math.floor(place));
			part[k] = place - low[k]!;
		}
		for (let k = 0; k < 3; k++) out[at + k] = 255 * between(table, low, part, k);
		out[at + 3] = rgba[at + 3]!;
	}
	return out;
}

/** One channel read off between the eight points of the table around a colour. */
function between(table: Float32Array, low: readonly number[], part: readonly number[], channel: number): number {
	let sum = 0;
	for (let corner = 0; corner < 8; corner++) {
		const [r, g, b] = [corner >> 2, (corner >> 1) & 1, corner & 1] as const;
		const weight = (r ? part[0]! : 1 - part[0]!) * (g ? part[1]! : 1 - part[1]!) * (b ? part[2]! : 1 - part[2]!);
		const point = ((low[0]! + r) * STEPS + low[1]! + g) * STEPS + low[2]! + b;
		sum += weight * table[point * 3 + channel]!;
	}
	return sum;
}
