import type { PaletteEdit } from '../../../../src/wardrobe/palette/palette-edit.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import {
	colourWord,
	PALETTE_ROLES,
	type PaletteColour,
	type PaletteRole,
} from '../../../../src/wardrobe/words/palette-colour.ts';
import { Button } from '../../parts/button.tsx';
import { colourNumbers, percentText } from '../../parts/colour-text.ts';
import { Check, SelectField, TextField } from '../../parts/field.tsx';
import { Chip } from '../../parts/swatch.tsx';

/** How sure the colour is, in words. */
function firmnessText({ origin, firmness, photos }: PaletteColour): string {
	if (origin === 'by-hand') return 'added by hand';
	const seen = `in ${counted(photos, 'picture')}`;
	const again = `other mixes of your pictures bring it back ${Math.round(firmness * 100)} times in 100`;
	return firmness < 0.5 ? `${seen}. Tentative: ${again}` : `${seen}; ${again}`;
}

/** One palette colour with everything that can be done to it. */
export function PaletteCard({
	colour,
	chosen,
	onChoose,
	onEdit,
}: {
	colour: PaletteColour;
	chosen: boolean;
	onChoose: (on: boolean) => void;
	onEdit: (edit: PaletteEdit) => void;
}) {
	const { id, locked } = colour;
	const word = colourWord(colour);
	return (
		<article
			className="palette-card"
			aria-label={word}
			data-tentative={colour.origin === 'derived' && colour.firmness < 0.5}
		>
			<Chip lab={colour.lab} size="large" />
			<h4>{word}</h4>
			{colour.label ? <p className="small quiet">{colour.name}</p> : null}
			<p className="small number">{colourNumbers(colour.lab)}</p>
			<p className="small quiet">
				{percentText(colour.weight)} of the palette, its shades {colour.spread.toFixed(1)} apart; {firmnessText(colour)}
				.
			</p>
			<div className="row">
				<Button
					small
					pressed={locked}
					onPress={() => onEdit({ edit: locked ? 'unlock' : 'lock', id })}
					aria-label={`Lock ${word}`}
				>
					{locked ? 'Locked' : 'Lock'}
				</Button>
				<Check label="merge" checked={chosen} onChange={onChoose} />
			</div>
			<details>
				<summary className="small">Change {word}</summary>
				<div className="stack">
					<TextField
						label="Your own word for it"
						value={colour.label}
						maxLength={100}
						onCommit={(label) => onEdit({ edit: 'rename', id, label })}
					/>
					<SelectField<PaletteRole>
						label="Role"
						value={colour.role}
						options={PALETTE_ROLES.map((role) => ({ value: role, label: role }))}
						onChange={(role) => onEdit({ edit: 'role', id, role })}
					/>
					<span className="row">
						<Button small onPress={() => onEdit({ edit: 'split', id })}>
							Split in two
						</Button>
						<Button small onPress={() => onEdit({ edit: 'remove', id })}>
							Remove
						</Button>
					</span>
				</div>
			</details>
		</article>
	);
}
