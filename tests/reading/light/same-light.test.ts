import { describe, expect, it } from 'vitest';
import { type LitPhoto, sameLightGroups } from '../../../src/reading/light/same-light.ts';

const photo = (
	id: string,
	takenAt: string | null,
	background: LitPhoto['reading']['background'],
	lightGroup: string | null = null,
): LitPhoto => ({
	id,
	reading: { takenAt, background },
	lightGroup,
});

describe('photos of the same light', () => {
	it('are those taken in one go before the same background', () => {
		const photos = [
			photo('a', '2026-03-01T10:00:00', [70, 5, 20]),
			photo('b', '2026-03-01T10:08:00', [71, 5, 19]),
			photo('c', '2026-03-01T10:16:00', [70, 6, 20]),
			photo('d', '2026-03-01T18:00:00', [70, 5, 20]),
			photo('e', '2026-03-01T10:01:00', [30, 0, 0]),
		];
		expect(sameLightGroups(photos)).toEqual([['a', 'b', 'c']]);
		expect(sameLightGroups([...photos].reverse())).toEqual([['a', 'b', 'c']]);
	});

	it('are what the user says, whatever their time', () => {
		const photos = [
			photo('a', null, null, 'window'),
			photo('b', '2026-03-01T10:00:00', [70, 5, 20], 'window'),
			photo('c', '2026-03-01T10:00:00', [70, 5, 20]),
		];
		expect(sameLightGroups(photos)).toEqual([['a', 'b']]);
	});

	it('are not assumed where nothing tells the time or the place', () => {
		expect(sameLightGroups([photo('a', null, [70, 5, 20]), photo('b', null, [70, 5, 20])])).toEqual([]);
		expect(sameLightGroups([])).toEqual([]);
	});
});
