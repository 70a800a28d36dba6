import type { Pairing } from '../pairs/pairings.ts';
import type { SoughtPiece } from '../pictures/sought-pieces.ts';
import type { Garment } from '../words/garment.ts';
import type { Kind } from '../words/kind.ts';
import type { Palette } from '../words/palette-colour.ts';
import type { PairWord } from '../words/wear.ts';
import type { Wish } from '../words/wish.ts';

/** What the pocket page carries of a garment: enough to judge by, and a small picture. */
export type PocketGarment = {
	readonly garment: Garment;
	/** WebP as a data address, or '' where the file would have grown too large. */
	readonly picture: string;
};

/** Everything in the pocket page's file besides code. */
export type PocketData = {
	readonly seasonName: string;
	/** ISO date on which the file was made. */
	readonly madeOn: string;
	readonly palette: Palette;
	readonly wishes: readonly Wish[];
	/** The pieces that pictures wear and nothing owned answers. */
	readonly sought: readonly SoughtPiece[];
	readonly garments: readonly PocketGarment[];
	readonly pairings: readonly Pairing[];
	readonly pairWords: readonly PairWord[];
	/** Every kind, for the piece in hand. */
	readonly kinds: readonly Kind[];
};
