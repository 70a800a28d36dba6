import { say } from '../../../../src/language/speak.ts';
import type { PaletteEdit } from '../../../../src/wardrobe/palette/palette-edit.ts';
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

/** Boards drawn anew that bring a colour back, from which on it is said to be steady, and fairly so; under the second it is tentative. */
const STEADY_FROM = 0.8;
const FAIRLY_FROM = 0.5;

const steadiness = (firmness: number): string =>
	say(firmness >= STEADY_FROM ? 'palette.firm' : firmness >= FAIRLY_FROM ? 'palette.middling' : 'palette.tentative');

/** How much of the palette it is, where it was seen, and how sure that is. */
function ColourWords({ colour: { origin, firmness, photos, weight } }: { colour: PaletteColour }) {
	const weighs = say('palette.weighs', { percent: percentText(weight) });
	return (
		<p className="small quiet">
			{weighs}{' '}
			{origin === 'by-hand'
				? say('palette.byHand')
				: `${say('palette.seen', { pictures: say('counts.inPictures', { count: photos }) })} ${steadiness(firmness)}`}
		</p>
	);
}

/** Its systematic name and its figures. */
function ColourFigures({ colour: { origin, firmness, spread, name, lab } }: { colour: PaletteColour }) {
	return (
		<details className="small quiet">
			<summary>{say('colours.details')}</summary>
			<p>
				{name}, <span className="number">{colourNumbers(lab)}</span>
			</p>
			{origin === 'by-hand' ? null : (
				<p>{say('palette.again100', { percent: Math.round(firmness * 100), spread: Math.round(spread) })}</p>
			)}
		</details>
	);
}

/** What can be changed of it: its word, its role, whether it is one colour or two; its figures stand below. */
function ChangeColour({ colour, onEdit }: { colour: PaletteColour; onEdit: (edit: PaletteEdit) => void }) {
	const { id, label, role } = colour;
	return (
		<details>
			<summary className="small">{say('palette.change', { name: colourWord(colour) })}</summary>
			<div className="stack">
				<TextField
					label={say('palette.ownWord')}
					value={label}
					maxLength={100}
					onCommit={(next) => onEdit({ edit: 'rename', id, label: next })}
				/>
				<SelectField<PaletteRole>
					label={say('palette.role')}
					value={role}
					options={PALETTE_ROLES.map((one) => ({ value: one, label: say(`palette.${one}`) }))}
					onChange={(next) => onEdit({ edit: 'role', id, role: next })}
				/>
				<span className="row">
					<Button small onPress={() => onEdit({ edit: 'split', id })}>
						{say('palette.split')}
					</Button>
					<Button small onPress={() => onEdit({ edit: 'remove', id })}>
						{say('palette.remove')}
					</Button>
				</span>
				<ColourFigures colour={colour} />
			</div>
		</details>
	);
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
	const name = colourWord(colour);
	return (
		<article
			className="palette-card"
			aria-label={name}
			data-tentative={colour.origin === 'derived' && colour.firmness < FAIRLY_FROM}
		>
			<Chip lab={colour.lab} size="large" />
			<h4>{name}</h4>
			<ColourWords colour={colour} />
			<div className="row">
				<Button
					small
					pressed={locked}
					onPress={() => onEdit({ edit: locked ? 'unlock' : 'lock', id })}
					aria-label={say('palette.lockNamed', { name })}
				>
					{say(locked ? 'palette.locked' : 'palette.lock')}
				</Button>
				<Check label={say('palette.mergeTick')} checked={chosen} onChange={onChoose} />
			</div>
			<ChangeColour colour={colour} onEdit={onEdit} />
		</article>
	);
}
