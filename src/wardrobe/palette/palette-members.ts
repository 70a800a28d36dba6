import { distanceBetween } from '../../colour/delta-e-many.ts';
import type { PaletteColour } from '../words/palette-colour.ts';
import { COLOUR_WIDTH } from './palette-clusters.ts';
import { type PaletteSource, type PoolPoint, photosInOrder, poolOf } from './palette-pool.ts';

/** The colours of the board that each palette colour stands for: those nearer to it than to any other, and no further than a colour is wide. */
export function membersOf(
	colours: readonly PaletteColour[],
	board: readonly PaletteSource[],
): ReadonlyMap<string, readonly PoolPoint[]> {
	const members = new Map(colours.map(({ id }): [string, PoolPoint[]] => [id, []]));
	for (const point of poolOf(photosInOrder(board))) {
		let nearest: string | null = null;
		let least = COLOUR_WIDTH;
		for (const { id, lab } of colours) {
			const distance = distanceBetween(lab, point.lab);
			if (distance < least) {
				least = distance;
				nearest = id;
			}
		}
		if (nearest !== null) members.get(nearest)!.push(point);
	}
	return members;
}
