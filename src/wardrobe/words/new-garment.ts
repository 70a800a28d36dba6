import type { GarmentDetails } from './garment.ts';

/**
 * A garment's details before anybody said anything about it, with what is told already in their place. `at` is an ISO instant. The kind is a
 * placeholder (`kindFrom` `none`) until it is told or suggested.
 */
export const newGarment = (
	id: string,
	name: string,
	at: string,
	told: Partial<GarmentDetails> = {},
): GarmentDetails => ({
	id,
	name,
	nameFrom: 'user',
	kind: 'shirt',
	kindFrom: 'none',
	photoIds: [],
	place: 'rail',
	price: null,
	boughtOn: null,
	yearParts: [],
	basic: false,
	loved: null,
	warmth: null,
	condition: 'good',
	wayOut: null,
	patternByUser: null,
	notes: '',
	care: '',
	addedAt: at,
	changedAt: at,
	...(told.condition && told.condition !== 'good' ? { conditionSince: at.slice(0, 10) } : {}),
	...told,
});
