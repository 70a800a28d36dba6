/** Where on the body a garment is worn; order is the order of the parser's classes and of every table shown. */
export const SLOTS = ['top', 'outer', 'bottom', 'full', 'legwear', 'shoes', 'accessory'] as const;

/** One of {@link SLOTS}. `full` is a dress or one-piece. */
export type Slot = (typeof SLOTS)[number];

/** The same value worked out for each slot. */
export const bySlot = <T>(value: (slot: Slot) => T): Record<Slot, T> =>
	Object.fromEntries(SLOTS.map((slot) => [slot, value(slot)])) as Record<Slot, T>;
