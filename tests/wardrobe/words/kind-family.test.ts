import { expect, it } from 'vitest';
import { KIND_NAMES, slotOfKind } from '../../../src/wardrobe/words/kind.ts';
import { familyOfKind, KIND_FAMILIES } from '../../../src/wardrobe/words/kind-family.ts';

it('every kind belongs to exactly one family, and a family to one slot', () => {
	const listed = Object.values(KIND_FAMILIES).flat();
	expect([...listed].sort()).toEqual([...KIND_NAMES].sort());
	for (const kinds of Object.values(KIND_FAMILIES)) expect(new Set(kinds.map(slotOfKind)).size).toBe(1);
	for (const kind of KIND_NAMES) expect(KIND_FAMILIES[familyOfKind(kind)]).toContain(kind);
});
