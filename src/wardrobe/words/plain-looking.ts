import type { Pattern } from './reading.ts';

/** Whether cloth looks plain from across a room: mottled cloth does. */
export const looksPlain = ({ type }: Pick<Pattern, 'type'>): boolean => type === 'plain' || type === 'mottled';

/** Patterns of which one is less sure than this do not tell two pieces apart. Our choice. */
export const SURE_OF_PATTERN = 0.7;
