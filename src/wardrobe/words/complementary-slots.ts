import { factsOfKind, KIND_NAMES, type Kind } from './kind.ts';
import type { Slot } from './slot.ts';

/** A full piece is worn instead of a top and a bottom. Common practice, no source. */
const isInsteadOf = (full: Slot, other: Slot): boolean => full === 'full' && (other === 'top' || other === 'bottom');

/** Whether pieces of the two slots are worn in one outfit: two different slots that do not take each other's place. */
export const areComplementary = (one: Slot, other: Slot): boolean =>
	one !== other && !isInsteadOf(one, other) && !isInsteadOf(other, one);

/** Whether two pieces of these kinds are worn in one outfit: their slots are complementary, or one is a top worn over the other, as a cardigan over a shirt or a dress. */
export const areWornTogether = (one: Kind, other: Kind): boolean => {
	const [a, b] = [factsOfKind(one), factsOfKind(other)];
	if (a.slot === 'top' && b.slot === 'top') return (a.over ?? false) !== (b.over ?? false);
	if ((a.overFull && b.slot === 'full') || (b.overFull && a.slot === 'full')) return true;
	return areComplementary(a.slot, b.slot);
};

/** Row-major, kinds x kinds in the order of `KIND_NAMES`: 1 where the two are worn together. */
const TOGETHER = Uint8Array.from(
	KIND_NAMES.flatMap((one) => KIND_NAMES.map((other) => (areWornTogether(one, other) ? 1 : 0))),
);

/** {@link areWornTogether} for places in a list of kinds: for judgements over all pairs of a wardrobe. */
export function togetherAmong(kinds: readonly Kind[]): (one: number, other: number) => boolean {
	const places = Uint8Array.from(kinds, (kind) => KIND_NAMES.indexOf(kind));
	const across = KIND_NAMES.length;
	return (one, other) => TOGETHER[places[one]! * across + places[other]!] === 1;
}
