import { homesOf } from '../../store/postgres/accounts/homes.ts';
import type { Host } from './host.ts';

/** Has every line of news of a home looked at again, at whatever server it is open: those of whoever may no longer come in are closed. */
export const lookAgainAtLinesOf = ({ events }: Pick<Host, 'events'>, home: string): void =>
	events.of(home).send({ event: 'hello', data: {} });

/** The same for all homes of a person, of whom a session has ended. */
export async function lookAgainAtLines(host: Pick<Host, 'accounts' | 'events'>, person: string): Promise<void> {
	for (const { id } of await homesOf(host.accounts, person)) lookAgainAtLinesOf(host, id);
}
