import { MOST_NAME_LETTERS, PASSWORD_LETTERS } from '../../../src/language/letters.ts';
import { say } from '../../../src/language/speak.ts';
import { Field } from '../parts/field.tsx';

/** The name of a person, as they sign in with it. */
export const NameField = ({ value, onChange }: { value: string; onChange: (value: string) => void }) => (
	<Field label={say('doorway.name')}>
		{(ids) => (
			<input
				{...ids}
				className="input"
				autoComplete="username webauthn"
				maxLength={MOST_NAME_LETTERS}
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
	<Field label={label} hint={isNew ? say('doorway.passwordHint', { least: PASSWORD_LETTERS.least }) : undefined}>
		{(ids) => (
			<input
				{...ids}
				className="input"
				type="password"
				autoComplete={isNew ? 'new-password' : 'current-password'}
				maxLength={PASSWORD_LETTERS.most}
				required
				value={value}
				onChange={(event) => onChange(event.target.value)}
			/>
		)}
	</Field>
);
