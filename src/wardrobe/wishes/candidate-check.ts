import { medianOf } from '../../colour/median.ts';
import { say } from '../../language/speak.ts';
import { fitOf, nearestColour } from '../fit/fit.ts';
import { twinsAmong } from '../fit/twins.ts';
import { bandsOf } from '../gaps/bands.ts';
import { rangeOf } from '../pairs/outfit-range.ts';
import { outfitTallies } from '../pairs/outfit-tallies.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { partnersOf } from '../pairs/partners.ts';
import { soughtPieces, soughtPieceThatIs } from '../pictures/sought-pieces.ts';
import { wearableBoard } from '../pictures/wearable-pictures.ts';
import type { Garment } from '../words/garment.ts';
import { garmentWears } from '../words/garment-wears.ts';
import { slotOfKind } from '../words/kind.ts';
import { mainSwatch } from '../words/main-colour.ts';
import { newGarment } from '../words/new-garment.ts';
import { colourWord } from '../words/palette-colour.ts';
import { type Candidate, heldGarments, type SeasonInput } from '../words/season-input.ts';
import { answeredWish } from './answered-wish.ts';
import type { CandidateCheck } from './candidate.ts';
import { recommendationOf } from './candidate-recommendation.ts';

const SHOWN_PARTNERS = 8;
/** A piece is expected to serve this long. Common practice, no source. */
const YEARS_OF_SERVICE = 2;
/** Wears a year where neither wish nor wardrobe tells. Common practice, no source. */
const USUAL_WEARS = 15;

/** The candidate as a garment that would be owned. */
function asGarment(candidate: Candidate): Garment {
	const { id, name, addedAt, kind, kindFrom, photoId, price, swatches, pattern, trust } = candidate;
	return { ...newGarment(id, name, addedAt, { kind, kindFrom, photoIds: [photoId], price }), swatches, pattern, trust };
}

/** The median, or null of nothing. */
const medianOrNull = (values: readonly number[]): number | null => (values.length > 0 ? medianOf(values) : null);

function usualUse(
	candidate: Candidate,
	input: SeasonInput,
): { costPerWear: number | null; wearsPerYear: number | null } {
	const slot = slotOfKind(candidate.kind);
	const own = input.garments.filter(({ kind }) => slotOfKind(kind) === slot);
	const worn = garmentWears(own, input.wears, input.today);
	return {
		costPerWear: medianOrNull(worn.flatMap(({ costPerWear }) => costPerWear ?? [])),
		wearsPerYear: medianOrNull(worn.flatMap(({ wearsThisYear }) => (wearsThisYear > 0 ? wearsThisYear : []))),
	};
}

/** Under this part of its weight a palette colour counts as covered, as it does for a gap. */
const LACKS_FROM = 0.25;

/** What of the season the piece would fill, though no wish says so: a piece that pictures wear and nothing owned answers, or a palette colour of which too little is held. */
function filledBy(garment: Garment, input: SeasonInput, owned: readonly Garment[]): string | null {
	const sought = soughtPieceThatIs(garment, soughtPieces(wearableBoard(input), owned));
	if (sought)
		return say('candidates.fillsPicture', {
			name: sought.name,
			pictures: say('counts.inPictures', { count: sought.pictures }),
		});
	const main = mainSwatch(garment);
	const nearest = main && nearestColour(main.lab, input.palette, garment.trust);
	if (!nearest?.within) return null;
	const asked = bandsOf(input.palette, heldGarments(input)).asked.find(
		({ paletteColourId }) => paletteColourId === nearest.colour.id,
	);
	return asked && asked.missing >= LACKS_FROM * asked.amount
		? say('candidates.fillsColour', { colour: colourWord(nearest.colour) })
		: null;
}

/** A piece found for sale against direction, wishes and wardrobe, with a plain recommendation. */
export function checkCandidate(candidate: Candidate, input: SeasonInput): CandidateCheck {
	const garment = asGarment(candidate);
	const owned = input.garments.filter(({ place }) => place !== 'gone');
	const partners = partnersOf(garment, owned, pairContextOf(input));
	const {
		added: [gain],
		most: [most],
	} = outfitTallies(input, heldGarments(input), [garment]);
	const wish = answeredWish(candidate, input.wishes)?.wish ?? null;
	const usual = usualUse(candidate, input);
	const wearsPerYear = wish?.expectedWearsPerYear ?? usual.wearsPerYear ?? USUAL_WEARS;
	const twins = twinsAmong(garment, owned);
	const samePhoto = owned.find(({ photoIds }) => photoIds.includes(candidate.photoId));
	const check = {
		candidateId: candidate.id,
		ownedName: samePhoto?.name ?? null,
		fills: filledBy(garment, input, owned),
		fit: fitOf(candidate, input.palette),
		wishId: wish?.id ?? null,
		twins,
		partnerCount: partners.length,
		partners: partners.slice(0, SHOWN_PARTNERS),
		outfitsAdded: rangeOf(gain!),
		shareOfBest: most! > 0 ? Math.min(1, gain![0] / most!) : 0,
		expectedCostPerWear:
			candidate.price === null || wearsPerYear <= 0 ? null : candidate.price / (wearsPerYear * YEARS_OF_SERVICE),
		usualCostPerWear: usual.costPerWear,
	};
	return { ...check, ...recommendationOf(check, candidate, wish, input) };
}
