import { distanceBetween } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { colourName } from '../../colour/name.ts';
import type { PaletteColour } from '../words/palette-colour.ts';

/** Halves nearer than this would be one colour again (CIEDE2000). */
const LEAST_APART = 3;

/**
 * A colour split into a lighter and a darker half, or `null` where its spread is too small for two. Cloth of one hue varies most in lightness,
 * and the photos' own points are no longer at hand, so the halves lie one spread above and below; each keeps half the weight and spread.
 */
export function splitColour(
	colour: PaletteColour,
	newId: () => string,
): readonly [PaletteColour, PaletteColour] | null {
	const [L, a, b] = colour.lab;
	const lighter: Lab65 = [Math.min(100, L + colour.spread), a, b];
	const darker: Lab65 = [Math.max(0, L - colour.spread), a, b];
	if (distanceBetween(lighter, darker) < LEAST_APART) return null;
	const half = (lab: Lab65, id: string, label: string): PaletteColour => ({
		...colour,
		id,
		lab,
		label,
		name: colourName(lab),
		weight: colour.weight / 2,
		spread: colour.spread / 2,
		locked: true,
		origin: 'split',
	});
	const word = (which: string) => (colour.label ? `${colour.label}, ${which}` : '');
	return [half(lighter, colour.id, word('lighter')), half(darker, newId(), word('darker'))];
}
