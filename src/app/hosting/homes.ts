import { createHome, homesOf, membersOf, removeHome } from '../../store/postgres/accounts/homes.ts';
import { removePerson } from '../../store/postgres/accounts/people.ts';
import { HOME_TABLES } from '../../store/postgres/apart.ts';
import { bringIn } from './bring-in.ts';
import type { Host } from './host.ts';
import { lookAgainAtLinesOf } from './open-lines.ts';

/** Homes that one person may own: far more than somebody plans for. */
export const MOST_HOMES = 200;

/** Takes away what a home holds: its rows at once, then its files. */
async function empty({ database, filesOf }: Host, home: string): Promise<void> {
	await database
		.homeTables(home)
		.transaction()
		.execute(async (trx) => {
			for (const table of HOME_TABLES) await trx.deleteFrom(table).execute();
		});
	await filesOf(home).removeAll();
}

/** Takes a home and all it holds away, for good. */
export async function takeHomeOff(host: Host, home: string): Promise<void> {
	// Nobody comes in any more before anything goes.
	await removeHome(host.accounts, home);
	host.forget(home);
	lookAgainAtLinesOf(host, home);
	await host.queue.drop(home);
	await empty(host, home);
}

/** Takes a person off, with the homes that nobody else owns. */
export async function takePersonOff(host: Host, person: string): Promise<void> {
	const homes = await homesOf(host.accounts, person);
	for (const { id, role } of homes) {
		if (role !== 'own') continue;
		const owners = (await membersOf(host.accounts, id)).filter((one) => one.role === 'own');
		if (owners.length === 1) await takeHomeOff(host, id);
	}
	await removePerson(host.accounts, person);
	for (const { id } of homes) lookAgainAtLinesOf(host, id);
}

/** Makes a home of an archive. It is seen once it is whole; of one that breaks off nothing stays. */
export async function bringHomeIn(
	host: Host,
	archivePath: string,
	home: { readonly id: string; readonly name: string; readonly person: string },
): Promise<void> {
	const { database, filesOf, workFolder, now } = host;
	try {
		const place = { tables: database.homeTables(home.id), files: filesOf(home.id), workFolder, now };
		await bringIn(archivePath, place);
		await host.accounts.transaction().execute((trx) => createHome(trx, { ...home, at: now().toISOString() }));
	} catch (error) {
		await empty(host, home.id);
		throw error;
	}
}
