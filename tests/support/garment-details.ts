import type { GarmentDetails } from '../../src/wardrobe/words/garment.ts';
import { newGarment } from '../../src/wardrobe/words/new-garment.ts';

/** Details of a plain shirt on the rail, with what the test cares about in place. */
export const garmentDetails = (changes: Partial<GarmentDetails> & { readonly id: string }): GarmentDetails =>
	newGarment(changes.id, changes.id, '2026-01-01T00:00:00.000Z', { kindFrom: 'user', ...changes });
