import { describe, expect, it } from 'vitest';
import { movedPieceKinds } from '../../../src/wardrobe/words/moved-piece-kinds.ts';
import { INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';
import { piece } from '../pictures/build-picture.ts';

const [coat, skirt, bag, scarf] = [piece('coat', RUST), piece('skirt', INK), piece('bag', TEAL), piece('scarf', OAT)];

describe('what was told of pieces, carried over to a new reading', () => {
	it('goes with the piece where their order changes', () => {
		const told = [
			{ piece: 0, kind: 'jacket' as const },
			{ piece: 1, kind: 'shorts' as const },
		];
		expect(movedPieceKinds(told, [coat, skirt], [skirt, bag, coat])).toEqual([
			{ piece: 2, kind: 'jacket' },
			{ piece: 0, kind: 'shorts' },
		]);
	});

	it('of two pieces of one slot goes to the one of the same colour, and never both to one', () => {
		const told = [
			{ piece: 0, kind: 'belt' as const },
			{ piece: 1, kind: 'hat' as const },
		];
		expect(movedPieceKinds(told, [bag, scarf], [scarf, bag])).toEqual([
			{ piece: 1, kind: 'belt' },
			{ piece: 0, kind: 'hat' },
		]);
		expect(movedPieceKinds(told, [bag, scarf], [bag])).toEqual([{ piece: 0, kind: 'belt' }]);
	});

	it('is dropped where no piece of that slot is left, or none was there', () => {
		expect(movedPieceKinds([{ piece: 0, kind: 'jacket' }], [coat], [skirt])).toEqual([]);
		expect(movedPieceKinds([{ piece: 3, kind: 'jacket' }], [coat], [coat])).toEqual([]);
	});
});
