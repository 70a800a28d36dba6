import { deltaE2000Of } from '../../colour/delta-e-many.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { mainSwatch } from '../words/main-colour.ts';
import type { Wish } from '../words/wish.ts';

/** A wish and how far (CIEDE2000) the piece lies from the colour it looks for; 0 where it looks for none. */
export type AnsweredWish = { readonly wish: Wish; readonly distance: number };

/** The open wish that a piece answers best, by slot, kind and colour; null where none. Ties go to the lower id. */
export function answeredWish(
	piece: Pick<Garment, 'kind' | 'swatches' | 'trust'>,
	wishes: readonly Wish[],
): AnsweredWish | null {
	const main = mainSwatch(piece)?.lab;
	const slot = slotOfKind(piece.kind);
	const answers = wishes
		.filter((wish) => wish.state === 'open' && wish.slot === slot && (wish.kind === null || wish.kind === piece.kind))
		.map((wish) => ({
			wish,
			distance:
				wish.target && main
					? deltaE2000Of(main[0], main[1], main[2], wish.target[0], wish.target[1], wish.target[2])
					: 0,
		}))
		// A photo cannot tell finer than its trust; half of it is given to the piece.
		.filter(({ wish, distance }) => distance <= wish.tolerance + piece.trust.error / 2)
		.sort((a, b) => a.distance - b.distance || (a.wish.id < b.wish.id ? -1 : 1));
	return answers[0] ?? null;
}
