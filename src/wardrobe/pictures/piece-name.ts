import { say } from '../../language/speak.ts';
import { garmentName } from '../words/garment-name.ts';
import type { Piece, Trust } from '../words/reading.ts';

/**
 * What a piece is called, like a garment: colour, pattern and kind ("navy checked shirt"); where its kind is not sure, the two it may be ("navy
 * coat or jacket").
 */
export function pieceName({ slot, kind, kinds, pattern, swatches }: Piece, trust: Trust): string {
	const looks = { swatches: swatches.map((swatch) => ({ ...swatch, slot })), pattern, trust };
	const [first, second] = kinds;
	const named = kind ?? first?.kind;
	if (!named) return garmentName({ ...looks, kind: 'top', kindFrom: 'none' });
	const name = garmentName({ ...looks, kind: named, kindFrom: 'user' });
	if (kind || !second) return name;
	return say('pieceNames.either', { name, other: say(`kinds.${second.kind}`) });
}
