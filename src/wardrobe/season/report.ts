import { say } from '../../language/speak.ts';
import { type Enough, enoughOf } from '../days/enough.ts';
import { ownFullShare } from '../days/full-share.ts';
import { isInSeason } from '../days/in-season.ts';
import { neededPieces } from '../days/season-defaults.ts';
import { daysOfSeason } from '../days/usual-days.ts';
import { type StyleProfile, styleProfile } from '../fit/style.ts';
import { type SurerLight, surerLight } from '../fit/surer-light.ts';
import { type TooClose, type Twin, twinsOf } from '../fit/twins.ts';
import { type Bands, coveredShareOf } from '../gaps/bands.ts';
import type { Gap } from '../gaps/gap.ts';
import { gapsShownBefore } from '../gaps/gaps.ts';
import { type MissingPiece, wishedPiece } from '../gaps/missing-piece.ts';
import { wishedAmong } from '../gaps/piece-gap.ts';
import { seasonGaps } from '../gaps/season-gaps.ts';
import type { Loner } from '../pairs/loner.ts';
import { lonersOf } from '../pairs/loners.ts';
import { type OutfitRange, outfitsText, rangeOf, type Tally } from '../pairs/outfit-range.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { pairTable } from '../pairs/pair-table.ts';
import type { Pairing } from '../pairs/pairings.ts';
import { type PaletteChange, paletteChange } from '../palette/palette-change.ts';
import { type PaletteCover, paletteCover } from '../palette/palette-cover.ts';
import { pieceChances } from '../pictures/completing.ts';
import { answersMissing, likelyCompleted, missingPiecesOfPictures } from '../pictures/one-away.ts';
import { type PicturesReport, picturesReport } from '../pictures/pictures-report.ts';
import { type WearableBoard, wearableBoard } from '../pictures/wearable-pictures.ts';
import { type WishStanding, wishStandings } from '../wishes/wishes.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import type { Palette } from '../words/palette-colour.ts';
import type { Quotas, Season } from '../words/season.ts';
import { heldGarments, type SeasonInput } from '../words/season-input.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import { toldReading } from '../words/told-reading.ts';
import type { Wish } from '../words/wish.ts';
import { type GarmentReport, garmentReports } from './garment-report.ts';
import { type LookBack, lookBack } from './look-back.ts';
import { type Station, stationsOf } from './stations.ts';
import { type WornOutfits, wornOutfits } from './worn-outfits.ts';

/** The whole season as one structure: what the page, the command line and the printed sheet show. */
export type Report = {
	readonly season: Season;
	/** ISO date. */
	readonly madeOn: string;
	readonly caution: string;
	readonly palette: Palette;
	/** Against the same part of last year; null where there was none. */
	readonly paletteChange: PaletteChange | null;
	/** How much of the board's cloth the palette holds, and the pictures that it leaves out; null without pictures. */
	readonly paletteCover:
		| (Omit<PaletteCover, 'leftOut'> & {
				readonly leftOut: readonly { readonly inspirationId: string; readonly title: string; readonly share: number }[];
		  })
		| null;
	readonly style: StyleProfile;
	readonly pairings: readonly Pairing[];
	/** Best fit first. */
	readonly garments: readonly GarmentReport[];
	/** What paper and a grey card beside the pieces would buy. */
	readonly surerLight: SurerLight;
	readonly loners: readonly Loner[];
	readonly twins: readonly Twin[];
	/** Pieces of one kind that their photos do not tell apart. */
	readonly tooClose: readonly TooClose[];
	readonly bands: Bands;
	readonly needs: readonly { readonly slot: Slot; readonly wanted: number; readonly held: number }[];
	/** How long what is held lasts between two washes. */
	readonly enough: Enough;
	/** Pieces that the season's days need, by slot: where the quotas start from. */
	readonly neededPieces: Quotas;
	readonly gaps: readonly Gap[];
	readonly missingPieces: readonly MissingPiece[];
	/** What the board's pictures wear, and which of them the wardrobe can wear. */
	readonly pictures: PicturesReport;
	readonly held: {
		readonly garments: number;
		/** Outfits for the season's days. */
		readonly outfits: OutfitRange;
		readonly coveredShare: number;
		readonly isLineUp: boolean;
		readonly sentence: string;
	};
	readonly wishes: readonly WishStanding[];
	readonly lookBack: LookBack;
	readonly wornOutfits: WornOutfits;
	readonly lastYearNotes: {
		readonly seasonName: string;
		readonly notes: string;
		readonly feltGaps: readonly string[];
	} | null;
	readonly stations: readonly Station[];
};

function coverOfBoard({ inspirations, palette }: SeasonInput): Report['paletteCover'] {
	if (inspirations.length === 0) return null;
	const cover = paletteCover(
		inspirations.map(({ reading }) => reading),
		palette,
	);
	const leftOut = cover.leftOut.map(({ picture, share }) => {
		const { id, title } = inspirations[picture]!.inspiration;
		return { inspirationId: id, title, share };
	});
	return { ...cover, leftOut };
}

