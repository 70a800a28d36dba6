import { useState } from 'react';
import { Button } from '../parts/button.tsx';
import { TextField } from '../parts/field.tsx';

/** What cannot be taken back: done only once its name is typed. */
export function Sure({
	how,
	label,
	name,
	button,
	onSure,
}: {
	how: string;
	label: string;
	name: string;
	button: string;
	onSure: () => void;
}) {
	const [typed, setTyped] = useState('');
	return (
		<div className="stack">
			<p>{how}</p>
			<TextField label={label} value={typed} live onCommit={setTyped} />
			<p>
				<Button onPress={onSure} isDisabled={typed.trim() !== name.trim()}>
					{button}
				</Button>
			</p>
		</div>
	);
}
