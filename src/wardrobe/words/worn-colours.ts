import type { Lab65 } from '../../colour/lab65.ts';
import type { Reading } from './reading.ts';
import { SLOTS, type Slot } from './slot.ts';

/** A colour counts for its slot from this share of the slot's area on; under it, it is trim. Common practice, no source. */
const SHARE_OF_SLOT = 0.25;

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
