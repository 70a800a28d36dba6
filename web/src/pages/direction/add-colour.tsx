import { useMemo, useState } from 'react';
import { type Lab65, labFromHex } from '../../../../src/colour/lab65.ts';
import { coloursNamed, type NamedColour } from '../../../../src/colour/words/find-colour.ts';
import { say, spokenLanguage } from '../../../../src/language/speak.ts';
import type { PaletteEdit } from '../../../../src/wardrobe/palette/palette-edit.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { Swatch } from '../../parts/swatch.tsx';
import { ColourFromPicture } from './colour-from-picture.tsx';
import { ColourButtons, ColourGrid } from './colour-grid.tsx';
import { labFromText } from './lab-text.ts';

/** A colour added to the palette: by its word, from a grid of those that have one, by number, or from a picture. */
export function AddColour({ onAdd }: { onAdd: (edit: PaletteEdit) => void }) {
	const [text, setText] = useState('');
	const [label, setLabel] = useState('');
	const [pointed, setPointed] = useState<Lab65 | null>(null);
	const named = useMemo(() => coloursNamed(text, spokenLanguage()), [text]);
	const lab: Lab65 | null = pointed ?? labFromHex(text.trim()) ?? labFromText(text) ?? named[0]?.lab ?? null;
	const type = (word: string) => {
		setPointed(null);
		setText(word);
	};
	const choose = (colour: NamedColour) => {
		setPointed(colour.lab);
		setText(colour.word);
	};
	return (
		<details>
			<summary>{say('colours.add')}</summary>
			<form
				className="stack"
				onSubmit={(event) => {
					event.preventDefault();
					if (!lab) return;
					onAdd({ edit: 'add', lab, ...(label ? { label } : {}) });
					type('');
					setLabel('');
				}}
			>
				<p className="quiet small">{say('colours.addHow')}</p>
				<div className="fields">
					<TextField
						live
						label={say('colours.colour')}
						value={text}
						placeholder={say('colours.placeholder')}
						hint={say('colours.hint')}
						onCommit={type}
					/>
					<TextField live label={say('colours.ownWord')} value={label} maxLength={100} onCommit={setLabel} />
				</div>
				{named.length > 1 ? (
					<ColourButtons label={say('colours.meant')} colours={named} chosen={lab} onChoose={choose} />
				) : null}
				<ColourGrid chosen={lab} onChoose={choose} />
				<ColourFromPicture onPick={setPointed} />
				{lab ? (
					<Swatch lab={lab} label={label} note={say('colours.screen')} />
				) : text.trim() ? (
					<p className="warn small">{say('colours.none')}</p>
				) : null}
				<Button type="submit" isDisabled={!lab}>
					{say('colours.addIt')}
				</Button>
			</form>
		</details>
	);
}
