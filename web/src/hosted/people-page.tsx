import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { dayText } from '../../../src/language/numbers.ts';
import { say } from '../../../src/language/speak.ts';
import type { Person } from '../../../src/store/postgres/accounts/people.ts';
import { useChange } from '../api/change.ts';
import { refreshSoon } from '../api/refresh.ts';
import { ActingTable } from '../parts/acting-table.tsx';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { Problem } from '../parts/problem.tsx';
import { Frame } from './frame.tsx';
import { ask } from './host-calls.ts';
import { LinkOut } from './link-out.tsx';
import { Sure } from './sure.tsx';

/** Somebody, and the way to put them out; the keeper stays. */
function PersonRow({ person: { name, isHost, createdAt }, onRemove }: { person: Person; onRemove: () => void }) {
	return (
		<tr>
			<th scope="row">
				{name} {isHost ? <span className="quiet italic">{say('doorway.keeper')}</span> : null}
			</th>
			<td>{dayText(createdAt.slice(0, 10))}</td>
			<td>
				{isHost ? null : (
					<Button small onPress={onRemove} aria-label={say('doorway.removePersonNamed', { name })}>
						{say('doorway.removePerson')}
					</Button>
				)}
			</td>
		</tr>
	);
}

/** Who comes in here: for whoever keeps the host. */
export function PeoplePage() {
	const { data: people = [], error } = useQuery({
		queryKey: ['host/people'],
		queryFn: () => ask<Person[]>('GET', '/people'),
	});
	const [going, setGoing] = useState<Person | null>(null);
	const invite = useChange(() => ask<{ link: string }>('POST', '/people/links'));
	const remove = useChange(
		(id: string) => ask('DELETE', `/people/${id}`),
		() => {
			setGoing(null);
			refreshSoon();
		},
	);
	return (
		<Frame place="/people" name={say('doorway.people')} purpose={say('doorway.peoplePurpose')}>
			<Problem of={error} />
			<ActingTable headings={[say('doorway.member'), say('doorway.since')]}>
				{people.map((person) => (
					<PersonRow key={person.id} person={person} onRemove={() => setGoing(person)} />
				))}
			</ActingTable>
			<section className="section stack">
				<p>
					<Button look="main" onPress={() => invite.run(undefined)} isPending={invite.busy}>
						{say('doorway.letIn')}
					</Button>
				</p>
				{invite.output ? <LinkOut key={invite.output.link} link={invite.output.link} /> : null}
				<Problem of={invite.problem} />
			</section>
			{going ? (
				<Dialog title={say('doorway.removePersonNamed', { name: going.name })} narrow onClose={() => setGoing(null)}>
					<Sure
						how={say('doorway.removePersonHow', { name: going.name })}
						label={say('doorway.name')}
						name={going.name}
						button={say('doorway.removeForGood')}
						onSure={() => remove.run(going.id)}
					/>
					<Problem of={remove.problem} />
				</Dialog>
			) : null}
		</Frame>
	);
}
