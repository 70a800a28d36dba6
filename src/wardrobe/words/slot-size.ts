import type { Slot } from './slot.ts';

/** Cloth that one piece of the slot shows, a top = 1. Common practice, no source. */
const SLOT_SIZE: Readonly<Record<Slot, number>> = {
	top: 1,
	outer: 1.5,
	bottom: 1.1,
	full: 2,
	legwear: 0.4,
	shoes: 0.35,
	accessory: 0.3,
};

/** How much of a wardrobe's seen area one piece of the slot makes, a top = 1. */
export const slotSize = (slot: Slot): number => SLOT_SIZE[slot];
