import { say } from '../../../../src/language/speak.ts';
import type { Gap } from '../../../../src/wardrobe/gaps/gap.ts';
import { isWished } from '../../../../src/wardrobe/wishes/is-wished.ts';
import { colourWord, type Palette } from '../../../../src/wardrobe/words/palette-colour.ts';
import type { Wish } from '../../../../src/wardrobe/words/wish.ts';

/** More than these nobody looks for at once. */
const SHOWN = 6;

/** What a gap lacks, as a piece with its colour. */
function gapWords({ name, slot, pieceKind, paletteColourId }: Gap, palette: Palette): string {
	if (name !== null) return name;
	const piece = say(pieceKind === null ? `pieces.${slot}` : `kinds.${pieceKind}`);
	const colour = palette.colours.find(({ id }) => id === paletteColourId);
	return colour ? say('wishes.inColour', { colour: colourWord(colour), piece }) : piece;
}

type AlsoMissingProps = {
	readonly gaps: readonly Gap[];
	readonly wishes: readonly Wish[];
	readonly palette: Palette;
};

/** The gaps that no wish answers yet, the first few of them, in a line. */
export function AlsoMissing({ gaps, wishes, palette }: AlsoMissingProps) {
	const open = gaps.filter((gap) => !isWished(gap, wishes));
	const words = [...new Set(open.map((gap) => gapWords(gap, palette)))].slice(0, SHOWN);
	if (words.length === 0) return null;
	return (
		<p className="paper-gaps">
			<b>{say('sheet.alsoMissing')}:</b> {words.join('; ')}.
		</p>
	);
}
