import { chroma, hueDegrees, type Lab65 } from '../../../src/colour/lab65.ts';
import { say } from '../../../src/language/speak.ts';

/** Chroma under which a hue angle says nothing: the angle of a near-grey is noise. */
const HUE_FROM_CHROMA = 2;

/** `L* 52, C* 18, h 77°` in whole numbers; a grey has no hue and says so with a dash. */
export function colourNumbers(lab: Lab65): string {
	const strength = chroma(lab);
	const hue = strength < HUE_FROM_CHROMA ? '–' : `${Math.round(hueDegrees(lab)) % 360}°`;
	return `L* ${Math.round(lab[0])}, C* ${Math.round(strength)}, h ${hue}`;
}

/** Whole percent of a share 0..1; "under 1 %" rather than a nought that is none. */
export function percentText(share: number): string {
	if (share > 0 && share < 0.005) return say('colours.underOne');
	return `${Math.round(share * 100)} %`;
}

/** Whole percent of a probability; nothing read from a photo is sure to the last, so it ends at 99. */
export const sureText = (probability: number): string => percentText(Math.min(0.99, probability));

/** What a colour difference means to the eye. Mokrzycki and Tatol 2011 (from memory): from 2 to 3.5 untrained observers see it. */
export const seenFrom = (): string => say('colours.seenFrom');
