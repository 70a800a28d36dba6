import type { Garment } from '../words/garment.ts';
import type { Piece, Trust } from '../words/reading.ts';
import { answerOf } from './piece-answer.ts';
import { pieceName } from './piece-name.ts';
import type { WearableBoard } from './wearable-pictures.ts';
import { wishedPieces } from './wished-pieces.ts';

/** A piece that pictures wear and nothing owned answers, as a find is held against it. */
export type SoughtPiece = {
	readonly name: string;
	/** Pictures that lack it. */
	readonly pictures: number;
	readonly example: Piece;
	readonly exampleTrust: Trust;
};

/** The pieces to look for, by name; those that complete most pictures first. */
export const soughtPieces = (worn: WearableBoard, garments: readonly Garment[]): SoughtPiece[] =>
	wishedPieces(worn, garments)
		.filter(({ perhaps }) => !perhaps)
		.map(({ example, exampleTrust, pictures }) => ({
			name: pieceName(example, exampleTrust),
			pictures: pictures.length,
			example,
			exampleTrust,
		}));

/** The sought piece that a find is, the one of most pictures; null where it is none: kind, colour and pattern must come near enough. */
export function soughtPieceThatIs(
	find: Pick<Garment, 'kind' | 'swatches' | 'trust' | 'pattern'>,
	sought: readonly SoughtPiece[],
): SoughtPiece | null {
	const found = sought.filter(
		({ example, exampleTrust }) => answerOf(example, exampleTrust, find)?.degree === 'has it',
	);
	return found.reduce<SoughtPiece | null>((most, one) => (one.pictures > (most?.pictures ?? 0) ? one : most), null);
}