function heldSummary(input: SeasonInput, tally: Tally, bands: Bands): Report['held'] {
	const held = heldGarments(input);
	const outfits = rangeOf(tally);
	const coveredShare = coveredShareOf(bands);
	const isLineUp = (input.lineUp?.garmentIds.length ?? 0) > 0;
	const blanks = { garments: say('counts.garments', { count: held.length }), outfits: outfitsText(outfits) };
	const outside = held.filter((garment) => !isInSeason(garment, input.season)).length;
	const sentence = [
		say(isLineUp ? 'held.lineUp' : 'held.rail', blanks),
		input.palette.colours.length > 0 ? say('held.covers', { percent: Math.round(coveredShare * 100) }) : '',
		outside > 0 ? say('held.outside', { count: outside }) : '',
		held.some(({ kind }) => slotOfKind(kind) === 'shoes') ? '' : say('held.noShoes'),
	];
	return {
		garments: held.length,
		outfits,
		coveredShare,
		isLineUp,
		sentence: held.length === 0 ? say('held.nothing') : sentence.filter(Boolean).join(' '),
	};
}

/** What the quotas ask of each slot, and what is held of it. */
function needsOf({ season }: SeasonInput, held: readonly Garment[]): Report['needs'] {
	const slots = held.map(({ kind }) => slotOfKind(kind));
	return SLOTS.map((slot) => ({
		slot,
		wanted: season.quotas[slot],
		held: slots.filter((one) => one === slot).length,
	}));
}

/** What each open wish would bring: outfits, and pictures of the board that could then be worn. `added`: outfits by wish, in their order. */
function gainsOfWishes(
	input: SeasonInput,
	worn: WearableBoard,
	wished: readonly Wish[],
	added: readonly Tally[],
): Parameters<typeof wishStandings>[2] {
	const oneAway = missingPiecesOfPictures(worn);
	const chances = pieceChances(worn, input.garments);
	const gains = new Map(
		wished.map((wish, index) => {
			const piece = wishedPiece(wish, input.palette);
			const completes = oneAway.filter((missing) => answersMissing(missing, piece)).length;
			const likely = likelyCompleted(worn, chances, piece);
			return [wish.id, { outfits: added[index]!, pictures: completes, likely }] as const;
		}),
	);
	return ({ id }) => gains.get(id)!;
}

const notesOf = (lastYear: SeasonInput['lastYear']): Report['lastYearNotes'] =>
	lastYear && {
		seasonName: lastYear.season.name,
		notes: lastYear.season.notes,
		feltGaps: lastYear.season.feltGaps,
	};

/** The season's report. Pure: the same input, the same report; nothing in it is NaN. */
export function seasonReport(input: SeasonInput): Report {
	const here = input.garments.filter(({ place }) => place !== 'gone');
	const context = pairContextOf(input);
	const table = pairTable(here, context);
	const days = daysOfSeason(input.season);
	const profile = styleProfile(
		input.inspirations.map(({ reading, inspiration }) => toldReading(reading, inspiration.pieceKinds)),
	);
	const loners = lonersOf(here, context, { table });
	const { twins, tooClose } = twinsOf(here);
	const rail = heldGarments(input);
	const worn = wearableBoard(input);
	const pictures = picturesReport(worn, input.garments, wishedAmong(gapsShownBefore(input)));
	const wished = input.wishes.filter(({ state }) => state === 'open');
	const { bands, missingPieces, gaps, outfits, added } = seasonGaps(input, rail, pictures.wishedPieces, {
		others: wished.map((wish) => wishedPiece(wish, input.palette)),
		owned: table,
	});
	const back = lookBack(here, input.wears, input.palette, input.today);
	const garments = garmentReports(here, input, { profile, table, loners, twins, back });
	const wishes = wishStandings(input, gaps, gainsOfWishes(input, worn, wished, added));
	const held = heldSummary(input, outfits, bands);
	return {
		season: input.season,
		madeOn: input.today,
		caution: say('reports.caution'),
		palette: input.palette,
		paletteChange: input.lastYear ? paletteChange(input.lastYear.palette, input.palette) : null,
		paletteCover: coverOfBoard(input),
		style: profile,
		pairings: context.pairings,
		garments,
		surerLight: surerLight(here, input.palette),
		loners,
		twins,
		tooClose,
		bands,
		needs: needsOf(input, rail),
		enough: enoughOf(rail, days),
		neededPieces: neededPieces(days, ownFullShare(input.garments)),
		gaps,
		missingPieces,
		pictures,
		held,
		wishes,
		lookBack: back,
		wornOutfits: wornOutfits(input, table, loners, back.neverWorn),
		lastYearNotes: notesOf(input.lastYear),
		stations: stationsOf(input, gaps, back),
	};
}
