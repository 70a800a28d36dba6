import { useQuery } from '@tanstack/react-query';
import { dayText } from '../../../src/language/numbers.ts';
import { say } from '../../../src/language/speak.ts';
import type { Member, MembersHome } from '../../../src/store/postgres/accounts/homes.ts';
import { useChange } from '../api/change.ts';
import { refreshSoon } from '../api/refresh.ts';
import { ActingTable } from '../parts/acting-table.tsx';
import { Button } from '../parts/button.tsx';
import { TextField } from '../parts/field.tsx';
import { Problem } from '../parts/problem.tsx';
import { ask, ROLE_WORDS } from './host-calls.ts';
import { LinkOut } from './link-out.tsx';
import { Sure } from './sure.tsx';

function Members({ home }: { home: MembersHome }) {
	const { data: members = [], error } = useQuery({
		queryKey: ['host/members', home.id],
		queryFn: () => ask<Member[]>('GET', `/homes/${home.id}/members`),
	});
	const putOut = useChange(
		(person: string) => ask('DELETE', `/homes/${home.id}/members/${person}`),
		() => refreshSoon(),
	);
	return (
		<div>
			<ActingTable headings={[say('doorway.member'), say('doorway.may'), say('doorway.since')]}>
				{members.map(({ person, name, role, since }) => (
					<tr key={person}>
						<th scope="row">{name}</th>
						<td>{say(ROLE_WORDS[role])}</td>
						<td>{dayText(since.slice(0, 10))}</td>
						<td>
							{role === 'own' ? null : (
								<Button small onPress={() => putOut.run(person)} aria-label={say('doorway.putOutNamed', { name })}>
									{say('doorway.putOut')}
								</Button>
							)}
						</td>
					</tr>
				))}
			</ActingTable>
			<Problem of={error ?? putOut.problem} />
		</div>
	);
}

/** What an owner decides about a home: who may come in, its name, taking it along, and its end. */
export function HomeDialog({ home, onGone }: { home: MembersHome; onGone: () => void }) {
	const invite = useChange((role: 'plan' | 'look') =>
		ask<{ link: string }>('POST', `/homes/${home.id}/links`, { role }),
	);
	const rename = useChange(
		(name: string) => ask('PATCH', `/homes/${home.id}`, { name }),
		() => refreshSoon(),
	);
	const remove = useChange(
		() => ask('DELETE', `/homes/${home.id}`),
		() => {
			refreshSoon();
			onGone();
		},
	);
	return (
		<div className="stack">
			<Members home={home} />
			<p className="row">
				<Button onPress={() => invite.run('plan')}>{say('doorway.letPlan')}</Button>
				<Button onPress={() => invite.run('look')}>{say('doorway.letLook')}</Button>
			</p>
			{invite.output ? <LinkOut key={invite.output.link} link={invite.output.link} /> : null}
			<Problem of={invite.problem} />
			<TextField label={say('doorway.rename')} value={home.name} maxLength={80} onCommit={(name) => rename.run(name)} />
			<Problem of={rename.problem} />
			<h3>{say('doorway.takeAlong')}</h3>
			<p>
				<a href={`/homes/${home.id}/api/backup`} download>
					{say('doorway.takeAlongHow')}
				</a>
			</p>
			<h3>{say('doorway.removeHome')}</h3>
			<Sure
				how={say('doorway.removeHomeHow')}
				label={say('doorway.nameOfHome')}
				name={home.name}
				button={say('doorway.removeForGood')}
				onSure={() => remove.run(undefined)}
			/>
			<Problem of={remove.problem} />
		</div>
	);
}
