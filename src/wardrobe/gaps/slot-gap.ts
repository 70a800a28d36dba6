import { say } from '../../language/speak.ts';
import { fitPercentOf } from '../fit/fit.ts';
import { outfitsText, rangeOf } from '../pairs/outfit-range.ts';
import { asSentence } from '../words/as-sentence.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { colourWord } from '../words/palette-colour.ts';
import type { SeasonInput } from '../words/season-input.ts';
import type { Slot } from '../words/slot.ts';
import type { Gap } from './gap.ts';
import type { GapFacts } from './gap-facts.ts';
import { spareWords, storedOf } from './spare-garment.ts';

/** A slot with fewer pieces than the season needs, in the palette colour that would add most outfits. */
export function slotGap(
	slot: Slot,
	held: number,
	{ season, palette, lineUp }: SeasonInput,
	{ missing }: GapFacts,
	spare: readonly Garment[],
): Gap {
	const wanted = season.quotas[slot];
	const best = missing.find((piece) => piece.slot === slot);
	const colour = palette.colours.find(({ id }) => id === best?.paletteColourId);
	const [stored] = spare
		.filter(({ kind }) => slotOfKind(kind) === slot)
		.map((garment) => ({ garment, fit: fitPercentOf(garment, palette) }))
		.sort((a, b) => b.fit - a.fit || (a.garment.id < b.garment.id ? -1 : 1))
		.map(({ garment }) => garment);
	const sentence = [
		spareWords(stored ?? null),
		say((lineUp?.garmentIds.length ?? 0) > 0 ? 'gaps.slotOpen' : 'gaps.slotShort', {
			slot: asSentence(say(`slots.${slot}`)),
			wanted,
			held,
		}),
		best && colour && best.outfitsAdded.to > 0
			? say('gaps.slotAdds', { colour: colourWord(colour), outfits: outfitsText(best.outfitsAdded) })
			: '',
	];
	return {
		id: `slot ${slot}`,
		kind: 'slot',
		slot,
		name: null,
		pieceKind: null,
		lab: colour?.lab ?? null,
		spread: colour?.spread ?? 0,
		paletteColourId: colour?.id ?? null,
		missing: wanted - held,
		pictures: [],
		completes: 0,
		completesLikely: 0,
		shownIn: 0,
		weight: 0,
		paletteShare: 0,
		outfitsAdded: best?.outfitsAdded ?? rangeOf([0]),
		tentative: false,
		storedFirst: storedOf(stored ?? null),
		sentence: sentence.filter(Boolean).join(' '),
	};
}
