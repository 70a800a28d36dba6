import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import type { MembersHome } from '../../../src/store/postgres/accounts/homes.ts';
import { useChange } from '../api/change.ts';
import { refreshSoon } from '../api/refresh.ts';
import { ActingTable } from '../parts/acting-table.tsx';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { TextField } from '../parts/field.tsx';
import { Loading } from '../parts/loading.tsx';
import { Problem } from '../parts/problem.tsx';
import { BringHome } from './bring-home.tsx';
import { Frame } from './frame.tsx';
import { HomeDialog } from './home-dialog.tsx';
import { accountQuery, ask, homesQuery, ROLE_WORDS } from './host-calls.ts';

function HomeRow({ home, onManage }: { home: MembersHome; onManage: () => void }) {
	const { data: account } = useQuery(accountQuery);
	const leave = useChange(
		() => ask('DELETE', `/homes/${home.id}/members/${account?.person.id}`),
		() => refreshSoon(),
	);
	return (
		<tr>
			<th scope="row">
				<a href={`/homes/${home.id}/`}>{home.name}</a>{' '}
				<span className="quiet italic">{say(ROLE_WORDS[home.role])}</span>
				<Problem of={leave.problem} />
			</th>
			<td>
				{home.role === 'own' ? (
					<Button small onPress={onManage} aria-label={say('doorway.manageNamed', { home: home.name })}>
						{say('doorway.manage')}
					</Button>
				) : (
					<Button
						small
						onPress={() => leave.run(undefined)}
						aria-label={say('doorway.leaveNamed', { home: home.name })}
					>
						{say('doorway.leave')}
					</Button>
				)}
			</td>
		</tr>
	);
}

function NewHome() {
	const [name, setName] = useState('');
	const make = useChange(
		() => ask<{ id: string }>('POST', '/homes', { name }),
		({ id }) => location.assign(`/homes/${id}/`),
	);
	const send = (event: FormEvent) => {
		event.preventDefault();
		make.run(undefined);
	};
	return (
		<form className="stack field-narrow" onSubmit={send}>
			<TextField label={say('doorway.nameOfHome')} value={name} live maxLength={80} required onCommit={setName} />
			<p>
				<Button type="submit" isPending={make.busy}>
					{say('doorway.makeHome')}
				</Button>
			</p>
			<Problem of={make.problem} />
		</form>
	);
}

/** The homes that one may enter, a new one, and one brought along. */
export function HomesPage() {
	const { data: homes, error } = useQuery(homesQuery);
	const [managed, setManaged] = useState<MembersHome | null>(null);
	return (
		<Frame place="/" name={say('doorway.homes')} purpose={say('doorway.homesPurpose')}>
			<Problem of={error} />
			{homes ? (
				<ActingTable headings={[say('doorway.where')]}>
					{homes.map((home) => (
						<HomeRow key={home.id} home={home} onManage={() => setManaged(home)} />
					))}
				</ActingTable>
			) : (
				<Loading what={say('doorway.homes')} />
			)}
			<section className="section" aria-labelledby="new-home">
				<h2 id="new-home">{say('doorway.newHome')}</h2>
				<NewHome />
			</section>
			<section className="section" aria-labelledby="bring-home">
				<h2 id="bring-home">{say('doorway.bringHome')}</h2>
				<BringHome />
			</section>
			{managed ? (
				<Dialog title={managed.name} onClose={() => setManaged(null)}>
					<HomeDialog home={managed} onGone={() => setManaged(null)} />
				</Dialog>
			) : null}
		</Frame>
	);
}
