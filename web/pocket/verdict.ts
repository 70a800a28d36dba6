import { fitOf } from '../../src/wardrobe/fit/fit.ts';
import type { Fit } from '../../src/wardrobe/fit/fit-result.ts';
import { type Twin, twinOf } from '../../src/wardrobe/fit/twins.ts';
import { type Partner, partnersOf } from '../../src/wardrobe/pairs/partners.ts';
import { type SoughtPiece, soughtPieceThatIs } from '../../src/wardrobe/pictures/sought-pieces.ts';
import type { PocketData } from '../../src/wardrobe/season/pocket-data.ts';
import { type AnsweredWish, answeredWish } from '../../src/wardrobe/wishes/answered-wish.ts';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import type { Kind } from '../../src/wardrobe/words/kind.ts';
import { newGarment } from '../../src/wardrobe/words/new-garment.ts';
import type { Appearance } from '../../src/wardrobe/words/reading.ts';

/** What the pocket page says of the piece in hand. */
export type Verdict = {
	readonly fit: Fit;
	/** The open wish it answers, nearest first; null where it answers none. */
	readonly wish: AnsweredWish | null;
	/** The piece of the season's pictures that it is; null where it is none. */
	readonly sought: SoughtPiece | null;
	readonly twins: readonly { readonly garment: Garment; readonly twin: Twin }[];
	readonly partners: readonly Partner[];
	/** Partners in all, of which `partners` are the best. */
	readonly partnerCount: number;
};

const SHOWN_PARTNERS = 6;

/** The piece in hand as a garment that is not owned yet. */
const asGarment = (kind: Kind, appearance: Appearance, madeOn: string): Garment => ({
	...newGarment('piece-in-hand', 'this piece', madeOn, { kind, kindFrom: 'user' }),
	...appearance,
});

/** Judges the piece by the same code as the full page. */
export function verdictOf(data: PocketData, kind: Kind, appearance: Appearance): Verdict {
	const piece = asGarment(kind, appearance, data.madeOn);
	const owned = data.garments.map(({ garment }) => garment);
	const context = { palette: data.palette, pairings: data.pairings, pairWords: data.pairWords, wornTogether: [] };
	const partners = partnersOf(piece, owned, context);
	return {
		fit: fitOf(appearance, data.palette),
		wish: answeredWish(piece, data.wishes),
		sought: soughtPieceThatIs(piece, data.sought),
		twins: owned.flatMap((garment) => {
			const twin = twinOf(piece, garment);
			return twin ? [{ garment, twin }] : [];
		}),
		partners: partners.slice(0, SHOWN_PARTNERS),
		partnerCount: partners.length,
	};
}
