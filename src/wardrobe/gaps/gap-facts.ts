import type { OutfitRange } from '../pairs/outfit-range.ts';
import type { Picture } from '../pictures/picture.ts';
import type { WishedPiece } from '../pictures/wished-pieces.ts';
import type { Bands } from './bands.ts';
import type { MissingPiece } from './missing-piece.ts';

/** What gaps are found from. */
export type GapFacts = {
	readonly bands: Bands;
	readonly pictures: readonly Picture[];
	/** The pieces that pictures wear and nothing answers, each with the outfits it would add. */
	readonly wished: readonly { readonly piece: WishedPiece; readonly outfitsAdded: OutfitRange }[];
	readonly missing: readonly MissingPiece[];
	/** Names of garments by id. */
	readonly names: ReadonlyMap<string, string>;
};
