import { deltaE2000 } from '../../colour/delta-e.ts';
import type { Piece } from './reading.ts';
import type { Inspiration } from './season.ts';

type Told = NonNullable<Inspiration['pieceKinds']>;

/** How far two pieces' main colours are apart (CIEDE2000). */
function apart(one: Piece, other: Piece): number {
	const [first, second] = [one, other].map(({ swatches }) => swatches[0]?.lab);
	return first && second ? deltaE2000(first, second) : Number.POSITIVE_INFINITY;
}

/**
 * What somebody told of the pieces of a photo, carried over to its new reading, in which they may lie in another order: to the piece of the same slot
 * that has the nearest main colour. A word that finds no such piece is dropped, since on another piece it would be wrong.
 */
export function movedPieceKinds(told: Told, before: readonly Piece[], after: readonly Piece[]): Told {
	const taken = new Set<number>();
	return told.flatMap(({ piece, kind }) => {
		const old = before[piece];
		const [nearest] = after
			.map((one, place) => ({ place, one }))
			.filter(({ place, one }) => old && one.slot === old.slot && !taken.has(place))
			.sort((one, other) => apart(old!, one.one) - apart(old!, other.one));
		if (!nearest) return [];
		taken.add(nearest.place);
		return [{ piece: nearest.place, kind }];
	});
}
