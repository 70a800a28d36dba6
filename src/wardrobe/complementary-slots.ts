import type { Slot } from './slot.ts';

/** Slots that take each other's place: a full piece is worn instead of a top and a bottom. Common practice, no source. */
const INSTEAD: readonly (readonly [Slot, Slot])[] = [
	['full', 'top'],
	['full', 'bottom'],
];

/** Whether pieces of the two slots are worn in one outfit: two different slots that do not take each other's place. */
export const areComplementary = (one: Slot, other: Slot): boolean =>
	one !== other && !INSTEAD.some(([a, b]) => (a === one && b === other) || (a === other && b === one));
