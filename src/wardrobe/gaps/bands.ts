import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { SAME_SURFACE } from '../../colour/same-colour.ts';
import { reachOf } from '../palette/palette-reach.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { askedShares, type Palette, vouchingColours } from '../words/palette-colour.ts';
import { distanceToPalette } from '../words/photo-distance.ts';
import { saidColour } from '../words/said-colour.ts';
import { slotSize } from '../words/slot-size.ts';
import { partialTransport } from './transport.ts';

/** A palette colour as the season asks for it. Amounts are shares of all that is asked. */
export type AskedColour = {
	readonly paletteColourId: string;
	readonly amount: number;
	readonly covered: number;
	readonly missing: number;
};

/** A colour that the garments hold. Amounts are shares of all that is held. */
export type HeldColour = {
	readonly id: string;
	readonly lab: Lab65;
	readonly name: string;
	readonly amount: number;
	/** What of it answers nothing that is asked. */
	readonly surplus: number;
	/** Garments that hold it, most of it first. */
	readonly garmentIds: readonly string[];
};

/** Held colour that covers an asked one. */
export type Thread = { readonly heldId: string; readonly paletteColourId: string; readonly amount: number };

/** What is asked for above, what is held below, and what covers what: both bands have length 1 (0 where there is nothing). */
export type Bands = {
	readonly asked: readonly AskedColour[];
	readonly held: readonly HeldColour[];
	readonly threads: readonly Thread[];
};

type HeldSwatch = {
	readonly garmentId: string;
	readonly lab: Lab65;
	readonly amount: number;
	/** Whether nothing tells the light of its photo. */
	readonly untold: boolean;
};

/** Every swatch of the garments with its share of all the cloth held; sums to 1. By garment id, so that order changes nothing. */
function heldSwatches(garments: readonly Garment[]): HeldSwatch[] {
	const swatches = [...garments]
		.sort((a, b) => (a.id < b.id ? -1 : 1))
		.flatMap(({ id, kind, swatches, trust }) => {
			const area = swatches.reduce((sum, { share }) => sum + share, 0);
			if (!(area > 0)) return [];
			return swatches.map(({ lab, share }) => ({
				garmentId: id,
				lab,
				amount: (slotSize(slotOfKind(kind)) * share) / area,
				untold: trust.untold ?? false,
			}));
		});
	const total = swatches.reduce((sum, { amount }) => sum + amount, 0);
	return swatches.map((swatch) => ({ ...swatch, amount: swatch.amount / total }));
}

/** Groups swatches of nearly one colour, starting from the heaviest; returns the group of each. */
function colourGroups(swatches: readonly HeldSwatch[]): { labs: Lab65[]; groupOf: number[] } {
	const labs: Lab65[] = [];
	const groupOf = new Array<number>(swatches.length);
	const byAmount = swatches.map((_, index) => index).sort((a, b) => swatches[b]!.amount - swatches[a]!.amount || a - b);
	for (const index of byAmount) {
		const { lab } = swatches[index]!;
		let group = labs.findIndex((one) => liesWithin(one, lab, SAME_SURFACE));
		if (group < 0) group = labs.push(lab) - 1;
		groupOf[index] = group;
	}
	return { labs, groupOf };
}

/** What covers what, swatch by swatch: the transport between what is held and what the palette asks. */
function carriedTo(palette: Palette, garments: readonly Garment[]) {
	const swatches = heldSwatches(garments);
	const colours = vouchingColours(palette);
	const amounts = askedShares(palette);
	const cost = swatches.map(({ lab, untold }) =>
		Float64Array.from(colours, (colour) => distanceToPalette(lab, colour.lab, untold)),
	);
	const { flows, missing, surplus } = partialTransport(
		swatches.map(({ amount }) => amount),
		amounts,
		cost,
		colours.map(reachOf),
	);
	const asked = colours.map(({ id }, index): AskedColour => {
		const amount = amounts[index]!;
		return { paletteColourId: id, amount, covered: amount - missing[index]!, missing: missing[index]! };
	});
	return { swatches, asked, flows, surplus };
}

type Carried = ReturnType<typeof carriedTo>;

/** The swatches by colour, each colour with what it holds, the heaviest swatch's colour standing for all. */
function heldColours({ swatches, surplus }: Carried): { held: HeldColour[]; groupOf: number[] } {
	const { labs, groupOf } = colourGroups(swatches);
	const membersOf = labs.map((): (HeldSwatch & { readonly surplus: number })[] => []);
	for (const [index, swatch] of swatches.entries())
		membersOf[groupOf[index]!]!.push({ ...swatch, surplus: surplus[index]! });
	const held = labs.map((lab, group): HeldColour => {
		const members = membersOf[group]!;
		const byGarment = new Map<string, number>();
		for (const { garmentId, amount } of members) byGarment.set(garmentId, (byGarment.get(garmentId) ?? 0) + amount);
		return {
			id: `held-${group + 1}`,
			lab,
			name: saidColour(lab),
			amount: members.reduce((sum, { amount }) => sum + amount, 0),
			surplus: members.reduce((sum, one) => sum + one.surplus, 0),
			garmentIds: [...byGarment].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([id]) => id),
		};
	});
	return { held, groupOf };
}

/**
 * What the palette asks for against what the garments hold, by exact partial optimal transport with CIEDE2000 as the cost, as the fit of the same cloth has it. Asked amounts
 * are the weights of the palette's colours, hints left out; held ones the area of each swatch, weighted by the size of its slot.
 */
export function bandsOf(palette: Palette, garments: readonly Garment[]): Bands {
	const carried = carriedTo(palette, garments);
	const { asked, flows } = carried;
	const { held, groupOf } = heldColours(carried);
	const threads = new Map<string, Thread>();
	for (const { from, to, amount } of flows) {
		const { id: heldId } = held[groupOf[from]!]!;
		const { paletteColourId } = asked[to]!;
		const key = `${heldId} ${paletteColourId}`;
		threads.set(key, { heldId, paletteColourId, amount: amount + (threads.get(key)?.amount ?? 0) });
	}
	return {
		asked,
		held,
		threads: [...threads.values()].sort((a, b) => b.amount - a.amount || (a.heldId < b.heldId ? -1 : 1)),
	};
}

/** How much of what is asked is covered, 0..1. */
export const coveredShareOf = ({ asked }: Pick<Bands, 'asked'>): number =>
	asked.reduce((sum, { covered }) => sum + covered, 0);

/** {@link coveredShareOf} of garments, without the bands' other parts: for many sets of them. */
export const coveredShareBy = (palette: Palette, garments: readonly Garment[]): number =>
	coveredShareOf(carriedTo(palette, garments));
