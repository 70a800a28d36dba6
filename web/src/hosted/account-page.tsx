import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { momentText } from '../../../src/language/numbers.ts';
import { say } from '../../../src/language/speak.ts';
import { useChange } from '../api/change.ts';
import { refreshSoon } from '../api/refresh.ts';
import { ActingTable } from '../parts/acting-table.tsx';
import { Button } from '../parts/button.tsx';
import { Problem } from '../parts/problem.tsx';
import { Frame } from './frame.tsx';
import { type Account, accountQuery, ask } from './host-calls.ts';
import { makePasskey } from './passkey.ts';
import { PasswordField } from './secret-fields.tsx';

function Sessions({ account }: { account: Account }) {
	const end = useChange(
		(id: string) => ask('DELETE', `/sessions/${id}`),
		() => refreshSoon(),
	);
	const endOthers = useChange(
		() => ask('DELETE', '/sessions'),
		() => refreshSoon(),
	);
	return (
		<section className="section stack" aria-labelledby="sessions">
			<h2 id="sessions">{say('doorway.sessions')}</h2>
			<ActingTable headings={[say('doorway.device'), say('doorway.signedIn'), say('doorway.seen')]}>
				{account.sessions.map(({ id, device, signedInAt, seenAt, isThis }) => (
					<tr key={id}>
						<th scope="row">
							{device} {isThis ? <span className="quiet italic">{say('doorway.thisOne')}</span> : null}
						</th>
						<td>{momentText(signedInAt)}</td>
						<td>{momentText(seenAt)}</td>
						<td>
							{isThis ? null : (
								<Button
									small
									onPress={() => end.run(id)}
									aria-label={say('doorway.endNamed', { device, at: momentText(signedInAt) })}
								>
									{say('doorway.end')}
								</Button>
							)}
						</td>
					</tr>
				))}
			</ActingTable>
			<p className="quiet">{say('doorway.endsAlone')}</p>
			{account.sessions.length > 1 ? (
				<p>
					<Button onPress={() => endOthers.run(undefined)}>{say('doorway.endOthers')}</Button>
				</p>
			) : null}
			<Problem of={end.problem ?? endOthers.problem} />
		</section>
	);
}

function Passkeys({ account }: { account: Account }) {
	const add = useChange(
		async () => ask('POST', '/passkeys', await makePasskey('/passkeys/ask')),
		() => refreshSoon(),
	);
	const remove = useChange(
		(id: string) => ask('DELETE', `/passkeys/${encodeURIComponent(id)}`),
		() => refreshSoon(),
	);
	return (
		<section className="section stack" aria-labelledby="passkeys">
			<h2 id="passkeys">{say('doorway.passkeys')}</h2>
			{account.passkeys.length === 0 ? <p className="quiet">{say('doorway.noPasskeys')}</p> : null}
			<ul className="stack">
				{account.passkeys.map(({ id, device, addedAt }) => (
					<li key={id} className="row">
						<span>
							{device}, {momentText(addedAt)}
						</span>
						<Button
							small
							onPress={() => remove.run(id)}
							aria-label={say('doorway.removePasskeyNamed', { device, at: momentText(addedAt) })}
						>
							{say('doorway.remove')}
						</Button>
					</li>
				))}
			</ul>
			<p>
				<Button onPress={() => add.run(undefined)} isPending={add.busy}>
					{say('doorway.addPasskey')}
				</Button>
			</p>
			<Problem of={add.problem ?? remove.problem} />
		</section>
	);
}

function Password({ account }: { account: Account }) {
	const [old, setOld] = useState('');
	const [password, setPassword] = useState('');
	const set = useChange(
		() => ask('PUT', '/password', { ...(account.hasPassword ? { old } : {}), password }),
		() => {
			setOld('');
			setPassword('');
			refreshSoon();
		},
	);
	const send = (event: FormEvent) => {
		event.preventDefault();
		set.run(undefined);
	};
	return (
		<section className="section" aria-labelledby="password">
			<h2 id="password">{say('doorway.password')}</h2>
			<form className="stack" onSubmit={send}>
				{account.hasPassword ? (
					<PasswordField label={say('doorway.oldPassword')} value={old} isNew={false} onChange={setOld} />
				) : null}
				<PasswordField label={say('doorway.newPassword')} value={password} isNew onChange={setPassword} />
				<p>
					<Button type="submit" isPending={set.busy}>
						{say('doorway.setPassword')}
					</Button>
				</p>
				{set.output ? <p role="status">{say('doorway.passwordSet')}</p> : null}
				<Problem of={set.problem} />
			</form>
		</section>
	);
}

/** Where one is signed in and with what, and the way out. */
export function AccountPage() {
	const { data: account } = useQuery(accountQuery);
	const signOut = useChange(
		() => ask('POST', '/sign-out'),
		() => location.replace('/'),
	);
	if (!account) return null;
	return (
		<Frame
			place="/account"
			name={say('doorway.account')}
			purpose={say('doorway.accountPurpose', { name: account.person.name })}
		>
			<p>
				<Button onPress={() => signOut.run(undefined)}>{say('doorway.signOut')}</Button>
			</p>
			<Problem of={signOut.problem} />
			<Sessions account={account} />
			<Passkeys account={account} />
			<Password account={account} />
		</Frame>
	);
}
