import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { startServer } from '../../bench/server-process.ts';
import { openHome } from '../../src/store/open-home.ts';
import { cutOut } from '../support/pictures.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';
import { clientOf } from './http-client.ts';

const PRELOAD = new URL('slow-disk-preload.mjs', import.meta.url).href;
/** Nobody waits longer than this for a page while photos are being written. */
const PATIENCE_MS = 1_000;

/** Uploads side by side to a server whose disk takes 0.4 s for every sync, asking for the page's figures all the while. */
export async function slowDisk(photos: number): Promise<Figures> {
	const homePath = join(temporaryFolder(), 'home');
	const server = await startServer(homePath, { nodeWords: ['--import', PRELOAD] });
	const client = clientOf(server.address);
	const pictures = await Promise.all(Array.from({ length: photos }, (_, index) => cutOut([30 + index, 10, 10])));
	const start = performance.now();
	let uploading = true;
	const uploads = Promise.all(pictures.map((bytes, index) => client.upload(`${index}.png`, bytes))).finally(() => {
		uploading = false;
	});
	const waits: number[] = [];
	while (uploading) {
		const asked = performance.now();
		await client.get('/api/status');
		waits.push(performance.now() - asked);
		await new Promise((resolve) => setTimeout(resolve, 25));
	}
	const answers = await uploads;
	const uploadMs = performance.now() - start;
	await server.stop('SIGKILL');
	const home = await openHome(homePath, { now: () => new Date() });
	const kept = new Set((await home.store.photos.list()).map(({ id }) => id));
	await home.close();
	const lost = pictures.map((bytes) => createHash('sha256').update(bytes).digest('hex')).filter((id) => !kept.has(id));
	const slowest = Math.max(...waits);
	return {
		figures: [
			noneOf(
				'uploads to a slow disk that failed',
				answers.filter(({ status }) => status !== 202).map(({ status }) => String(status)),
			),
			noneOf('photos lost when the server was killed right after its answers', lost),
			{
				what: 'longest wait for another answer meanwhile',
				found: `${Math.round(slowest)} ms`,
				asked: `under ${PATIENCE_MS} ms`,
				met: slowest < PATIENCE_MS,
			},
			// Proof that the disk was slow: file and folder are synced before a photo is acknowledged.
			atLeast('milliseconds that the uploads took', Math.round(uploadMs), 800),
		],
	};
}
