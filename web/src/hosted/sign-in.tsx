import { type FormEvent, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import { useChange } from '../api/change.ts';
import { Button } from '../parts/button.tsx';
import { Problem } from '../parts/problem.tsx';
import { ask } from './host-calls.ts';
import { signInWithPasskey } from './passkey.ts';
import { NameField, PasswordField } from './secret-fields.tsx';

/** Everything is asked for anew, the line for news too. */
const enter = () => location.reload();

/** Who is not signed in: a passkey first, name and password beside it. */
export function SignIn() {
	const [name, setName] = useState('');
	const [password, setPassword] = useState('');
	const byPasskey = useChange(signInWithPasskey, enter);
	const byPassword = useChange(() => ask('POST', '/sign-in', { name, password }), enter);
	const send = (event: FormEvent) => {
		event.preventDefault();
		byPassword.run(undefined);
	};
	return (
		<main id="main" tabIndex={-1} className="start doorway">
			<header>
				<p className="start-name">Dyelot</p>
				<h1>{say('doorway.signIn')}</h1>
				<p>{say('doorway.signInPurpose')}</p>
			</header>
			<section className="sheet stack">
				<Button look="main" onPress={() => byPasskey.run(undefined)} isPending={byPasskey.busy}>
					{say('doorway.withPasskey')}
				</Button>
				<p className="quiet small">{say('doorway.passkeyHint')}</p>
				<Problem of={byPasskey.problem} />
			</section>
			<form className="sheet stack" onSubmit={send} aria-labelledby="by-password">
				<h2 id="by-password">{say('doorway.orPassword')}</h2>
				<NameField value={name} onChange={setName} />
				<PasswordField label={say('doorway.password')} value={password} isNew={false} onChange={setPassword} />
				<Button type="submit" isPending={byPassword.busy}>
					{say('doorway.signIn')}
				</Button>
				<Problem of={byPassword.problem} />
			</form>
		</main>
	);
}
