import { createHash } from 'node:crypto';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { cutOut } from '../support/pictures.ts';
import { atLeast, type Figure, type Figures, noneOf } from './figure.ts';
import { type HomeClient, type HostedStage, openHostedStage } from './hosted-stage.ts';

/** What was answered, as it must be found again, and how much it was. */
type Answered = { readonly photos: Set<string>; readonly notes: Map<string, string>; changes: number };

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Longest time that everything may take to be read once all is well again, and that an answer may. */
const SETTLED_WITHIN_MS = 240_000;

/** Between two photos of one person, so that a reader that is killed time and again has a chance to read them all. */
const BETWEEN_PHOTOS_MS = 400;

let pictures = 0;

/** A picture that is no other's: colours come back after 120, then in another size. */
const newPicture = (n: number): Promise<Buffer> =>
	cutOut([20 + (n % 60), (n * 7) % 60, n % 40], 400 + 4 * Math.floor(n / 120));

/**
 * Brings photos in and notes something on their garments until `isOver`, each asked for again with the same key until it is answered: as the
 * page does it.
 */
async function keepWorking(client: () => HomeClient, answered: Answered, isOver: () => boolean): Promise<string[]> {
	const faults: string[] = [];
	async function untilAnswered(what: string, n: number, asking: (key: string) => ReturnType<HomeClient['get']>) {
		const key = `${what}-${n}`;
		for (;;) {
			const answer = await asking(key).catch(() => null);
			if (answer && answer.status < 300) {
				answered.changes++;
				return answer;
			}
			// Out of reach, or the line broke: that is the drill. Anything else is a fault of the program.
			if (answer && answer.status !== 503) faults.push(`${what}: ${answer.status} ${JSON.stringify(answer.body)}`);
			if (isOver()) return null;
			await pause(200);
		}
	}
	while (!isOver()) {
		await pause(BETWEEN_PHOTOS_MS);
		const n = ++pictures;
		const bytes = await newPicture(n);
		const sent = await untilAnswered('upload', n, (key) => client().upload(`${n}.png`, bytes, key));
		if (!sent) break;
		const [item] = sent.body.items;
		if (!item?.ok) {
			faults.push(`upload: ${JSON.stringify(item)}`);
			continue;
		}
		answered.photos.add(createHash('sha256').update(bytes).digest('hex'));
		const changes = { ids: [item.entryId], changes: { notes: `note ${n}` } };
		const changed = await untilAnswered('change', n, (key) => client().send('PATCH', '/api/garments', changes, key));
		if (changed) answered.notes.set(item.entryId, `note ${n}`);
	}
	return faults;
}

type Found = { readonly status: string; readonly notes: string };

/** Waits until no photo waits; returns what still does after the longest time. */
async function settled(client: HomeClient): Promise<string[]> {
	const until = performance.now() + SETTLED_WITHIN_MS;
	for (;;) {
		const { status, body } = await client.get('/api/status');
		if (status === 200 && body.photos.waiting === 0) return [];
		if (performance.now() > until) return [`${JSON.stringify(body.photos ?? body)} still wait`];
		await pause(300);
	}
}

const listed = async (client: HomeClient, path: string): Promise<ReadonlyMap<string, Found>> =>
	new Map((await client.get(path)).body.map((one: Found & { id: string }) => [one.id, one]));

/** What is not as it was answered, and the photos that the home was told of as unread. */
async function found(client: HomeClient, answered: Answered): Promise<{ lost: string[]; unread: string[] }> {
	const late = await settled(client);
	const [photos, garments] = [await listed(client, '/api/photos'), await listed(client, '/api/garments')];
	const statusOf = (id: string) => photos.get(id)?.status ?? 'lost';
	const otherNotes = [...answered.notes].filter(([id, notes]) => garments.get(id)?.notes !== notes);
	return {
		lost: [
			...late,
			...[...answered.photos].flatMap((id) =>
				['read', 'failed'].includes(statusOf(id)) ? [] : [`photo ${id.slice(0, 8)} is ${statusOf(id)}`],
			),
			...otherNotes.map(([id, notes]) => `garment ${id.slice(0, 8)} has "${garments.get(id)?.notes}", not "${notes}"`),
		],
		unread: [...answered.photos].filter((id) => statusOf(id) === 'failed'),
	};
}

/** Photos told as unread that are not read either when they are asked for again. */
async function unreadable(client: HomeClient, unread: readonly string[]): Promise<string[]> {
	for (const id of unread) await client.send('POST', `/api/photos/${id}/retry`, {});
	const until = performance.now() + SETTLED_WITHIN_MS;
	for (;;) {
		const photos = await listed(client, '/api/photos');
		const left = unread.filter((id) => photos.get(id)?.status !== 'read');
		if (left.length === 0 || performance.now() > until) return left;
		await pause(300);
	}
}

/** Runs one drill while somebody works, and tells what was lost or went wrong. A photo may be told as unread only where readers are killed over it. */
async function drilled(
	stage: HostedStage,
	{
		what,
		port,
		killsReaders = false,
	}: { readonly what: string; readonly port: number; readonly killsReaders?: boolean },
	drill: () => Promise<void>,
): Promise<Figure[]> {
	const answered: Answered = { photos: new Set(), notes: new Map(), changes: 0 };
	let over = false;
	const working = keepWorking(
		() => stage.clientAt(port),
		answered,
		() => over,
	);
	await drill();
	// Something must be answered again now that all is well.
	const before = answered.changes;
	const until = performance.now() + SETTLED_WITHIN_MS;
	while (answered.changes < before + 3 && performance.now() < until) await pause(100);
	over = true;
	const faults = await working;
	const client = stage.clientAt(port);
	const { lost, unread } = await found(client, answered);
	return [
		noneOf(`${what}: of ${answered.changes} answered changes, lost or never read`, lost),
		killsReaders
			? noneOf(
					`${what}: of ${unread.length} photos told as unread, not read when asked again`,
					await unreadable(client, unread),
				)
			: noneOf(`${what}: photos told as unread`, unread),
		noneOf(`${what}: answers that were none of being out of reach`, faults),
		atLeast(`${what}: changes answered once all was well`, answered.changes - before, 3),
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
				{ what: 'server killed', port },
				repeated(async () => {
					await server.stop('SIGKILL');
					server = await stage.server(port);
				}),
			)),
			...(await drilled(
				stage,
				{ what: 'reader killed', port, killsReaders: true },
				repeated(async () => {
					await reader.stop('SIGKILL');
					reader = await stage.reader();
				}),
			)),
			...(await drilled(
				stage,
				{ what: 'database restarted', port },
				repeated(async () => stage.postgres.restart()),
			)),
			...(await drilled(
				stage,
				{ what: 'object store failing, then slow', port },
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
