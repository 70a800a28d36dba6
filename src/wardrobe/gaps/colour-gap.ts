import { say } from '../../language/speak.ts';
import { outfitsText, rangeOf } from '../pairs/outfit-range.ts';
import { reachOf } from '../palette/palette-reach.ts';
import { type WornAs, wornAs } from '../pictures/worn-as.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { familyOfKind } from '../words/kind-family.ts';
import { mainSwatch } from '../words/main-colour.ts';
import { colourWord, isTentative, type PaletteColour } from '../words/palette-colour.ts';
import { distanceToPalette } from '../words/photo-distance.ts';
import type { SeasonInput } from '../words/season-input.ts';
import type { Slot } from '../words/slot.ts';
import type { AskedColour } from './bands.ts';
import type { Gap } from './gap.ts';
import type { GapFacts } from './gap-facts.ts';
import { spareWords, storedOf } from './spare-garment.ts';

/** A colour whose uncovered part is smaller is not worth a piece: about half of one garment in a set of 33. */
const LEAST_MISSING_WEIGHT = 0.015;
/** Under this part of its weight a colour counts as covered. */
const LEAST_MISSING_SHARE = 0.25;
/** From here on all of it is missing, as far as anybody would say, and from half on most of it. */
const ALL_MISSING = 0.95;
const MOST_MISSING = 0.5;

/** How much of a colour is missing, in a word: `missing` = the part of it that is not covered, 0..1. */
export const missingPart = (missing: number): 'all' | 'most' | 'some' =>
	missing > ALL_MISSING ? 'all' : missing > MOST_MISSING ? 'most' : 'some';

const IS_MISSING = { all: 'gaps.allMissing', most: 'gaps.mostMissing', some: 'gaps.someMissing' } as const;

/** A gap that was shown stays until less than this part of what opens one is missing. */
const STILL_MISSING = 0.6;

const idOfColour = (paletteColourId: string): string => `colour ${paletteColourId}`;

/** Whether so much of the colour is not covered that a piece in it is worth having. `shown`: ids of the gaps that were shown before. */
export function isMissing({ paletteColourId, amount, missing }: AskedColour, shown: ReadonlySet<string>): boolean {
	const part = shown.has(idOfColour(paletteColourId)) ? STILL_MISSING : 1;
	return missing >= part * LEAST_MISSING_WEIGHT && missing / amount >= part * LEAST_MISSING_SHARE;
}

/** How far a garment's main colour lies from a palette colour, as its fit has it; infinite without colours. */
function distanceFrom(colour: PaletteColour, garment: Garment): number {
	const main = mainSwatch(garment)?.lab;
	return main ? distanceToPalette(main, colour.lab, garment.trust.untold ?? false) : Number.POSITIVE_INFINITY;
}

/** The garment that is not held nearest the colour, of the slot where one is given; null where none is near enough to cover it. */
function storedNear(spare: readonly Garment[], slot: Slot | null, colour: PaletteColour): Garment | null {
	const near = spare
		.filter(({ kind }) => slot === null || slotOfKind(kind) === slot)
		.map((garment) => ({ garment, distance: distanceFrom(colour, garment) }))
		.filter(({ distance }) => distance <= reachOf(colour))
		.sort((a, b) => a.distance - b.distance || (a.garment.id < b.garment.id ? -1 : 1));
	return near[0]?.garment ?? null;
}

const NOTHING = rangeOf([0]);

/** Whether somebody holds the colour as the pictures wear it there: the same kind of thing, of the slot where no kind is known. */
const isHeld = ({ slot, kind }: WornAs, colour: PaletteColour, held: readonly Garment[]): boolean =>
	held.some((garment) => {
		const isSuch = kind ? familyOfKind(garment.kind) === familyOfKind(kind) : slotOfKind(garment.kind) === slot;
		return isSuch && distanceFrom(colour, garment) <= reachOf(colour);
	});

/**
 * A palette colour of which too little is held, where the pictures wear most of it and neither something held nor another gap (`pieces`) is that very thing; where no picture wears it, as what would add most
 * outfits. Null where all that pictures wear in it is held or told already.
 */
export function colourGap(
	asked: AskedColour,
	input: SeasonInput,
	facts: GapFacts,
	{
		spare,
		held,
		pieces,
	}: { readonly spare: readonly Garment[]; readonly held: readonly Garment[]; readonly pieces: readonly Gap[] },
): Gap | null {
	const colour = input.palette.colours.find(({ id }) => id === asked.paletteColourId)!;
	const missing = asked.missing / asked.amount;
	const seen = wornAs(colour.lab, facts.pictures, reachOf(colour));
	const isTold = ({ slot }: WornAs) => pieces.some((gap) => gap.slot === slot && gap.paletteColourId === colour.id);
	const [worn] = seen.filter((one) => !isTold(one) && !isHeld(one, colour, held));
	if (seen.length > 0 && !worn) return null;
	const own = facts.missing.filter(({ paletteColourId }) => paletteColourId === colour.id);
	const most = [...own].sort((a, b) => b.outfitsAdded.from - a.outfitsAdded.from)[0];
	const slot = worn?.slot ?? most?.slot ?? 'top';
	const outfitsAdded = own.find((piece) => piece.slot === slot)?.outfitsAdded ?? NOTHING;
	const stored = storedNear(spare, worn ? slot : null, colour);
	const tentative = isTentative(colour);
	const sentence = [
		spareWords(stored),
		say(IS_MISSING[missingPart(missing)], { colour: colourWord(colour) }),
		worn
			? say('gaps.wornAs', {
					piece: worn.kind ? say(`kinds.${worn.kind}`) : say(`slots.${slot}`),
					pictures: say('counts.pictures', { count: worn.pictures }),
				})
			: outfitsAdded.to > 0
				? say('gaps.notSeen', { slot: say(`slots.${slot}`) })
				: say('gaps.notSeenAlone'),
		outfitsAdded.to > 0 ? say('gaps.adds', { outfits: outfitsText(outfitsAdded) }) : '',
		tentative ? say('gaps.tentative') : '',
	];
	return {
		id: idOfColour(colour.id),
		kind: 'colour',
		slot,
		name: null,
		pieceKind: worn?.kind ?? null,
		lab: colour.lab,
		spread: colour.spread,
		paletteColourId: colour.id,
		missing,
		pictures: [],
		completes: 0,
		completesLikely: 0,
		shownIn: 0,
		weight: asked.amount,
		paletteShare: asked.missing,
		outfitsAdded,
		tentative,
		storedFirst: storedOf(stored),
		sentence: sentence.filter(Boolean).join(' '),
	};
}
