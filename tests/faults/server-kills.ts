import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { startServer } from '../../bench/server-process.ts';
import { openHome } from '../../src/store/open-home.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { cutOut } from '../support/pictures.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';
import { type Client, clientOf } from './http-client.ts';

/** Longest time that a server is left at work, once it has answered a change, before it is killed: however busy the machine is, each round has some. */
const LONGEST_MS = 2_500;

/** Every answered change, as it must be found again. */
type Acknowledged = { readonly photos: Set<string>; readonly garments: Map<string, string> };

/** Imports photos and decides on their garments, noting what was answered, until the server is gone; `begun` hears of each. */
async function work(client: Client, round: number, acknowledged: Acknowledged, begun: () => void): Promise<void> {
	try {
		for (let step = 0; ; step++) {
			const bytes = await cutOut([20 + (step % 60), (round * 7) % 60, step % 40]);
			const { status, body } = await client.upload(`${round} ${step}.png`, bytes);
			if (status !== 202) throw new Error(`an upload was answered ${status}`);
			acknowledged.photos.add(createHash('sha256').update(bytes).digest('hex'));
			const { entryId } = body.items[0];
			const name = `piece ${round}.${step}`;
			const garment = (await client.get(`/api/garments/${entryId}`)).body;
			const changed = await client.send('PATCH', '/api/garments', { ids: [garment.id], changes: { notes: name } });
			if (changed.status >= 300)
				throw new Error(`a change was answered ${changed.status} ${JSON.stringify(changed.body)}`);
			acknowledged.garments.set(entryId, name);
			begun();
		}
	} catch (error) {
		// The connection broke: that is the kill. Anything else is a fault of the program.
		if (!(error instanceof TypeError)) throw error;
	}
}

/** Kills the real server at any moment of an import by HTTP, again and again on one home. */
export async function serverKills(kills: number): Promise<Figures> {
	const homePath = join(temporaryFolder(), 'home');
	const acknowledged: Acknowledged = { photos: new Set(), garments: new Map() };
	const random = seededRandom('server kills');
	const unopened: string[] = [];
	const lost: string[] = [];
	for (let round = 0; round < kills; round++) {
		const server = await startServer(homePath);
		let working = Promise.resolve();
		const answered = new Promise<void>((resolve) => {
			working = work(clientOf(server.address), round, acknowledged, resolve);
		});
		await Promise.race([answered, working]);
		await new Promise((resolve) => setTimeout(resolve, 200 + random() * LONGEST_MS));
		await server.stop('SIGKILL');
		await working;
		try {
			const home = await openHome(homePath, { now: () => new Date() });
			const photos = new Set((await home.store.photos.list()).map(({ id }) => id));
			const notes = new Map((await home.store.garments.list()).map((garment) => [garment.id, garment.notes]));
			for (const id of acknowledged.photos) if (!photos.has(id)) lost.push(`round ${round}: photo ${id}`);
			for (const [id, note] of acknowledged.garments)
				if (notes.get(id) !== note) lost.push(`round ${round}: garment ${id} is "${notes.get(id)}", not "${note}"`);
			await home.close();
		} catch (error) {
			unopened.push(`round ${round}: ${(error as Error).message}`);
		}
	}
	return {
		figures: [
			noneOf(`homes that do not open after ${kills} kills of the server during imports by HTTP`, unopened),
			noneOf(`of ${acknowledged.photos.size + acknowledged.garments.size} answered changes, lost`, lost),
			atLeast('changes answered a kill', Math.floor(acknowledged.garments.size / kills), 1),
		],
	};
}
