import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';

/** With fewer bottoms, dresses and one-pieces nothing is said of what somebody wears. */
const TELLS_FROM = 8;

/** Share of the days on which somebody wears a dress or one-piece, by what is owned: dresses among dresses and bottoms, 0..1; null where too little is owned to tell. */
export function ownFullShare(garments: readonly Pick<Garment, 'kind' | 'place'>[]): number | null {
	const slots = garments
		.filter(({ place }) => place === 'rail' || place === 'stored')
		.map(({ kind }) => slotOfKind(kind));
	const full = slots.filter((slot) => slot === 'full').length;
	const all = full + slots.filter((slot) => slot === 'bottom').length;
	return all < TELLS_FROM ? null : full / all;
}
