import type { Slot } from './slot.ts';

/** A full piece is worn instead of a top and a bottom. Common practice, no source. */
const isInsteadOf = (full: Slot, other: Slot): boolean => full === 'full' && (other === 'top' || other === 'bottom');

/** Whether pieces of the two slots are worn in one outfit: two different slots that do not take each other's place. */
export const areComplementary = (one: Slot, other: Slot): boolean =>
	one !== other && !isInsteadOf(one, other) && !isInsteadOf(other, one);
