import { describe, expect, it } from 'vitest';
import { inLanguage } from '../../../src/language/speak.ts';
import { withTitles } from '../../../src/wardrobe/pictures/picture-title.ts';
import type { Piece } from '../../../src/wardrobe/words/reading.ts';
import { aReading, aSwatch, OAT, RUST } from '../../support/build-wardrobe.ts';

const piece = (kind: Piece['kind'], slot: Piece['slot'], lab: typeof RUST, share: number): Piece => ({
	slot,
	kind,
	kinds: [],
	share,
	pattern: { type: 'plain', sure: 1 },
	swatches: [{ lab, share: 1, name: '' }],
});
const worn = {
	...aReading([aSwatch(RUST)]),
	photoKind: 'worn' as const,
	pieces: [piece('sandals', 'shoes', OAT, 0.02), piece('dress', 'full', RUST, 0.3)],
};
const picture = (changes: object = {}) => ({
	id: 'i',
	seasonId: 's',
	photoId: 'p',
	title: '',
	titleFrom: 'looks' as const,
	group: '',
	addedAt: '',
	...changes,
});

describe('what a picture of the board is called', () => {
	it('is what it shows, the largest first, in the language spoken', () => {
		const titled = () => withTitles([{ inspiration: picture(), reading: worn }])[0]!.title;
		expect(titled()).toMatch(/ dress and .* sandals$/);
		expect(inLanguage('de', titled)).toMatch(/^Kleid, .*; Sandalen/);
	});

	it('tells two alike apart, keeps a name given by hand, and is nothing while it is not read', () => {
		const titles = withTitles([
			{ inspiration: picture(), reading: worn },
			{ inspiration: picture(), reading: worn },
			{ inspiration: picture({ title: 'by the quay', titleFrom: 'user' }), reading: worn },
			{ inspiration: picture(), reading: null },
		]).map(({ title }) => title);
		expect(titles[1]).toBe(`${titles[0]} (the other)`);
		expect(titles.slice(2)).toEqual(['by the quay', '']);
	});

	it('of a scene is its colours', () => {
		const scene = { ...aReading([aSwatch(RUST)]), photoKind: 'scene' as const };
		expect(withTitles([{ inspiration: picture(), reading: scene }])[0]!.title).toMatch(/^Picture in /);
	});
});
