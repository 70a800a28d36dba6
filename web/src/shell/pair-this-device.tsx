import { type FormEvent, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import { call } from '../api/call.ts';
import { useChange } from '../api/change.ts';
import { Button } from '../parts/button.tsx';
import { Field } from '../parts/field.tsx';
import { Problem } from '../parts/problem.tsx';

/** What a device of the network sees before it gave the code: one field, and where the code stands. */
export function PairThisDevice() {
	const [code, setCode] = useState('');
	const pair = useChange(
		() => call('pairDevice', { body: { code: code.slice(0, 40) } }),
		// Everything is asked for anew, the line for news too, which ends for good where it was refused.
		() => location.reload(),
	);
	const send = (event: FormEvent) => {
		event.preventDefault();
		pair.run(undefined);
	};
	return (
		<main id="main" tabIndex={-1} className="start">
			<header>
				<p className="start-name">Dyelot</p>
				<h1>{say('pairPage.title')}</h1>
				<p>{say('pairPage.how')}</p>
			</header>
			<form onSubmit={send} className="sheet stack pairing">
				<Field label={say('pairPage.code')}>
					{(ids) => (
						<input
							{...ids}
							className="input code-input"
							inputMode="numeric"
							autoComplete="one-time-code"
							maxLength={40}
							required
							value={code}
							onChange={(event) => setCode(event.target.value)}
						/>
					)}
				</Field>
				<Button look="main" type="submit" isPending={pair.busy}>
					{say('pairPage.letIn')}
				</Button>
				<Problem of={pair.problem} />
			</form>
		</main>
	);
}
