import { defaultSeason } from '../../src/wardrobe/days/season-defaults.ts';
import type { Candidate, SeasonInput } from '../../src/wardrobe/words/season-input.ts';
import type { Wish } from '../../src/wardrobe/words/wish.ts';
import { aGarment, aPalette, RUST } from './build-wardrobe.ts';

/** A spring season with oat, ink, rust and teal as palette and nothing else yet. */
export const aSeasonInput = (changes: Partial<SeasonInput> = {}): SeasonInput => ({
	season: {
		...defaultSeason({
			id: 'spring',
			name: 'Spring',
			startsOn: '2026-03-01',
			endsOn: '2026-05-31',
			addedAt: '2026-01-01T00:00:00Z',
		}),
		quotas: { top: 10, outer: 4, bottom: 6, full: 3, legwear: 3, shoes: 4, accessory: 3 },
		targetCount: 33,
	},
	palette: aPalette(),
	inspirations: [],
	garments: [],
	wishes: [],
	candidates: [],
	makers: [],
	wears: [],
	pairWords: [],
	lineUp: null,
	today: '2026-03-10',
	lastYear: null,
	...changes,
});

/** A wish for a rust jumper, wanted since the first of January. */
export const aWish = (changes: Partial<Wish> = {}): Wish => ({
	id: 'wish',
	seasonId: 'spring',
	name: 'rust jumper',
	slot: 'top',
	kind: null,
	target: RUST,
	tolerance: 8,
	yearParts: ['spring'],
	priceLimit: 80,
	expectedWearsPerYear: 20,
	wantedSince: '2026-01-01',
	state: 'open',
	paletteColourId: 'rust',
	notes: '',
	...changes,
});

/** A used rust jumper for 60, well photographed. */
export const aCandidate = (changes: Partial<Candidate> = {}): Candidate => {
	const { swatches, pattern, trust } = aGarment({ id: 'candidate', kind: 'jumper', lab: RUST });
	return {
		id: 'candidate',
		seasonId: 'spring',
		photoId: 'photo',
		name: 'found jumper',
		kind: 'jumper',
		kindFrom: 'user',
		price: 60,
		used: true,
		source: '',
		state: 'open',
		addedAt: '2026-03-01T00:00:00Z',
		swatches,
		pattern,
		trust,
		...changes,
	};
};
