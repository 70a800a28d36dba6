import { say } from '../../language/speak.ts';
import type { Garment } from '../words/garment.ts';

/** What to do first with a garment that is owned and could fill a gap: bring it back from the store, or take it into the line-up; '' without one. */
export function spareWords(spare: Garment | null): string {
	if (!spare) return '';
	return say(spare.place === 'stored' ? 'gaps.stored' : 'gaps.leftOut', { name: spare.name });
}

/** The id of a spare garment that is stored, which one action brings back; null of any other. */
export const storedOf = (spare: Garment | null): string | null => (spare?.place === 'stored' ? spare.id : null);
