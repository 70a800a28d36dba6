import { Button } from './button.tsx';

/** A row of buttons of which one is down. */
export function Choices<T extends string>({
	label,
	value,
	options,
	small = false,
	onChange,
}: {
	label: string;
	value: T;
	options: readonly (readonly [T, string])[];
	small?: boolean;
	onChange: (value: T) => void;
}) {
	return (
		<fieldset className="choices">
			<legend className="hidden-visually">{label}</legend>
			{options.map(([key, name]) => (
				<Button key={key} small={small} pressed={value === key} onPress={() => onChange(key)}>
					{name}
				</Button>
			))}
		</fieldset>
	);
}
