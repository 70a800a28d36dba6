import { say } from '../../../src/language/speak.ts';
import { TextField } from './field.tsx';
import { numberOrNull } from './number-text.ts';

/** An amount of money, or null for none told. */
export function PriceField({
	label = say('fields.price'),
	price,
	onCommit,
}: {
	label?: string;
	price: number | null;
	onCommit: (price: number | null) => void;
}) {
	return (
		<TextField
			label={label}
			type="number"
			min={0}
			step="any"
			value={price?.toString() ?? ''}
			onCommit={(text) => onCommit(numberOrNull(text))}
		/>
	);
}
