import type { Lab65 } from '../../colour/lab65.ts';
import { colourName } from '../../colour/name.ts';
import { say } from '../../language/speak.ts';
import type { Light } from '../../wardrobe/words/light.ts';
import type { Correction, Reading } from '../../wardrobe/words/reading.ts';
import { correctedBy } from './light-model.ts';
import { trustOf } from './trust.ts';

/** One step by hand: two units of b* (with the a* that lamps bring along) or of L*. */
const WARMER_STEP: readonly [number, number] = [0.6, 2];
const LIGHTER_STEP = 2;

const byHand =
	({ warmer, lighter }: NonNullable<Correction['byHand']>) =>
	(lab: Lab65): Lab65 => [
		Math.min(100, Math.max(0, lab[0] + lighter * LIGHTER_STEP)),
		lab[1] + warmer * WARMER_STEP[0],
		lab[2] + warmer * WARMER_STEP[1],
	];

const isOwn = ({ source }: Light): boolean => source === 'neutral-pointed' || source === 'neutral-found';

/** Of two lights that a photo shares with others the one that errs less; the first where they err alike. */
export const surerLight = (one: Light | null, other: Light | null): Light | null =>
	one && other ? ((other.error ?? 0) < (one.error ?? 0) ? other : one) : (one ?? other);

/** The light that counts of the photo's own, what it shares with others, and the steps by hand; and the function that takes it out. */
export function shownLight(
	own: Light,
	correction: Correction,
	shared: Light | null,
): { readonly light: Light; readonly correct: (lab: Lab65) => Lab65 } {
	const before = isOwn(own) ? own : (shared ?? own);
	const correct = correctedBy(before.model ?? null);
	if (!correction.byHand) return { light: before, correct };
	const shift = byHand(correction.byHand);
	const reason = before.source === 'none' ? say('light.byHand') : `${say('light.byHand')} ${before.reason}`;
	return { light: { ...before, source: 'by-hand', reason }, correct: (lab) => shift(correct(lab)) };
}

/**
 * The reading under another shared light or other steps by hand, from its stored uncorrected colours: the photo is not read again. Null for a
 * reading made before its own light was kept, and that must be read again.
 */
export function relit(reading: Reading, correction: Correction, shared: Light | null): Reading | null {
	const { ownLight, quality } = reading;
	if (!ownLight || !quality) return null;
	const { light, correct } = shownLight(ownLight, correction, shared);
	const swatches = reading.swatches.map((swatch, index) => {
		const lab = correct(reading.uncorrected[index]!);
		return { ...swatch, lab, name: colourName(lab) };
	});
	return { ...reading, swatches, light, trust: trustOf(light, quality) };
}
