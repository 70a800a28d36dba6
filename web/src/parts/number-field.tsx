import { TextField } from './field.tsx';

/** A number that lies within its limits once the field is left; an emptied field counts as 0. */
export function NumberField({
	label,
	value,
	least,
	most,
	whole = true,
	hint = '',
	onCommit,
}: {
	label: string;
	value: number;
	least: number;
	most: number;
	/** false = fractions are kept. */
	whole?: boolean;
	hint?: string;
	onCommit: (value: number) => void;
}) {
	const commit = (text: string) => {
		const number = Number(text) || 0;
		onCommit(Math.min(most, Math.max(least, whole ? Math.round(number) : number)));
	};
	return (
		<TextField label={label} type="number" min={least} max={most} value={String(value)} hint={hint} onCommit={commit} />
	);
}
