import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { SAME_WORN } from '../../colour/same-colour.ts';
import { areComplementary } from '../words/complementary-slots.ts';
import { KIND_NAMES, type Kind } from '../words/kind.ts';
import type { Reading } from '../words/reading.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import { wornColours } from '../words/worn-colours.ts';

/** Two colours that the inspirations wear together, each in its slot. Slot A comes before slot B in the order of `SLOTS`. */
export type Pairing = {
	readonly slotA: Slot;
	readonly labA: Lab65;
	readonly slotB: Slot;
	readonly labB: Lab65;
	/** The kinds that most of its pictures wear; null where none is sure. */
	readonly kindA: Kind | null;
	readonly kindB: Kind | null;
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
	const worn = wornColours(reading);
	return worn.flatMap((a, index) =>
		worn
			.slice(index + 1)
			.filter((b) => areComplementary(a.slot, b.slot))
			.map((b) => ({
				slotA: a.slot,
				labA: a.lab,
				slotB: b.slot,
				labB: b.lab,
				kindA: a.kind,
				kindB: b.kind,
				photos: 1,
			})),
	);
}

/** The kind told most often, the earlier of `KIND_NAMES` on ties; null where none is told. */
function commonestKind(kinds: readonly (Kind | null)[]): Kind | null {
	const times = (kind: Kind) => kinds.filter((one) => one === kind).length;
	return KIND_NAMES.reduce<Kind | null>((most, kind) => (times(kind) > (most ? times(most) : 0) ? kind : most), null);
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
	const merged: { pairing: Pairing; photos: Set<number>; kindsA: (Kind | null)[]; kindsB: (Kind | null)[] }[] = [];
	for (const { pairing, photo } of seen) {
		const same = merged.find(
			({ pairing: kept }) =>
				kept.slotA === pairing.slotA &&
				kept.slotB === pairing.slotB &&
				liesWithin(kept.labA, pairing.labA, SAME_WORN) &&
				liesWithin(kept.labB, pairing.labB, SAME_WORN),
		);
		if (same) {
			same.photos.add(photo);
			same.kindsA.push(pairing.kindA);
			same.kindsB.push(pairing.kindB);
		} else merged.push({ pairing, photos: new Set([photo]), kindsA: [pairing.kindA], kindsB: [pairing.kindB] });
	}
	return merged
		.map(({ pairing, photos, kindsA, kindsB }) => ({
			...pairing,
			kindA: commonestKind(kindsA),
			kindB: commonestKind(kindsB),
			photos: photos.size,
		}))
		.sort((one, other) => other.photos - one.photos || comparePairing(one, other));
}
