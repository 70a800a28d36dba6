import type { GarmentDetails } from '../../src/wardrobe/garment.ts';

/** Details of a plain shirt on the rail, with what the test cares about in place. */
export function garmentDetails(changes: Partial<GarmentDetails> & { readonly id: string }): GarmentDetails {
	return {
		name: changes.id,
		kind: 'shirt',
		kindFrom: 'user',
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
		addedAt: '2026-01-01T00:00:00.000Z',
		changedAt: '2026-01-01T00:00:00.000Z',
		...changes,
	};
}
