import type { Lab65 } from '../../colour/lab65.ts';
import type { Kind } from './kind.ts';
import type { Reading } from './reading.ts';
import { SLOTS, type Slot } from './slot.ts';

/** A colour counts for its slot from this share of the slot's area on; under it, it is trim. Common practice, no source. */
const SHARE_OF_SLOT = 0.25;

/** A colour that a picture wears, and as what: the kind is null where it is not sure. */
export type WornColour = {
	readonly slot: Slot;
	readonly kind: Kind | null;
	readonly lab: Lab65;
	readonly share: number;
};

/** The colours of each piece that a worn picture shows, by slot; trim left out. Readings older than pieces give them by slot alone. */
export function wornColours(reading: Reading): WornColour[] {
	const { pieces } = reading;
	if (!pieces || pieces.length === 0) return coloursBySlot(reading).map((colour) => ({ ...colour, kind: null }));
	return SLOTS.flatMap((slot) => pieces.filter((piece) => piece.slot === slot)).flatMap(
		({ slot, kind, share, swatches }) =>
			swatches
				.filter((swatch) => swatch.share >= SHARE_OF_SLOT)
				.map((swatch) => ({ slot, kind, lab: swatch.lab, share: share * swatch.share })),
	);
}

/** The colours of each slot that a worn picture shows; trim left out. */
export function coloursBySlot(
	reading: Reading,
): { readonly slot: Slot; readonly lab: Lab65; readonly share: number }[] {
	return SLOTS.flatMap((slot) => {
		const worn = reading.swatches.filter((swatch) => swatch.slot === slot);
		const area = worn.reduce((sum, { share }) => sum + share, 0);
		return worn.filter(({ share }) => share >= SHARE_OF_SLOT * area).map(({ lab, share }) => ({ slot, lab, share }));
	});
}
