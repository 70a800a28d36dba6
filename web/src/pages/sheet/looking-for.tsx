import { say } from '../../../../src/language/speak.ts';
import type { Gap } from '../../../../src/wardrobe/gaps/gap.ts';
import type { Palette } from '../../../../src/wardrobe/words/palette-colour.ts';
import { saidColour } from '../../../../src/wardrobe/words/said-colour.ts';
import type { Wish } from '../../../../src/wardrobe/words/wish.ts';
import { Chip } from '../../parts/swatch.tsx';

/** Open wishes with a box to tick and a line to write on, and the gaps that no wish answers yet. */
export function LookingFor({
	wishes,
	gaps,
	palette,
}: {
	wishes: readonly Wish[];
	gaps: readonly Gap[];
	palette: Palette;
}) {
	const numberOf = new Map(palette.colours.map(({ id }, index) => [id, index + 1]));
	const open = gaps.filter(
		(gap) => !wishes.some((wish) => wish.slot === gap.slot && wish.paletteColourId === gap.paletteColourId),
	);
	return (
		<>
			{wishes.length === 0 ? <p>No open wish.</p> : null}
			<ul className="paper-wishes">
				{wishes.map(({ id, name, slot, target, paletteColourId, priceLimit, notes }) => {
					const number = paletteColourId === null ? undefined : numberOf.get(paletteColourId);
					return (
						<li key={id}>
							<span className="paper-box" aria-hidden="true" />
							{target ? <Chip lab={target} size="small" /> : null}
							<span className="paper-words">
								<b>{name}</b>
								<span>
									{[
										say(`slots.${slot}`),
										target ? saidColour(target) : 'any colour of the palette',
										number === undefined ? '' : `No. ${number}`,
										priceLimit === null ? '' : `up to ${priceLimit}`,
										notes,
									]
										.filter(Boolean)
										.join(' · ')}
								</span>
							</span>
							<span className="paper-line" aria-hidden="true" />
						</li>
					);
				})}
			</ul>
			{open.length > 0 ? (
				<>
					<h3>Gaps not on the wish list</h3>
					<ul className="paper-gaps">
						{open.map(({ id, sentence }) => (
							<li key={id}>{sentence}</li>
						))}
					</ul>
				</>
			) : null}
		</>
	);
}
