import type { Lab65 } from '../src/colour/lab65.ts';
import { colourName } from '../src/colour/name.ts';
import type { Garment } from '../src/wardrobe/words/garment.ts';
import { KIND_NAMES, type Kind, slotOfKind } from '../src/wardrobe/words/kind.ts';
import { newGarment } from '../src/wardrobe/words/new-garment.ts';
import type { Piece, Reading, Swatch } from '../src/wardrobe/words/reading.ts';
import { seededRandom } from '../src/wardrobe/words/seeded-random.ts';
import type { Slot } from '../src/wardrobe/words/slot.ts';

/** A colour as clothes have them: three in five near grey, the rest anywhere up to a chroma of 60. */
function aClothColour(random: () => number): Lab65 {
	const chroma = random() < 0.6 ? random() * 12 : 12 + random() * 48;
	const hue = random() * 2 * Math.PI;
	return [15 + random() * 75, chroma * Math.cos(hue), chroma * Math.sin(hue)];
}

const aSwatch = (random: () => number, share: number, slot: Slot): Swatch => {
	const lab = aClothColour(random);
	return { lab, share, slot, name: colourName(lab) };
};

/** A wardrobe of any size, the same for the same seed: all kinds, one to three colours a garment, errors of 3 to 9. */
export function generatedWardrobe(count: number, seed: string): Garment[] {
	const random = seededRandom(seed);
	return Array.from({ length: count }, (_, index): Garment => {
		const kind = KIND_NAMES[Math.floor(random() * KIND_NAMES.length)]!;
		const shares = [[1], [0.8, 0.2], [0.6, 0.25, 0.15]][Math.floor(random() * 3)]!;
		return {
			...newGarment(`garment-${index}`, `garment ${index}`, '2026-01-01T00:00:00Z', { kind, kindFrom: 'user' }),
			swatches: shares.map((share) => aSwatch(random, share, slotOfKind(kind))),
			pattern: { type: 'plain', sure: 0.9 },
			trust: { error: 3 + random() * 6, reasons: ['generated'], advice: null },
		};
	});
}

/** Readings of pictures of people: top, bottom, outer, shoes, each of one colour. */
export function generatedBoard(count: number, seed: string): Reading[] {
	const random = seededRandom(seed);
	const areas = [
		['top', 0.4],
		['bottom', 0.3],
		['outer', 0.2],
		['shoes', 0.1],
	] as const;
	return Array.from({ length: count }, (): Reading => {
		const swatches = areas.map(([slot, share]) => aSwatch(random, share, slot));
		return {
			photoKind: 'worn',
			swatches,
			uncorrected: swatches.map(({ lab }) => lab),
			kindGuesses: [],
			pattern: { type: 'plain', sure: 0.9 },
			patternBySlot: {},
			light: { source: 'none', cast: null, strength: 0, reason: 'generated' },
			trust: { error: 6, reasons: ['generated'], advice: null },
			background: null,
			widthPx: 800,
			heightPx: 1200,
			takenAt: null,
		};
	});
}

/** What pictures of people wear, each slot's usual kinds. */
const WORN: readonly (readonly [slot: Slot, kinds: readonly Kind[], share: number, often: number])[] = [
	['top', ['t-shirt', 'shirt', 'jumper', 'top'], 0.12, 1],
	['bottom', ['trousers', 'jeans', 'skirt'], 0.14, 1],
	['outer', ['coat', 'jacket', 'blazer'], 0.14, 0.6],
	['shoes', ['boots', 'shoes', 'trainers'], 0.03, 0.9],
	['accessory', ['bag', 'scarf', 'hat'], 0.03, 0.5],
];
const STYLE_COLOURS = 7;
/** Two pictures of one colour differ by about so much in L*, a* and b*. */
const BETWEEN_PICTURES = 4;

/** A board of one style, as people collect them: few colours that come again, kinds told. */
export function styledBoard(count: number, seed: string): Reading[] {
	const random = seededRandom(seed);
	const colours = Array.from({ length: STYLE_COLOURS }, () => aClothColour(random));
	return generatedBoard(count, `${seed} readings`).map((reading): Reading => {
		const pieces = WORN.flatMap(([slot, kinds, share, often]): Piece[] => {
			if (random() >= often) return [];
			const kind = kinds[Math.floor(random() * kinds.length)]!;
			// Squared, so that some colours are worn far more than others.
			const [L, a, b] = colours[Math.floor(random() ** 2 * STYLE_COLOURS)]!;
			const near = (value: number) => value + BETWEEN_PICTURES * (2 * random() - 1);
			const lab: Lab65 = [near(L), near(a), near(b)];
			const swatches = [{ lab, share: 1, name: colourName(lab) }];
			return [{ slot, kind, kinds: [{ kind, probability: 0.9 }], share, pattern: reading.pattern, swatches }];
		});
		const area = pieces.reduce((sum, { share }) => sum + share, 0);
		const swatches = pieces.map(({ slot, share, swatches: [swatch] }) => ({ ...swatch!, slot, share: share / area }));
		return { ...reading, pieces, swatches, uncorrected: swatches.map(({ lab }) => lab) };
	});
}
