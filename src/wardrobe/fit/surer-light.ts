import { say } from '../../language/speak.ts';
import { AIDS } from '../words/light-error.ts';
import type { Palette } from '../words/palette-colour.ts';
import type { Appearance } from '../words/reading.ts';
import { unsureAt } from './fit.ts';

/** What a sheet of paper and a grey card would buy: how many pieces that are unsure now would be clear. */
export type SurerLight = {
	/** Pieces that are unsure because of what their photos err by. */
	readonly unsure: number;
	readonly clearWith: readonly { readonly aid: (typeof AIDS)[number]['aid']; readonly pieces: number }[];
	/** Null where nothing would be gained. */
	readonly sentence: string | null;
};

/**
 * Judges every unsure piece again at the error its photo would have with paper, a grey card, or both beside it. An estimate: a new photo moves
 * the colour too. Nothing for an empty palette or where no piece is unsure.
 */
export function surerLight(pieces: readonly Appearance[], palette: Palette): SurerLight {
	const unsure = pieces
		.filter(({ swatches }) => swatches.length > 0)
		.map((piece) => ({ error: piece.trust.error, isUnsure: unsureAt(piece, palette) }))
		.filter(({ error, isUnsure }) => isUnsure(error));
	const clearWith = AIDS.map(({ aid, error }) => ({
		aid,
		pieces: unsure.filter((piece) => !piece.isUnsure(Math.min(piece.error, error))).length,
	}));
	const worth = clearWith.filter(({ pieces: count }) => count > 0).sort((one, other) => other.pieces - one.pieces);
	// Of aids that buy the same the simplest is told: both together are no news where the card alone does it.
	const [best, ...rest] = worth;
	const less = rest.filter(({ pieces: count }) => count < best!.pieces);
	const others = less.map(({ aid, pieces: count }) => say('surerLight.alone', { aid: say(`aids.${aid}`), count }));
	const told = best && {
		count: unsure.length,
		aid: say(`aids.${best.aid}`),
		clear: best.pieces,
		others: others.map((other) => `; ${other}`).join(''),
	};
	const sentence = told ? say('surerLight.sentence', told) : null;
	return {
		unsure: unsure.length,
		clearWith: clearWith.map(({ aid, pieces: count }) => ({ aid, pieces: count })),
		sentence,
	};
}
