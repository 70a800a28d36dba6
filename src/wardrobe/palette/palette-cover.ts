import { liesWithin } from '../../colour/delta-e-many.ts';
import { say } from '../../language/speak.ts';
import { type Palette, vouchingColours } from '../words/palette-colour.ts';
import { weightOf } from './palette-centre.ts';
import { coloursOf, type PaletteSource } from './palette-pool.ts';
import { reachOf } from './palette-reach.ts';

/** How much of a board's cloth its palette holds. */
export type PaletteCover = {
	/** Share of the cloth, every picture weighing the same, 0..1; 0 without pictures. */
	readonly share: number;
	/** Pictures of which less than half is held, by their index in the board, least held first. */
	readonly leftOut: readonly { readonly picture: number; readonly share: number }[];
	readonly sentence: string;
};

/** Under this share of its cloth a picture is left out by the palette. */
const LEFT_OUT_UNDER = 0.5;

function coverSentence(share: number, pictures: number, leftOut: number): string {
	if (pictures === 0) return say('cover.noPictures');
	const percent = Math.round(100 * share);
	return leftOut === 0 ? say('cover.all', { percent }) : say('cover.leftOut', { percent, count: leftOut });
}

/** The share of each picture's cloth that lies within reach of a palette colour; hints hold nothing. Pictures without colours are left aside. */
export function paletteCover(board: readonly PaletteSource[], palette: Palette): PaletteCover {
	const vouching = vouchingColours(palette);
	const shares = board.flatMap((source, picture) => {
		const colours = coloursOf(source);
		if (colours.length === 0) return [];
		const held = colours.filter(({ lab }) => vouching.some((colour) => liesWithin(lab, colour.lab, reachOf(colour))));
		return [{ picture, share: Math.min(1, weightOf(held)) }];
	});
	const share = shares.length > 0 ? shares.reduce((sum, one) => sum + one.share, 0) / shares.length : 0;
	const leftOut = shares
		.filter((one) => one.share < LEFT_OUT_UNDER)
		.sort((a, b) => a.share - b.share || a.picture - b.picture);
	return { share, leftOut, sentence: coverSentence(share, shares.length, leftOut.length) };
}
