import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { SAME_WORN } from '../../colour/same-colour.ts';
import { areComplementary } from '../words/complementary-slots.ts';
import type { Reading } from '../words/reading.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import { coloursBySlot } from '../words/worn-colours.ts';

/** Two colours that the inspirations wear together, each in its slot. Slot A comes before slot B in the order of `SLOTS`. */
export type Pairing = {
	readonly slotA: Slot;
	readonly labA: Lab65;
	readonly slotB: Slot;
	readonly labB: Lab65;
	/** Pictures that show it. */
	readonly photos: number;
};

const compareLab = (one: Lab65, other: Lab65): number => one[0] - other[0] || one[1] - other[1] || one[2] - other[2];

const comparePairing = (one: Pairing, other: Pairing): number =>
	SLOTS.indexOf(one.slotA) - SLOTS.indexOf(other.slotA) ||
	SLOTS.indexOf(one.slotB) - SLOTS.indexOf(other.slotB) ||
	compareLab(one.labA, other.labA) ||
	compareLab(one.labB, other.labB);

function pairingsOfReading(reading: Reading): Pairing[] {
	const worn = coloursBySlot(reading);
	return worn.flatMap((a, index) =>
		worn
			.slice(index + 1)
			.filter((b) => areComplementary(a.slot, b.slot))
			.map((b) => ({ slotA: a.slot, labA: a.lab, slotB: b.slot, labB: b.lab, photos: 1 })),
	);
}

/**
 * What the inspirations wear with what: every pair of colours in two slots of one worn picture, near-equal ones counted together, those
 * of most pictures first. Empty without pictures of people. The order of the pictures changes nothing.
 */
export function pairingsFromReadings(readings: readonly Reading[]): Pairing[] {
	const seen = readings
		.filter(({ photoKind }) => photoKind === 'worn')
		.flatMap((reading, photo) => pairingsOfReading(reading).map((pairing) => ({ pairing, photo })))
		.sort((one, other) => comparePairing(one.pairing, other.pairing));
	const merged: { pairing: Pairing; photos: Set<number> }[] = [];
	for (const { pairing, photo } of seen) {
		const same = merged.find(
			({ pairing: kept }) =>
				kept.slotA === pairing.slotA &&
				kept.slotB === pairing.slotB &&
				liesWithin(kept.labA, pairing.labA, SAME_WORN) &&
				liesWithin(kept.labB, pairing.labB, SAME_WORN),
		);
		if (same) same.photos.add(photo);
		else merged.push({ pairing, photos: new Set([photo]) });
	}
	return merged
		.map(({ pairing, photos }) => ({ ...pairing, photos: photos.size }))
		.sort((one, other) => other.photos - one.photos || comparePairing(one, other));
}
