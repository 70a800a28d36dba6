import { chroma, hueDegrees, type Lab65 } from '../../colour/lab65.ts';
import { type ColourStep, colourWord, type Palette, type PaletteColour } from './palette-colour.ts';

/** Weights of chroma and hue beside lightness, as CIEDE2000 has them (CIE 142-2001: S_C = 1 + 0.045 C, S_H near 1 + 0.015 C). */
const CHROMA_SLOPE = 0.045;
const HUE_SLOPE = 0.015;

/** What tells `own` from `other`, the plainest difference first. */
function stepsFrom(other: Lab65, own: Lab65): ColourStep[] {
	const [one, two] = [chroma(other), chroma(own)];
	const mean = (one + two) / 2;
	const turn = ((hueDegrees(own) - hueDegrees(other)) * Math.PI) / 360;
	const hue = Math.abs(2 * Math.sqrt(one * two) * Math.sin(turn)) / (1 + HUE_SLOPE * mean);
	const [dL, da, db] = [own[0] - other[0], own[1] - other[1], own[2] - other[2]];
	const alongA: ColourStep = da > 0 ? 'redder' : 'greener';
	const alongB: ColourStep = db > 0 ? 'yellower' : 'bluer';
	const hues: readonly ColourStep[] = Math.abs(da) > Math.abs(db) ? [alongA, alongB] : [alongB, alongA];
	const steps: readonly (readonly [ColourStep, number])[] = [
		[dL > 0 ? 'lighter' : 'darker', Math.abs(dL)],
		[two > one ? 'stronger' : 'greyer', Math.abs(two - one) / (1 + CHROMA_SLOPE * mean)],
		[hues[0]!, hue],
		[hues[1]!, 0],
	];
	return [...steps].sort((a, b) => b[1] - a[1]).map(([step]) => step);
}

/**
 * The palette with colours of one word told apart, in the language spoken: the first keeps its word, the others say what they are beside it ("darker
 * olive"). A word given by hand stays.
 */
export function withWordsApart<T extends Palette>(palette: T): T {
	const first = new Map<string, Lab65>();
	const taken = new Set(palette.colours.filter(({ label }) => label !== '').map(({ label }) => label));
	const colours = palette.colours.map((colour): PaletteColour => {
		const word = colourWord(colour);
		if (colour.label !== '') {
			first.set(word, first.get(word) ?? colour.lab);
			return colour;
		}
		const other = first.get(word);
		if (other === undefined && !taken.has(word)) {
			first.set(word, colour.lab);
			taken.add(word);
			return colour;
		}
		const apart = stepsFrom(other ?? colour.lab, colour.lab).find(
			(step) => !taken.has(colourWord({ ...colour, apart: step })),
		);
		if (apart === undefined) return colour;
		const told = { ...colour, apart };
		taken.add(colourWord(told));
		return told;
	});
	return { ...palette, colours };
}
