import { say } from '../../language/speak.ts';
import { nearestColour } from '../fit/fit.ts';
import { type OutfitRange, outfitsText } from '../pairs/outfit-range.ts';
import { wishedPieceSentence } from '../pictures/picture-sentences.ts';
import { pieceName } from '../pictures/piece-name.ts';
import type { WishedPiece } from '../pictures/wished-pieces.ts';
import { isTentative } from '../words/palette-colour.ts';
import type { SeasonInput } from '../words/season-input.ts';
import type { Gap } from './gap.ts';
import type { GapFacts } from './gap-facts.ts';

/** How many of the wished pieces are gaps: those that come first, if they may complete a picture or more than one picture shows them, and those shown before. */
const MOST_PIECES = 12;
const MAY_COMPLETE_FROM = 0.25;

const PIECE_ID = 'pieces/';

/** The wished pieces among ids of gaps, in their order. */
export const wishedAmong = (gapIds: readonly string[]): string[] =>
	gapIds.filter((id) => id.startsWith(PIECE_ID)).map((id) => id.slice(PIECE_ID.length));

/** The wished pieces that are gaps. `shown`: ids of those that were gaps before. */
export const pieceGapsAmong = <Piece extends WishedPiece>(
	wished: readonly Piece[],
	shown: readonly string[],
): Piece[] => {
	const worthIt = wished.filter(({ completesLikely, shownIn }) => completesLikely >= MAY_COMPLETE_FROM || shownIn > 1);
	const first = new Set(worthIt.slice(0, MOST_PIECES));
	return wished.filter((piece) => first.has(piece) || shown.includes(piece.id));
};

/** A piece that pictures wear and nothing owned answers. */
export function pieceGap(
	piece: WishedPiece,
	outfitsAdded: OutfitRange,
	{ palette }: SeasonInput,
	{ bands, pictures, names }: GapFacts,
): Gap {
	const nearest = nearestColour(piece.lab, palette);
	const colour = nearest?.within ? nearest.colour : null;
	const asked = bands.asked.find(({ paletteColourId }) => paletteColourId === colour?.id);
	const tentative = colour !== null && isTentative(colour);
	const name = pieceName(piece.example, piece.exampleTrust);
	const sentence = [
		say(piece.perhaps ? 'gaps.piecePerhaps' : 'gaps.piece', { name }),
		wishedPieceSentence(piece, pictures.length, names),
		outfitsAdded.to > 0 ? say('gaps.adds', { outfits: outfitsText(outfitsAdded) }) : '',
		tentative ? say('gaps.tentative') : '',
	];
	return {
		id: `${PIECE_ID}${piece.id}`,
		kind: 'piece',
		slot: piece.slot,
		name,
		pieceKind: piece.kind,
		lab: piece.lab,
		spread: piece.spread,
		paletteColourId: colour?.id ?? null,
		missing: piece.pictures.length,
		pictures: piece.pictures,
		completes: piece.completes.length,
		completesLikely: piece.completesLikely,
		shownIn: piece.shownIn,
		weight: piece.share,
		paletteShare: asked?.missing ?? 0,
		outfitsAdded,
		tentative,
		storedFirst: null,
		sentence: sentence.filter(Boolean).join(' '),
	};
}
