import { numberText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import type { CameraKind, SeenNeutral } from './light.ts';

/** The neutrals a light was told from. */
export type TellingNeutrals = { readonly white: SeenNeutral | null; readonly grey: SeenNeutral | null };

/**
 * Error of a good photo by what its light is known from, mean CIEDE2000 of the chart's patches that four photos in five stay below, each scene
 * judged by formulas fitted without it: 17 phone photos, mostly of one make; for cameras 3 photos and an embedded camera only.
 */
const PHONE = { white: 8.2, greyAt51: 6.8, greyAt67: 5.6, both: 5, none: 10 };
const CAMERA = { white: 5.5, greyAt51: 6.5, greyAt67: 5.5, both: 5, none: 11.5 };
/** A sheet or card that was found, not pointed at, may be none (judged on our renders). */
const FOUND_COSTS = 0.7;
/** The lamp is another picture's, and cameras set exposure anew for each picture (not measured on its own; between a neutral and nothing). */
const SHARED_COSTS = 1.5;

/** The error where nothing tells the light. */
export const errorOfNothing = (camera: CameraKind): number => (camera === 'phone' ? PHONE : CAMERA).none;

/** The error where neutrals of the photo itself tell it; at least one is given. */
export function errorOfNeutrals({ white, grey }: TellingNeutrals, camera: CameraKind, wasFound: boolean): number {
	const by = camera === 'phone' ? PHONE : CAMERA;
	const added = wasFound ? FOUND_COSTS : 0;
	if (white && grey) return by.both + added;
	if (!grey) return by.white + added;
	const place = Math.min(1, Math.max(0, (grey.lightness - 51) / (67 - 51)));
	return by.greyAt51 + place * (by.greyAt67 - by.greyAt51) + added;
}

/** The error where a light that another photo tells is shared. */
export const errorOfShared = (error: number, camera: CameraKind): number =>
	Math.min(errorOfNothing(camera), error + SHARED_COSTS);

/**
 * The error where the photo's ground is brought to the colour that its set agrees on (`error` null), or that another photo of the set measured, itself
 * that sure. Measured: bench/NOTES.md, The ground as reference.
 */
export const errorOfGround = (error: number | null): number =>
	error === null ? GROUND.agreed : Math.min(GROUND.agreed, error + GROUND.costs);
const GROUND = { agreed: 8, costs: 1 };

/**
 * What could lie beside a piece, the error stated of a phone photo with it in the picture and pointed at, and the mean error on 8 phone photos of a chart by formulas
 * fitted without the make that is judged (tests/standards/real-charts.test.ts; both together: bench/NOTES.md).
 */
export const AIDS = [
	{ aid: 'paper', error: PHONE.white, meanError: 5.5 },
	{ aid: 'card', error: PHONE.greyAt51, meanError: 5.3 },
	{ aid: 'both', error: PHONE.both, meanError: 4.8 },
] as const;

/** Where the errors come from, in one sentence. */
export const measuredErrors = (): string =>
	say('aids.measured', {
		aids: AIDS.map(({ aid, meanError }) =>
			say('aids.errs', { aid: say(`aids.${aid}`), error: numberText(meanError) }),
		).join(', '),
		nothing: numberText(7.4),
	});
