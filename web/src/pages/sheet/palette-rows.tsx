import { say } from '../../../../src/language/speak.ts';
import type { AskedColour, Bands } from '../../../../src/wardrobe/gaps/bands.ts';
import { colourWord, type Palette } from '../../../../src/wardrobe/words/palette-colour.ts';
import { Chip } from '../../parts/swatch.tsx';

/** Parts of an asked colour that are missing: from a quarter on it is a gap, from three quarters on there is hardly any. */
const TOO_LITTLE_FROM = 0.25;
const HARDLY_ANY_FROM = 0.75;

/** How much of an asked colour is held, in words. */
function heldWords({ amount, missing }: AskedColour): string {
	if (amount <= 0 || missing < TOO_LITTLE_FROM * amount) return say('sheet.enough');
	return say(missing < HARDLY_ANY_FROM * amount ? 'sheet.tooLittle' : 'sheet.hardlyAny');
}

/** The palette, numbered and in words: what each colour is, its role, and whether there is enough of it. */
export function PaletteRows({ palette, bands }: { palette: Palette; bands: Bands }) {
	if (palette.colours.length === 0) return <p>{say('sheet.noPalette')}</p>;
	const askedOf = new Map(bands.asked.map((asked) => [asked.paletteColourId, asked]));
	return (
		<ol className="paper-palette">
			{palette.colours.map((colour) => {
				const asked = askedOf.get(colour.id);
				return (
					<li key={colour.id}>
						<Chip lab={colour.lab} size="small" />
						<span className="paper-words">
							<b>{colourWord(colour)}</b>
							<span>
								{say(`roles.${colour.role}`)}
								{asked ? `, ${heldWords(asked)}` : ''}
							</span>
						</span>
					</li>
				);
			})}
		</ol>
	);
}
