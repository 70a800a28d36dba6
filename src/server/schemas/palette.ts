import { Type } from 'typebox';
import { PALETTE_ROLES } from '../../wardrobe/words/palette-colour.ts';
import { exact, lab, oneOf, shortText } from './basics.ts';

const id = Type.String({ minLength: 1, maxLength: 100 });
const role = oneOf(PALETTE_ROLES);

/** The edits of `PaletteEdit`. */
export const paletteEditSchema = Type.Union([
	exact({ edit: oneOf(['lock', 'unlock', 'split', 'remove'] as const), id }),
	exact({ edit: oneOf(['merge'] as const), ids: Type.Array(id, { minItems: 1, maxItems: 50 }) }),
	exact({ edit: oneOf(['rename'] as const), id, label: shortText }),
	exact({ edit: oneOf(['role'] as const), id, role }),
	exact({
		edit: oneOf(['add'] as const),
		lab: Type.Optional(lab),
		hex: Type.Optional(Type.String({ maxLength: 40 })),
		label: Type.Optional(shortText),
		role: Type.Optional(role),
		weight: Type.Optional(Type.Number({ minimum: 0, maximum: 1 })),
	}),
]);
