import { deltaE2000Of } from '../../colour/delta-e-many.ts';
import { say } from '../../language/speak.ts';
import { isInSeason } from '../days/in-season.ts';
import { fitPercentOf } from '../fit/fit.ts';
import { type Pairing, slotsWearing } from '../pairs/pairings.ts';
import { REACH, reachOf } from '../palette/palette-reach.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { mainSwatch } from '../words/main-colour.ts';
import { colourWord, type PaletteColour } from '../words/palette-colour.ts';
import { heldGarments, type SeasonInput } from '../words/season-input.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import type { Bands } from './bands.ts';
import type { MissingPiece } from './missing-piece.ts';

/** What the season asks for and the wardrobe does not hold. */
export type Gap = {
	/** Stays the same while the palette and quotas do. */
	readonly id: string;
	readonly kind: 'colour' | 'slot';
	readonly slot: Slot;
	/** The palette colour that is missing; for a slot gap the one that would add most outfits, null without a palette. */
	readonly paletteColourId: string | null;
	/** Colour gap: the part of the colour that is not covered, 0..1 of its weight. Slot gap: pieces missing. */
	readonly missing: number;
	/** Supported outfits that one such piece would add. */
	readonly outfitsAdded: number;
	/** A stored garment that would fill it at no cost; null where there is none. */
	readonly storedFirst: string | null;
	readonly sentence: string;
};

/** A colour whose uncovered part is smaller is not worth a piece: about half of one garment in a set of 33. */
const LEAST_MISSING_WEIGHT = 0.015;
/** Under this part of its weight a colour counts as covered. */
const LEAST_MISSING_SHARE = 0.25;

/** Where the inspirations wear the colour, else where a piece in it would add most outfits. */
function slotFor(
	colour: PaletteColour,
	pairings: readonly Pairing[],
	pieces: readonly MissingPiece[],
): { slot: Slot; seen: number } {
	const [worn] = slotsWearing(colour.lab, pairings, REACH);
	if (worn) return { slot: worn.slot, seen: worn.pairings };
	const own = pieces.filter(({ paletteColourId }) => paletteColourId === colour.id);
	const best = [...own].sort((a, b) => b.outfitsAdded - a.outfitsAdded)[0];
	return { slot: best?.slot ?? 'top', seen: 0 };
}

/** The stored garment nearest the colour, of the slot where one is given; null where none is near enough to cover it. */
function storedNear(spare: readonly Garment[], slot: Slot | null, colour: PaletteColour): Garment | null {
	const near = spare
		.filter(({ kind }) => slot === null || slotOfKind(kind) === slot)
		.flatMap((garment) => {
			const main = mainSwatch(garment)?.lab;
			if (!main) return [];
			const distance = deltaE2000Of(main[0], main[1], main[2], colour.lab[0], colour.lab[1], colour.lab[2]);
			return distance <= reachOf(colour) ? [{ garment, distance }] : [];
		})
		.sort((a, b) => a.distance - b.distance || (a.garment.id < b.garment.id ? -1 : 1));
	return near[0]?.garment ?? null;
}

function colourGap(
	colour: PaletteColour,
	missing: number,
	pairings: readonly Pairing[],
	pieces: readonly MissingPiece[],
	spare: readonly Garment[],
): Gap {
	const { slot, seen } = slotFor(colour, pairings, pieces);
	const outfitsAdded =
		pieces.find((piece) => piece.slot === slot && piece.paletteColourId === colour.id)?.outfitsAdded ?? 0;
	const stored = storedNear(spare, seen > 0 ? slot : null, colour);
	const sentence = [
		say(missing > 0.95 ? 'gaps.allMissing' : 'gaps.partMissing', {
			colour: colourWord(colour),
			percent: Math.round(missing * 100),
		}),
		seen > 0 ? say('gaps.wornAs', { slot: say(`slots.${slot}`) }) : say('gaps.notSeen', { slot: say(`slots.${slot}`) }),
		say('gaps.adds', { outfits: say('counts.outfits', { count: outfitsAdded }) }),
		colour.firmness < 0.5 && colour.origin === 'derived' ? say('gaps.tentative') : '',
		stored ? say('gaps.stored', { name: stored.name }) : '',
	];
	return {
		id: `colour ${colour.id}`,
		kind: 'colour',
		slot,
		paletteColourId: colour.id,
		missing,
		outfitsAdded,
		storedFirst: stored?.id ?? null,
		sentence: sentence.filter(Boolean).join(' '),
	};
}

function slotGap(
	input: SeasonInput,
	slot: Slot,
	held: number,
	pieces: readonly MissingPiece[],
	spare: readonly Garment[],
): Gap {
	const wanted = input.season.quotas[slot];
	const best = pieces.find((piece) => piece.slot === slot);
	const colour = input.palette.colours.find(({ id }) => id === best?.paletteColourId);
	const [stored] = spare
		.filter(({ kind }) => slotOfKind(kind) === slot)
		.map((garment) => ({ garment, fit: fitPercentOf(garment, input.palette) }))
		.sort((a, b) => b.fit - a.fit || (a.garment.id < b.garment.id ? -1 : 1))
		.map(({ garment }) => garment);
	const sentence = [
		say('gaps.slotShort', { slot: say(`slots.${slot}`), wanted, held }),
		best && colour
			? say('gaps.slotAdds', {
					colour: colourWord(colour),
					outfits: say('counts.outfits', { count: best.outfitsAdded }),
				})
			: '',
		stored ? say('gaps.stored', { name: stored.name }) : '',
	];
	return {
		id: `slot ${slot}`,
		kind: 'slot',
		slot,
		paletteColourId: colour?.id ?? null,
		missing: wanted - held,
		outfitsAdded: best?.outfitsAdded ?? 0,
		storedFirst: stored?.id ?? null,
		sentence: sentence.filter(Boolean).join(' '),
	};
}

/** Colours and needs that what is held does not cover, those that would add most outfits first. */
export function gapsOf(
	input: SeasonInput,
	bands: Bands,
	pairings: readonly Pairing[],
	pieces: readonly MissingPiece[],
	held = heldGarments(input),
): Gap[] {
	const spare = input.garments.filter(
		(garment) => garment.place === 'stored' && !held.includes(garment) && isInSeason(garment, input.season),
	);
	const colours = bands.asked.flatMap(({ paletteColourId, amount, missing }) => {
		const colour = input.palette.colours.find(({ id }) => id === paletteColourId)!;
		const counts = missing >= LEAST_MISSING_WEIGHT && missing / amount >= LEAST_MISSING_SHARE;
		return counts ? [colourGap(colour, missing / amount, pairings, pieces, spare)] : [];
	});
	const needs = SLOTS.map((slot) => ({ slot, count: held.filter(({ kind }) => slotOfKind(kind) === slot).length }))
		.filter(({ slot, count }) => count < input.season.quotas[slot])
		.map(({ slot, count }) => slotGap(input, slot, count, pieces, spare));
	const byWorth = (a: Gap, b: Gap) =>
		b.outfitsAdded - a.outfitsAdded || b.missing - a.missing || (a.id < b.id ? -1 : 1);
	return [...colours.sort(byWorth), ...needs.sort(byWorth)];
}
