import { listText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import { nameAmongEqual } from '../words/garment-name.ts';
import type { Reading } from '../words/reading.ts';
import { saidColour } from '../words/said-colour.ts';
import type { Inspiration } from '../words/season.ts';
import { piecesOf } from './picture.ts';
import { pieceName } from './piece-name.ts';

/** Pieces or colours that a title names: more nobody reads. */
const NAMED = 2;

/** What a picture is called that nobody named: by its largest pieces, "rust dress and tan shoes", or by its colours where it shows none; '' while it is not read. */
function titleByLooks(reading: Reading, told: Inspiration['pieceKinds']): string {
	const worn = piecesOf(reading, told).filter(({ slot }) => slot !== 'accessory');
	const pieces = [...worn]
		.sort((one, other) => other.share - one.share)
		.slice(0, NAMED)
		.map((piece) => pieceName(piece, reading.trust));
	const [first, second] = new Set(pieces);
	if (first) return second ? say('board.twoPieces', { first, second }) : first;
	const colours = reading.swatches.slice(0, NAMED).map(({ lab }) => saidColour(lab, reading.trust.error));
	return colours.length > 0 ? say('board.inColours', { colours: listText([...new Set(colours)]) }) : '';
}

/** The pictures with their titles: one given by hand stays, all others are called by what they show, equal ones told apart in their order. */
export function withTitles<T extends Inspiration>(
	pictures: readonly { readonly inspiration: T; readonly reading: Reading | null }[],
): T[] {
	const places = new Map<string, number>();
	return pictures.map(({ inspiration, reading }) => {
		if (inspiration.titleFrom === 'user') return inspiration;
		const base = reading ? titleByLooks(reading, inspiration.pieceKinds) : '';
		const place = (places.get(base) ?? 0) + 1;
		places.set(base, place);
		return { ...inspiration, title: base === '' ? '' : nameAmongEqual(base, place) };
	});
}
