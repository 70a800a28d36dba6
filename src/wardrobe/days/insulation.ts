import type { Garment } from '../words/garment.ts';
import { factsOfKind } from '../words/kind.ts';

/** Thin, usual and thick garments of one kind differ by about a quarter of the usual one's insulation a step (shirts, jumpers, trousers, skirts, jackets of ISO 7730 table C.2). */
const STEP = 0.25;

/** Underwear that nobody photographs, clo (ASHRAE 55 table 5.2.2.2B: men's briefs 0.04, bra and panties 0.04). */
export const UNDERWEAR_CLO = 0.04;

/** Insulation of one garment in clo: its kind's, thicker or thinner by what the user said of its warmth. */
export function cloOf({ kind, warmth }: Pick<Garment, 'kind' | 'warmth'>): number {
	const { clo, warmth: usual } = factsOfKind(kind);
	return clo * Math.max(0.25, 1 + STEP * ((warmth ?? usual) - usual));
}
