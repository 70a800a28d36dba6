import { numberText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import type { Palette } from '../../../../src/wardrobe/words/palette-colour.ts';
import { saidColour } from '../../../../src/wardrobe/words/said-colour.ts';
import type { Wish } from '../../../../src/wardrobe/words/wish.ts';
import { Chip } from '../../parts/swatch.tsx';

/** What a wish looks for, beside its name: kind or sort, colour with its number in the palette, price limit, notes. */
function wishWords({ slot, kind, target, paletteColourId, priceLimit, notes }: Wish, palette: Palette): string {
	const place = palette.colours.findIndex(({ id }) => id === paletteColourId) + 1;
	return [
		say(kind === null ? `pieces.${slot}` : `kinds.${kind}`),
		target ? saidColour(target) : say('sheet.anyColour'),
		place > 0 ? say('sheet.number', { number: place }) : '',
		priceLimit === null ? '' : say('sheet.upTo', { price: numberText(priceLimit) }),
		notes,
	]
		.filter(Boolean)
		.join(' · ');
}

/** Lines to write on in the shop. */
const LINES = ['shop', 'price', 'note'] as const;

/** Open wishes, each with a box to tick and room to write. */
export function LookingFor({ wishes, palette }: { wishes: readonly Wish[]; palette: Palette }) {
	if (wishes.length === 0) return <p>{say('sheet.noWish')}</p>;
	return (
		<ul className="paper-wishes">
			{wishes.map((wish) => (
				<li key={wish.id}>
					<span className="paper-box" aria-hidden="true" />
					{wish.target ? <Chip lab={wish.target} size="small" /> : <span aria-hidden="true" />}
					<span className="paper-words">
						<b>{wish.name}</b>
						<span>{wishWords(wish, palette)}</span>
					</span>
					<span className="paper-lines">
						{LINES.map((line) => (
							<span key={line} className={`paper-line paper-line-${line}`}>
								{say(`sheet.${line}`)}
							</span>
						))}
					</span>
				</li>
			))}
		</ul>
	);
}
