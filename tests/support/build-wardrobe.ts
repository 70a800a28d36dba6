import type { Lab65 } from '../../src/colour/lab65.ts';
import { colourName } from '../../src/colour/name.ts';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../src/wardrobe/words/kind.ts';
import { newGarment } from '../../src/wardrobe/words/new-garment.ts';
import type { Palette, PaletteColour } from '../../src/wardrobe/words/palette-colour.ts';
import type { Reading, Swatch } from '../../src/wardrobe/words/reading.ts';
import type { Slot } from '../../src/wardrobe/words/slot.ts';

/** A swatch of a colour; the whole area and no slot unless told. */
export const aSwatch = (lab: Lab65, share = 1, slot: Slot | null = null): Swatch => ({
	lab,
	share,
	slot,
	name: colourName(lab),
});

/** A plain garment of one colour, or of the swatches given, with a well lit photo (error 3). */
export function aGarment(changes: Partial<Garment> & { readonly id: string; readonly lab?: Lab65 }): Garment {
	const { lab = [50, 0, 0], ...rest } = changes;
	const kind = changes.kind ?? 'shirt';
	return {
		...newGarment(changes.id, changes.id, '2026-01-01T00:00:00Z', { kind, kindFrom: 'user' }),
		swatches: [aSwatch(lab, 1, slotOfKind(kind))],
		pattern: { type: 'plain', sure: 0.9 },
		trust: { error: 3, reasons: ['a neutral patch was pointed out'], advice: null },
		...rest,
	};
}

/** A reading of a photo that shows these colours: `worn` where they have slots, a scene where they have none. */
export function aReading(swatches: readonly Swatch[], changes: Partial<Reading> = {}): Reading {
	return {
		photoKind: swatches.some(({ slot }) => slot !== null) ? 'worn' : 'scene',
		swatches,
		uncorrected: swatches.map(({ lab }) => lab),
		kindGuesses: [],
		pattern: { type: 'plain', sure: 0.9 },
		patternBySlot: {},
		light: { source: 'none', cast: null, strength: 0, reason: 'nothing was corrected' },
		trust: { error: 6, reasons: ['no neutral patch in the picture'], advice: null },
		background: null,
		widthPx: 800,
		heightPx: 600,
		takenAt: null,
		...changes,
	};
}

/** A palette colour; even details unless told. */
export const aPaletteColour = (id: string, lab: Lab65, changes: Partial<PaletteColour> = {}): PaletteColour => ({
	id,
	lab,
	spread: 4,
	weight: 0.25,
	role: 'main',
	name: colourName(lab),
	label: id,
	photos: 5,
	firmness: 0.9,
	locked: false,
	origin: 'derived',
	...changes,
});

/** A palette for tests: oat and ink as base, rust as main, teal as accent. */
export const OAT: Lab65 = [84, 1, 11];
export const INK: Lab65 = [18, 0, -3];
export const RUST: Lab65 = [45, 38, 40];
export const TEAL: Lab65 = [45, -28, -10];
export const aPalette = (): Palette => ({
	colours: [
		aPaletteColour('oat', OAT, { role: 'base', weight: 0.4 }),
		aPaletteColour('ink', INK, { role: 'base', weight: 0.3 }),
		aPaletteColour('rust', RUST, { weight: 0.2 }),
		aPaletteColour('teal', TEAL, { role: 'accent', weight: 0.1 }),
	],
});
