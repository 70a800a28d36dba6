import { join } from 'node:path';
import { residentMb, startServer } from '../../bench/server-process.ts';
import { cutOut } from '../support/pictures.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figure, type Figures, noneOf } from './figure.ts';
import { clientOf, isClearRefusal } from './http-client.ts';

const MOST_GROWTH = 0.1;
/** Memory is measured this often; the median of the last ten of a half stands for it, since readers come and go. */
const SAMPLE_MS = 1_000;

const READ_BY_ALL = ['/api/garments', '/api/photos', '/api/status', '/api/wears', '/api/decisions', '/'];

/** So many clients at once upload and read for so long. Memory is only judged where there are two whole minutes to compare. */
export async function manyClients(clients: number, seconds: number): Promise<Figures> {
	const server = await startServer(join(temporaryFolder(), 'home'));
	const client = clientOf(server.address);
	const until = Date.now() + seconds * 1000;
	const errors: string[] = [];
	let answers = 0;
	let refusals = 0;
	const season = await client.startSeason('Spring');
	const paths = [...READ_BY_ALL, `/api/seasons/${season.body.id}/report`];
	// The same few pictures come again and again: what is measured is the traffic, not a wardrobe that grows.
	const pictures = await Promise.all(Array.from({ length: 24 }, (_, index) => cutOut([20 + index * 3, 15, 10])));
	async function oneClient(number: number): Promise<void> {
		for (let turn = number; Date.now() < until; turn++) {
			try {
				const answer =
					turn % 3 === 0
						? await client.upload(`${turn}.png`, pictures[turn % pictures.length]!)
						: await client.get(paths[turn % paths.length]!);
				answers++;
				if (answer.status < 400) continue;
				if (isClearRefusal(answer)) refusals++;
				else errors.push(`answered ${answer.status}`);
			} catch (error) {
				errors.push((error as Error).message);
			}
		}
	}
	const memory: number[] = [];
	const watch = setInterval(() => memory.push(residentMb(server.process.pid!)), SAMPLE_MS);
	try {
		await Promise.all(Array.from({ length: clients }, (_, number) => oneClient(number)));
	} finally {
		clearInterval(watch);
		await server.stop();
	}
	const middle = (samples: readonly number[]) => [...samples].sort((a, b) => a - b)[Math.floor(samples.length / 2)]!;
	const half = Math.floor(memory.length / 2);
	const [first, second] = [middle(memory.slice(half - 10, half)), middle(memory.slice(-10))];
	const growth = second / first - 1;
	const flat: Figure = {
		what: `memory of all processes, minute 1 to 2 (${Math.round(first)} to ${Math.round(second)} MB)`,
		found: `${(growth * 100).toFixed(1)} %`,
		asked: `growth under ${MOST_GROWTH * 100} %`,
		met: growth < MOST_GROWTH,
	};
	return {
		figures: [
			noneOf(`errors for ${clients} clients in ${seconds} s (${refusals} clear refusals)`, errors),
			atLeast('answers', answers, clients),
			...(seconds >= 120 ? [flat] : []),
		],
	};
}
