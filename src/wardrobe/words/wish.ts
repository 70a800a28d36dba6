import type { Lab65 } from '../../colour/lab65.ts';
import type { GarmentDetails, YearPart } from './garment.ts';
import type { Kind } from './kind.ts';
import type { Slot } from './slot.ts';
import type { Versioned } from './versioned.ts';

/** Colours within this of the target answer a wish unless the user says otherwise, CIEDE2000: an uncalibrated photo cannot say finer. */
export const USUAL_TOLERANCE = 8;

/** An entry of the wish list. */
export type Wish = Versioned & {
	readonly id: string;
	readonly seasonId: string;
	readonly name: string;
	readonly slot: Slot;
	/** null = any kind of the slot. */
	readonly kind: Kind | null;
	/** Colour looked for; null = any colour of the palette. */
	readonly target: Lab65 | null;
	/** CIEDE2000 around the target that still answers the wish. */
	readonly tolerance: number;
	readonly yearParts: readonly YearPart[];
	readonly priceLimit: number | null;
	/** Wears expected in a year, for cost per wear; null = from similar garments. */
	readonly expectedWearsPerYear: number | null;
	/** ISO date since when it is wanted. */
	readonly wantedSince: string;
	readonly state: 'open' | 'answered' | 'dropped';
	/** Palette colour of the gap it came from, or null. */
	readonly paletteColourId: string | null;
	/** Inspiration whose piece it was made from; absent where it was made otherwise. */
	readonly seenIn?: string;
	readonly notes: string;
};

/** A maker the user trusts, for when new is allowed. */
export type Maker = Versioned & { readonly id: string; readonly name: string; readonly notes: string };

/** A piece found for sale. */
export type CandidateDetails = Versioned & {
	readonly id: string;
	readonly seasonId: string;
	readonly photoId: string;
	readonly name: string;
	/** As in {@link GarmentDetails.nameFrom}. */
	readonly nameFrom?: 'user' | 'looks';
	readonly kind: Kind;
	/** As in {@link GarmentDetails.kindFrom}. */
	readonly kindFrom: GarmentDetails['kindFrom'];
	readonly price: number | null;
	readonly used: boolean;
	readonly source: string;
	readonly state: 'open' | 'bought' | 'passed';
	readonly addedAt: string;
};
