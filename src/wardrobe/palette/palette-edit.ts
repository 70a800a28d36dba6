import { distanceBetween } from '../../colour/delta-e-many.ts';
import { chroma, hexFromLab, type Lab65, labFromHex } from '../../colour/lab65.ts';
import { colourName } from '../../colour/name.ts';
import { NEUTRAL_CHROMA } from '../../colour/neutrality.ts';
import { SAME_SIDE_BY_SIDE } from '../../colour/same-colour.ts';
import { listText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import { colourWord, type Palette, type PaletteColour, type PaletteRole } from '../words/palette-colour.ts';
import { meanOf, spreadAround } from './palette-centre.ts';
import { membersOf } from './palette-members.ts';
import type { PaletteSource } from './palette-pool.ts';
import { REACH } from './palette-reach.ts';
import { inPaletteOrder } from './palette-roles.ts';
import { splitColour } from './palette-split.ts';

/** What the user can do to a palette. Every edit but `unlock` and `remove` locks the colours it touches, so that deriving again keeps them. */
export type PaletteEdit =
	| { readonly edit: 'lock' | 'unlock' | 'split' | 'remove'; readonly id: string }
	| { readonly edit: 'merge'; readonly ids: readonly string[] }
	| { readonly edit: 'rename'; readonly id: string; readonly label: string }
	| { readonly edit: 'role'; readonly id: string; readonly role: PaletteRole }
	| {
			readonly edit: 'add';
			/** CIELAB (typed, or picked from a photo), or `hex`; one of the two. */
			readonly lab?: Lab65;
			readonly hex?: string;
			readonly label?: string;
			/** Default: base for neutrals, main for the rest. */
			readonly role?: PaletteRole;
			/** Share of the palette it asks for, 0..1; default an even share. */
			readonly weight?: number;
	  };

export type EditResult =
	| { readonly ok: true; readonly palette: Palette /** What was decided, for the record. */; readonly sentence: string }
	| {
			readonly ok: false;
			readonly reason: 'no-such-colour' | 'too-few-to-merge' | 'not-a-colour' | 'already-there' | 'cannot-split';
			readonly message: string;
	  };

const refused = (reason: (EditResult & { ok: false })['reason'], message: string): EditResult => ({
	ok: false,
	reason,
	message,
});

const done = (palette: Palette, colours: readonly PaletteColour[], sentence: string): EditResult => ({
	ok: true,
	palette: { ...palette, colours: inPaletteOrder(colours) },
	sentence,
});

/** Spread of a colour put in by hand: none was measured, so that the fit's own tolerance is all there is. */
const SPREAD_BY_HAND = 0;

function merge(palette: Palette, ids: readonly string[], board: readonly PaletteSource[]): EditResult {
	const chosen = palette.colours.filter(({ id }) => ids.includes(id));
	const [heaviest] = [...chosen].sort((one, other) => other.weight - one.weight);
	if (!heaviest || chosen.length < 2)
		return refused('too-few-to-merge', say('paletteEdits.tooFew', { count: chosen.length }));
	const lab = meanOf(chosen);
	const members = membersOf(palette.colours, board);
	const points = chosen.flatMap(({ id }) => members.get(id)!);
	// Without pictures that hold them, each part counts as if all of it lay as far out as its own spread.
	const parts = chosen.map((colour) => ({
		lab: colour.lab,
		weight: colour.weight,
		out: Math.hypot(distanceBetween(lab, colour.lab), colour.spread),
	}));
	const weight = chosen.reduce((sum, one) => sum + one.weight, 0);
	const merged: PaletteColour = {
		...heaviest,
		lab,
		name: colourName(lab),
		weight,
		spread:
			points.length > 0
				? spreadAround(lab, points)
				: parts.reduce((sum, one) => sum + (one.out * one.weight) / (weight || 1), 0),
		photos:
			points.length > 0
				? new Set(points.map(({ photo }) => photo)).size
				: Math.max(...chosen.map(({ photos }) => photos)),
		firmness: Math.max(...chosen.map(({ firmness }) => firmness)),
		role: heaviest.role === 'hint' ? 'main' : heaviest.role,
		locked: true,
		origin: 'merged',
	};
	const rest = palette.colours.filter(({ id }) => !ids.includes(id));
	return done(palette, [...rest, merged], say('paletteEdits.merged', { colours: listText(chosen.map(colourWord)) }));
}

function add(palette: Palette, edit: PaletteEdit & { edit: 'add' }, newId: () => string): EditResult {
	const lab = edit.lab ?? (edit.hex === undefined ? null : labFromHex(edit.hex));
	const possible =
		lab && lab.length === 3 && lab.every(Number.isFinite) && lab[0] >= 0 && lab[0] <= 100 && chroma(lab) <= 200;
	if (!lab || !possible)
		return refused(
			'not-a-colour',
			say('paletteEdits.noColour', {
				received: edit.lab ? `[${edit.lab.join(', ')}]` : (edit.hex ?? say('paletteEdits.nothing')),
			}),
		);
	const same = palette.colours.find((colour) => distanceBetween(colour.lab, lab) < SAME_SIDE_BY_SIDE);
	if (same)
		return refused(
			'already-there',
			say('paletteEdits.already', { received: hexFromLab(lab), colour: colourWord(same) }),
		);
	const share = Math.min(0.95, Math.max(0.01, edit.weight ?? 1 / (palette.colours.length + 1)));
	const added: PaletteColour = {
		id: newId(),
		lab,
		spread: SPREAD_BY_HAND,
		weight: palette.colours.length === 0 ? 1 : share,
		role: edit.role ?? (chroma(lab) < NEUTRAL_CHROMA ? 'base' : 'main'),
		name: colourName(lab),
		label: edit.label?.trim() ?? '',
		photos: 0,
		firmness: 1,
		locked: true,
		origin: 'by-hand',
	};
	const others = palette.colours.map((colour) => ({ ...colour, weight: colour.weight * (1 - share) }));
	const removed = palette.removed?.filter((one) => distanceBetween(one, lab) > REACH);
	return done(
		{ ...palette, ...(removed ? { removed } : {}) },
		[...others, added],
		say('paletteEdits.added', { colour: colourWord(added) }),
	);
}

/**
 * The palette after one edit, with the sentence of what was decided; or why it cannot be. Weights are scaled to sum to 1 again and the colours
 * put in order. `newId` names colours that come in (by `add` and `split`); `board` is what the palette was derived from, whose colours split and merge look at.
 */
export function editPalette(
	palette: Palette,
	edit: PaletteEdit,
	newId: () => string,
	board: readonly PaletteSource[] = [],
): EditResult {
	if (edit.edit === 'merge') return merge(palette, edit.ids, board);
	if (edit.edit === 'add') return add(palette, edit, newId);
	const colour = palette.colours.find(({ id }) => id === edit.id);
	if (!colour)
		return refused(
			'no-such-colour',
			say('paletteEdits.noneSuch', { edit: say(`paletteEdits.to_${edit.edit}`), id: edit.id }),
		);
	const word = colourWord(colour);
	const rest = palette.colours.filter(({ id }) => id !== colour.id);
	const changed = (changes: Partial<PaletteColour>) => [...rest, { ...colour, ...changes }];
	switch (edit.edit) {
		case 'lock':
			return done(palette, changed({ locked: true }), say('paletteEdits.locked', { colour: word }));
		case 'unlock':
			return done(palette, changed({ locked: false }), say('paletteEdits.unlocked', { colour: word }));
		case 'rename': {
			const label = edit.label.trim();
			return done(
				palette,
				changed({ label, locked: true }),
				say('paletteEdits.renamed', { colour: word, name: label || colour.name }),
			);
		}
		case 'role':
			return done(
				palette,
				changed({ role: edit.role, locked: true }),
				say(`paletteEdits.made_${edit.role}`, { colour: word }),
			);
		case 'remove':
			return done(
				{ ...palette, removed: [...(palette.removed ?? []), colour.lab] },
				rest,
				say('paletteEdits.removed', { colour: word }),
			);
		case 'split': {
			const parts = splitColour(colour, membersOf(palette.colours, board).get(colour.id)!, newId);
			if (!parts) return refused('cannot-split', say('paletteEdits.onlyOne', { colour: word }));
			return done(
				palette,
				[...rest, ...parts],
				say('paletteEdits.split', { colour: word, parts: listText(parts.map(colourWord)) }),
			);
		}
	}
}
