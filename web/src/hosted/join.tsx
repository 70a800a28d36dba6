import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import { useChange } from '../api/change.ts';
import { Button } from '../parts/button.tsx';
import { Loading } from '../parts/loading.tsx';
import { Problem } from '../parts/problem.tsx';
import { accountQuery, ask } from './host-calls.ts';
import { makePasskey } from './passkey.ts';
import { NameField, PasswordField } from './secret-fields.tsx';

type Invited = { readonly homeName: string | null; readonly role: 'plan' | 'look' | null; readonly isHost: boolean };

/** In what stands behind # no server is told. */
const tokenInAddress = (): string => location.hash.slice(1);

function wordsOf({ homeName, role, isHost }: Invited): string {
	if (isHost) return say('doorway.joinHost');
	if (homeName === null) return say('doorway.joinNew');
	return say(role === 'look' ? 'doorway.joinLook' : 'doorway.joinPlan', { home: homeName });
}

/** Somebody new: a name, then a passkey or a password. */
function Newcomer({ token }: { token: string }) {
	const [name, setName] = useState('');
	const [password, setPassword] = useState('');
	const enter = () => location.replace('/');
	const byPasskey = useChange(async () => {
		const passkey = await makePasskey('/join/passkey', { token, name });
		await ask('POST', '/join', { token, name, passkey });
	}, enter);
	const byPassword = useChange(() => ask('POST', '/join', { token, name, password }), enter);
	const send = (event: FormEvent) => {
		event.preventDefault();
		byPassword.run(undefined);
	};
	return (
		<form className="sheet stack" onSubmit={send}>
			<NameField value={name} onChange={setName} />
			<Button
				look="main"
				onPress={() => byPasskey.run(undefined)}
				isDisabled={name.trim() === ''}
				isPending={byPasskey.busy}
			>
				{say('doorway.joinPasskey')}
			</Button>
			<p className="quiet small">{say('doorway.passkeyHint')}</p>
			<Problem of={byPasskey.problem} />
			<h2>{say('doorway.orPassword')}</h2>
			<PasswordField label={say('doorway.password')} value={password} isNew onChange={setPassword} />
			<Button type="submit" isPending={byPassword.busy}>
				{say('doorway.joinPassword')}
			</Button>
			<Problem of={byPassword.problem} />
		</form>
	);
}

/** What a link opens: coming in for the first time, or into one more home. */
export function Join() {
	const token = tokenInAddress();
	const { data: account, isPending } = useQuery(accountQuery);
	const { data: invited, error } = useQuery({
		queryKey: ['host/link', token],
		queryFn: () => ask<Invited>('POST', '/link', { token }),
		enabled: token !== '',
	});
	const joinHome = useChange(
		() => ask<{ home: string }>('POST', '/join/home', { token }),
		({ home }) => location.replace(`/homes/${home}/`),
	);
	if (token !== '' && !error && (!invited || isPending)) return <Loading what={say('doorway.join')} />;
	return (
		<main id="main" tabIndex={-1} className="start doorway">
			<header>
				<p className="start-name">Dyelot</p>
				<h1>{say('doorway.join')}</h1>
				{invited ? <p>{wordsOf(invited)}</p> : null}
			</header>
			<Problem of={token === '' ? { message: say('doorway.noLink') } : error} />
			{invited && account ? (
				<p>
					<Button look="main" onPress={() => joinHome.run(undefined)} isPending={joinHome.busy}>
						{say('doorway.joinAs', { name: account.person.name })}
					</Button>
				</p>
			) : null}
			{invited && !account ? <Newcomer token={token} /> : null}
			<Problem of={joinHome.problem} />
		</main>
	);
}
