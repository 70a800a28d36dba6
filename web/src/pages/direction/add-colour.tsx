import { useState } from 'react';
import { type Lab65, labFromHex } from '../../../../src/colour/lab65.ts';
import type { PaletteEdit } from '../../../../src/wardrobe/palette/palette-edit.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/field.tsx';
import { Swatch } from '../../parts/swatch.tsx';
import { labFromText } from './lab-text.ts';

/** A colour typed as hex or CIELAB and added to the palette. From a photo, the eyedropper of a picture does the same. */
export function AddColour({ onAdd }: { onAdd: (edit: PaletteEdit) => void }) {
	const [text, setText] = useState('');
	const [label, setLabel] = useState('');
	const lab: Lab65 | null = labFromHex(text.trim()) ?? labFromText(text);
	return (
		<details>
			<summary>Add a colour by hand</summary>
			<form
				className="stack"
				onSubmit={(event) => {
					event.preventDefault();
					if (!lab) return;
					onAdd({ edit: 'add', lab, ...(label ? { label } : {}) });
					setText('');
					setLabel('');
				}}
			>
				<p className="quiet small">To pick one from a photo, open a picture of the board and use its eyedropper.</p>
				<div className="fields">
					<TextField
						live
						label="Colour"
						value={text}
						placeholder="#a1b2c3 or 62 4.5 -12"
						hint="hex, or CIELAB (D65): L a b"
						onCommit={setText}
					/>
					<TextField live label="Your own word for it" value={label} maxLength={100} onCommit={setLabel} />
				</div>
				{lab ? (
					<Swatch lab={lab} label={label} />
				) : text.trim() ? (
					<p className="warn small">
						Expected a hex colour such as #a1b2c3 or three CIELAB numbers such as 62 4.5 -12.
					</p>
				) : null}
				<Button type="submit" isDisabled={!lab}>
					Add it to the palette
				</Button>
			</form>
		</details>
	);
}
