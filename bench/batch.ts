import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import sharp from 'sharp';
import { demoPhotos } from './sample-photos.ts';
import { cpuSeconds, residentMb, startServer } from './server-process.ts';
import type { Table } from './table.ts';

const PHOTOS = 200;

/** Different bytes each time (a new size), so that none is taken for a photo already known. */
async function variant(path: string, index: number): Promise<Blob> {
	const bytes = await sharp(readFileSync(path))
		.resize(2400 + index)
		.jpeg({ quality: 85 })
		.toBuffer();
	return new Blob([new Uint8Array(bytes)]);
}

/** 200 photos uploaded by HTTP and read, end to end. */
export async function run(): Promise<readonly Table[]> {
	const home = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
	const server = await startServer(home);
	try {
		const pid = server.process.pid!;
		const idleMb = residentMb(pid);
		const paths = demoPhotos();
		const bodies: FormData[] = [];
		for (let i = 0; i < PHOTOS; i++) {
			const path = paths[i % paths.length]!;
			const body = new FormData();
			body.append('purpose', 'garment');
			body.append('file', await variant(path, i), basename(path));
			bodies.push(body);
		}
		const start = performance.now();
		const cpuBefore = cpuSeconds(pid);
		let slowestMs = 0;
		for (const body of bodies) await fetch(`${server.address}api/photos`, { method: 'POST', body });
		for (;;) {
			const asked = performance.now();
			const { photos } = (await (await fetch(`${server.address}api/status`)).json()) as { photos: { waiting: number } };
			slowestMs = Math.max(slowestMs, performance.now() - asked);
			if (photos.waiting === 0) break;
			await new Promise((resolve) => setTimeout(resolve, 200));
		}
		const seconds = (performance.now() - start) / 1000;
		const busy = (cpuSeconds(pid) - cpuBefore) / seconds / availableParallelism();
		return [
			{
				title: `Batch: ${PHOTOS} photos of about 8 megapixels by HTTP`,
				columns: ['', 'photos/s', 'cores busy %', 'RSS idle MB', 'RSS after MB', 'slowest answer meanwhile ms'],
				rows: [['upload to last reading', PHOTOS / seconds, busy * 100, idleMb, residentMb(pid), slowestMs]],
			},
		];
	} finally {
		await server.stop();
		rmSync(home, { recursive: true, force: true });
	}
}
