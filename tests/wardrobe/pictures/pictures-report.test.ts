import { describe, expect, it } from 'vitest';
import { pieceChances } from '../../../src/wardrobe/pictures/completing.ts';
import { likelyCompleted, missingPiecesOfPictures } from '../../../src/wardrobe/pictures/one-away.ts';
import type { Picture } from '../../../src/wardrobe/pictures/picture.ts';
import { picturesReport } from '../../../src/wardrobe/pictures/pictures-report.ts';
import { soughtPieces, soughtPieceThatIs } from '../../../src/wardrobe/pictures/sought-pieces.ts';
import { wearablePictures } from '../../../src/wardrobe/pictures/wearable-pictures.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';
import { picture, piece } from './build-picture.ts';

const sure = { error: 0, reasons: [], advice: null };
const shirt = aGarment({ id: 'shirt', kind: 'shirt', lab: OAT, trust: sure });
const skirt = aGarment({ id: 'skirt', kind: 'skirt', lab: INK, trust: sure });
/** With the shirt and the skirt owned: two pieces missing, one missing, worn but for a bag, worn with one piece that comes near. */
const board = [
	picture('two away', [piece('coat', TEAL), piece('boots', RUST), piece('shirt', OAT)]),
	picture('one away', [piece('shirt', OAT), piece('coat', TEAL)]),
	picture('near', [piece('jumper', OAT), piece('skirt', INK)]),
	picture('worn', [piece('shirt', OAT), piece('skirt', INK), piece('bag', TEAL)]),
].map((shown) => ({ ...shown, trust: sure }));
const wornFrom = (garments: readonly Garment[], pictures: readonly Picture[] = board) => ({
	board: pictures,
	wearable: wearablePictures(pictures, garments, aSeasonInput().season),
});
const owned = [shirt, skirt];

describe('what is said of a board', () => {
	it('puts first what can be worn, what has it before what comes near, then what lacks least', () => {
		const { pictures, sentence } = picturesReport(wornFrom(owned), owned);
		expect(pictures.map(({ title }) => title)).toEqual(['worn', 'near', 'one away', 'two away']);
		expect(sentence).toBe('You can wear 2 of 4 pictures now. One more is a single piece away.');
		expect(pictures.map((one) => one.sentence)).toEqual([
			'You can wear this picture now.',
			'You can wear this picture; one piece comes near, not more.',
			expect.stringMatching(/^One piece is missing: .+coat\.$/),
			expect.stringMatching(/^2 pieces are missing: .+coat; .+boots\.$/),
		]);
	});
});

describe('the piece that keeps a picture from being worn', () => {
	it('is told of pictures that lack one piece alone; an accessory keeps none', () => {
		expect(missingPiecesOfPictures(wornFrom(owned)).map(({ piece: { kind } }) => kind)).toEqual(['coat']);
	});

	it('is sure where the photos are: bought, it completes the one picture that lacks it and no other', () => {
		const worn = wornFrom(owned);
		const chances = pieceChances(worn, owned);
		const completed = (kind: Garment['kind']) =>
			likelyCompleted(worn, chances, aGarment({ id: 'new', kind, lab: kind === 'boots' ? RUST : TEAL, trust: sure }));
		expect(completed('coat')).toBeCloseTo(1, 6);
		expect(completed('boots')).toBeCloseTo(0, 6);
		expect(completed('bag')).toBe(0);
	});
});

describe('a find held against the pieces that are sought', () => {
	it('is the piece that most pictures lack, also where it is one picture, and none of another kind or colour', () => {
		const sought = soughtPieces(wornFrom(owned), owned);
		expect(sought[0]).toMatchObject({ pictures: 2, example: { kind: 'coat' } });
		const found = (kind: Garment['kind'], lab: Garment['swatches'][number]['lab']) =>
			soughtPieceThatIs(aGarment({ id: 'find', kind, lab, trust: sure }), sought)?.example.kind ?? null;
		expect(found('coat', TEAL)).toBe('coat');
		expect(found('boots', RUST)).toBe('boots');
		expect(found('coat', RUST)).toBeNull();
		expect(found('skirt', TEAL)).toBeNull();
	});
});
