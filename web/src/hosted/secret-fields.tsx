import { say } from '../../../src/language/speak.ts';
import { Field } from '../parts/field.tsx';

/** The least letters of a password; the program refuses fewer. */
const LEAST_LETTERS = 15;

/** The name of a person, as they sign in with it. */
export const NameField = ({ value, onChange }: { value: string; onChange: (value: string) => void }) => (
	<Field label={say('doorway.name')}>
		{(ids) => (
			<input
				{...ids}
				className="input"
				autoComplete="username webauthn"
				maxLength={80}
				required
				value={value}
				onChange={(event) => onChange(event.target.value)}
			/>
		)}
	</Field>
);

/** A password: `isNew` where one is chosen. */
export const PasswordField = ({
	label,
	value,
	isNew,
	onChange,
}: {
	label: string;
	value: string;
	isNew: boolean;
	onChange: (value: string) => void;
}) => (
	<Field label={label} hint={isNew ? say('doorway.passwordHint', { least: LEAST_LETTERS }) : undefined}>
		{(ids) => (
			<input
				{...ids}
				className="input"
				type="password"
				autoComplete={isNew ? 'new-password' : 'current-password'}
				maxLength={200}
				required
				value={value}
				onChange={(event) => onChange(event.target.value)}
			/>
		)}
	</Field>
);
