import { createHash } from 'node:crypto';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { cutOut } from '../support/pictures.ts';
import { atLeast, type Figure, type Figures, noneOf } from './figure.ts';
import { type HomeClient, type HostedStage, openHostedStage } from './hosted-stage.ts';

/** What was answered, as it must be found again. */
type Answered = { readonly photos: Set<string>; readonly notes: Map<string, string> };

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Longest time that everything may take to be read once all is well again. */
const SETTLED_WITHIN_MS = 240_000;

let pictures = 0;

/**
 * Brings photos in and notes something on their garments until `isOver`, each asked for again with the same key until it is answered: as the
 * page does it.
 */
async function keepWorking(client: () => HomeClient, answered: Answered, isOver: () => boolean): Promise<string[]> {
	const faults: string[] = [];
	async function untilAnswered(what: string, asking: (key: string) => ReturnType<HomeClient['get']>) {
		const key = `${what} ${++pictures}`.replaceAll(' ', '-');
		for (;;) {
			const answer = await asking(key).catch(() => null);
			if (answer && answer.status < 300) return answer;
			// Out of reach, or the line broke: that is the drill. Anything else is a fault of the program.
			if (answer && answer.status !== 503) faults.push(`${what}: ${answer.status} ${JSON.stringify(answer.body)}`);
			if (isOver()) return null;
			await pause(200);
		}
	}
	while (!isOver()) {
		const n = ++pictures;
		const bytes = await cutOut([20 + (n % 60), (n * 7) % 60, n % 40]);
		const sent = await untilAnswered('upload', (key) => client().upload(`${n}.png`, bytes, key));
		if (!sent) break;
		const [item] = sent.body.items;
		if (!item?.ok) {
			faults.push(`upload: ${JSON.stringify(item)}`);
			continue;
		}
		answered.photos.add(createHash('sha256').update(bytes).digest('hex'));
		const changes = { ids: [item.entryId], changes: { notes: `note ${n}` } };
		const changed = await untilAnswered('change', (key) => client().send('PATCH', '/api/garments', changes, key));
		if (changed) answered.notes.set(item.entryId, `note ${n}`);
	}
	return faults;
}

/** Waits until no photo waits, and tells what is not as it was answered. */
async function missing(client: HomeClient, answered: Answered): Promise<string[]> {
	const until = performance.now() + SETTLED_WITHIN_MS;
	for (;;) {
		const { status, body } = await client.get('/api/status');
		if (status === 200 && body.photos.waiting === 0) break;
		if (performance.now() > until) return [`${JSON.stringify(body.photos ?? body)} still wait`];
		await pause(300);
	}
	const photos = new Map((await client.get('/api/photos')).body.map((photo: { id: string }) => [photo.id, photo]));
	const garments = new Map((await client.get('/api/garments')).body.map((one: { id: string }) => [one.id, one]));
	return [
		...[...answered.photos].flatMap((id) => {
			const photo = photos.get(id) as { status: string } | undefined;
			return photo?.status === 'read' ? [] : [`photo ${id.slice(0, 8)} is ${photo?.status ?? 'lost'}`];
		}),
		...[...answered.notes].flatMap(([id, notes]) => {
			const garment = garments.get(id) as { notes: string } | undefined;
			return garment?.notes === notes ? [] : [`garment ${id.slice(0, 8)} has "${garment?.notes}", not "${notes}"`];
		}),
	];
}

/** Runs one drill while somebody works, and tells what was lost or went wrong. */
async function drilled(stage: HostedStage, what: string, port: number, drill: () => Promise<void>): Promise<Figure[]> {
	const answered: Answered = { photos: new Set(), notes: new Map() };
	let over = false;
	const working = keepWorking(
		() => stage.clientAt(port),
		answered,
		() => over,
	);
	await drill();
	// Something must have been answered since all is well again.
	const before = answered.notes.size;
	while (answered.notes.size < before + 2) await pause(100);
	over = true;
	const faults = await working;
	const count = answered.photos.size + answered.notes.size;
	return [
		noneOf(`${what}: of ${count} answered changes, lost or never read`, await missing(stage.clientAt(port), answered)),
		noneOf(`${what}: answers that were none of being out of reach`, faults),
		atLeast(`${what}: changes answered`, count, 4),
	];
}

/** Two servers change one garment, each on the version that it read; what was refused as stale is read and tried again. */
async function twoServers(stage: HostedStage, ports: readonly [number, number], each: number): Promise<Figure> {
	const made = await stage.clientAt(ports[0]).send('POST', '/api/garments', { name: 'Shared' });
	const address = `/api/garments/${made.body.id}`;
	async function write(port: number, name: string): Promise<void> {
		const client = stage.clientAt(port);
		for (let line = 0; line < each; ) {
			const { notes, version } = (await client.get(address)).body;
			const { status } = await client.send('PATCH', address, { version, notes: `${notes}\n${name}${line}` });
			if (status === 200) line++;
			else if (status !== 409) throw new Error(`a change was answered ${status}`);
		}
	}
	await Promise.all([write(ports[0], 'a'), write(ports[1], 'b')]);
	const { notes } = (await stage.clientAt(ports[0]).get(address)).body;
	const there = new Set(notes.split('\n'));
	const wanted = ['a', 'b'].flatMap((name) => Array.from({ length: each }, (_, line) => `${name}${line}`));
	return noneOf(
		`two servers: of ${2 * each} changes of one garment, lost`,
		wanted.filter((line) => !there.has(line)),
	);
}

/** What an operator of a host lives through, each `times` over, while somebody works. */
export async function hostedDrills(times: number): Promise<Figures> {
	const stage = await openHostedStage();
	if ('skipped' in stage) return stage;
	const random = seededRandom('hosted drills');
	const moment = () => pause(300 + random() * 2500);
	try {
		let server = await stage.server();
		let reader = await stage.reader();
		const { port } = server;
		const repeated = (one: () => Promise<void>) => async () => {
			for (let time = 0; time < times; time++) {
				await moment();
				await one();
			}
		};
		const figures = [
			...(await drilled(
				stage,
				'server killed',
				port,
				repeated(async () => {
					await server.stop('SIGKILL');
					server = await stage.server(port);
				}),
			)),
			...(await drilled(
				stage,
				'reader killed',
				port,
				repeated(async () => {
					await reader.stop('SIGKILL');
					reader = await stage.reader();
				}),
			)),
			...(await drilled(
				stage,
				'database restarted',
				port,
				repeated(async () => stage.postgres.restart()),
			)),
			...(await drilled(
				stage,
				'object store failing, then slow',
				port,
				repeated(async () => {
					for (const mood of ['failing', 'slow', 'well'] as const) {
						stage.objects.be(mood);
						await moment();
					}
				}),
			)),
		];
		const second = await stage.server();
		return { figures: [...figures, await twoServers(stage, [port, second.port], 20 * times)] };
	} finally {
		await stage.close();
	}
}
