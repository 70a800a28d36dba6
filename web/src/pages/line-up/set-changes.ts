import type { LineUpChoice } from '../../../../src/wardrobe/words/season.ts';

/** What the page changes of a chosen set. */
export type SetChanges = Partial<Pick<LineUpChoice, 'garmentIds' | 'mustKeep' | 'neverUse'>>;

const without = (ids: readonly string[], id: string) => ids.filter((one) => one !== id);
const withIt = (ids: readonly string[], id: string) => [...without(ids, id), id];

/** The garment comes in; what was left out for good no longer is. */
export const putIn = ({ garmentIds, neverUse }: LineUpChoice, id: string): SetChanges => ({
	garmentIds: withIt(garmentIds, id),
	neverUse: without(neverUse, id),
});

/** The garment goes out, a must-have too. */
export const takeOut = ({ garmentIds, mustKeep }: LineUpChoice, id: string): SetChanges => ({
	garmentIds: without(garmentIds, id),
	mustKeep: without(mustKeep, id),
});

/** Fixes the garment as a must-have, or frees it. */
export const setMust = ({ mustKeep, neverUse }: LineUpChoice, id: string, must: boolean): SetChanges => ({
	mustKeep: must ? withIt(mustKeep, id) : without(mustKeep, id),
	neverUse: without(neverUse, id),
});

/** Leaves the garment out for good, or allows it again. */
export const setNever = (choice: LineUpChoice, id: string, never: boolean): SetChanges =>
	never
		? { ...takeOut(choice, id), neverUse: withIt(choice.neverUse, id) }
		: { neverUse: without(choice.neverUse, id) };

/** One garment takes another's place. */
export const swapIn = ({ garmentIds, mustKeep }: LineUpChoice, out: string, id: string): SetChanges => ({
	garmentIds: withIt(without(garmentIds, out), id),
	mustKeep: without(mustKeep, out),
});
