/** Where on the body a garment is worn; order is the order of the parser's classes and of every table shown. */
export const SLOTS = ['top', 'outer', 'bottom', 'full', 'legwear', 'shoes', 'accessory'] as const;

/** One of {@link SLOTS}. `full` is a dress or one-piece. */
export type Slot = (typeof SLOTS)[number];
