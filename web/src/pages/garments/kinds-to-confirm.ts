import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { KIND_NAMES, type Kind } from '../../../../src/wardrobe/words/kind.ts';

/** Pieces shown at a time: a wardrobe photographed in one go; more follow as these are confirmed. */
export const SHOWN_AT_A_TIME = 80;

/** Whether its photo was read and nobody has said yet what it is. */
export const isToConfirm = ({ kindFrom, place, swatches }: Garment): boolean =>
	kindFrom !== 'user' && place !== 'gone' && swatches.length > 0;

/** Garments of one suggested kind; `kind` null = nothing was suggested. */
export type KindGroup = { readonly kind: Kind | null; readonly garments: readonly Garment[] };

/** The garments by the kind suggested for them, in the order in which kinds are shown; those without a suggestion come last. */
export function kindGroups(garments: readonly Garment[]): KindGroup[] {
	const suggested = garments.filter(({ kindFrom }) => kindFrom === 'photo');
	const groups = KIND_NAMES.map((kind) => ({ kind, garments: suggested.filter((one) => one.kind === kind) }));
	const unknown = { kind: null, garments: garments.filter(({ kindFrom }) => kindFrom === 'none') };
	return [...groups, unknown].filter((group) => group.garments.length > 0);
}
