import type { Lab65 } from '../../../../src/colour/lab65.ts';
import { colourGrid, type NamedColour } from '../../../../src/colour/words/find-colour.ts';
import { say, spokenLanguage } from '../../../../src/language/speak.ts';
import { Chip } from '../../parts/swatch.tsx';

const same = (one: Lab65, other: Lab65 | null): boolean =>
	other !== null && one.every((value, axis) => value === other[axis]);

/** Colours with their words as buttons; the one chosen stays down. */
export function ColourButtons({
	label,
	colours,
	chosen,
	onChoose,
}: {
	label: string;
	colours: readonly NamedColour[];
	chosen: Lab65 | null;
	onChoose: (colour: NamedColour) => void;
}) {
	return (
		<fieldset className="colour-buttons">
			<legend className="small quiet">{label}</legend>
			{colours.map((colour) => (
				<button
					key={colour.word}
					type="button"
					className="colour-button"
					aria-pressed={same(colour.lab, chosen)}
					onClick={() => onChoose(colour)}
				>
					<Chip lab={colour.lab} size="small" />
					<span>{colour.word}</span>
				</button>
			))}
		</fieldset>
	);
}

/** Every colour that has a word for clothes, a row a basic colour. */
export function ColourGrid({ chosen, onChoose }: { chosen: Lab65 | null; onChoose: (colour: NamedColour) => void }) {
	return (
		<details>
			<summary>{say('colours.grid')}</summary>
			<div className="stack">
				{colourGrid(spokenLanguage()).map(({ term, colours }) => (
					<ColourButtons
						key={term}
						label={say(`basicColours.${term}`)}
						colours={colours}
						chosen={chosen}
						onChoose={onChoose}
					/>
				))}
			</div>
		</details>
	);
}
