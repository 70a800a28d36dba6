import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { type Fit, fitOf } from '../../src/wardrobe/fit.ts';
import type { Garment } from '../../src/wardrobe/garment.ts';
import { type Kind, slotOfKind } from '../../src/wardrobe/kind.ts';
import { mainSwatch } from '../../src/wardrobe/main-colour.ts';
import { type Partner, partnersOf } from '../../src/wardrobe/partners.ts';
import type { PocketData } from '../../src/wardrobe/pocket-data.ts';
import type { Appearance } from '../../src/wardrobe/reading.ts';
import { type Twin, twinOf } from '../../src/wardrobe/twins.ts';
import type { Wish } from '../../src/wardrobe/wish.ts';

/** What the pocket page says of the piece in hand. */
export type Verdict = {
	readonly fit: Fit;
	/** The open wish it answers, nearest first; null where it answers none. */
	readonly wish: { readonly wish: Wish; readonly distance: number } | null;
	readonly twins: readonly { readonly garment: Garment; readonly twin: Twin }[];
	readonly partners: readonly Partner[];
	/** Partners in all, of which `partners` are the best. */
	readonly partnerCount: number;
};

const SHOWN_PARTNERS = 6;

function wishAnswered(data: PocketData, kind: Kind, appearance: Appearance): Verdict['wish'] {
	const main = mainSwatch(appearance);
	if (!main) return null;
	const answers = data.wishes
		.filter(
			(wish) => wish.state === 'open' && wish.slot === slotOfKind(kind) && (wish.kind === null || wish.kind === kind),
		)
		.map((wish) => ({ wish, distance: wish.target ? deltaE2000(wish.target, main.lab) : 0 }))
		.filter(({ wish, distance }) => distance <= wish.tolerance + appearance.trust.error / 2)
		.sort((a, b) => a.distance - b.distance);
	return answers[0] ?? null;
}

/** The piece in hand as a garment that is not owned yet. */
const asGarment = (kind: Kind, appearance: Appearance, madeOn: string): Garment => ({
	id: 'piece-in-hand',
	name: 'this piece',
	kind,
	kindFrom: 'user',
	photoIds: [],
	place: 'rail',
	price: null,
	boughtOn: null,
	yearParts: [],
	basic: false,
	loved: null,
	warmth: null,
	condition: 'good',
	wayOut: null,
	patternByUser: null,
	notes: '',
	care: '',
	addedAt: madeOn,
	changedAt: madeOn,
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
		wish: wishAnswered(data, kind, appearance),
		twins: owned.flatMap((garment) => {
			const twin = twinOf(piece, garment);
			return twin ? [{ garment, twin }] : [];
		}),
		partners: partners.slice(0, SHOWN_PARTNERS),
		partnerCount: partners.length,
	};
}
