import type { Garment } from './garment.ts';
import type { Kind } from './kind.ts';
import type { Pairing } from './pairings.ts';
import type { Palette } from './palette-colour.ts';
import type { PairWord } from './wear.ts';
import type { Wish } from './wish.ts';

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
	readonly garments: readonly PocketGarment[];
	readonly pairings: readonly Pairing[];
	readonly pairWords: readonly PairWord[];
	/** Every kind, for the piece in hand. */
	readonly kinds: readonly Kind[];
};
