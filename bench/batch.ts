import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import sharp from 'sharp';
import { DISPLAY_SIDE_PX } from '../src/photo/file/limits.ts';
import { photosWaiting, sendPhoto } from './photos-by-http.ts';
import { demoPhotos } from './sample-photos.ts';
import { cpuSeconds, residentMb, type ServerProcess, startServer } from './server-process.ts';
import { type Row, type Table, timed } from './table.ts';

/** The first so many are of one kind, a phone's; speed is theirs. */
const OF_A_PHONE = 200;
/** So many of several formats and sizes follow; memory is theirs. */
const MIXED = 500;
/** Memory is looked at whenever so many more have been read. */
const STEP = 100;

/** So many sizes, a pixel apart: with the photos in turn, no two of a run are the same. */
const SIZES = 211;

/** Different bytes each time, so that none is taken for a photo already known; of five mixed ones, three are in another format or size. */
async function variant(path: string, index: number): Promise<Buffer> {
	const picture = (width: number) => sharp(readFileSync(path)).resize(width + (index % SIZES));
	if (index >= OF_A_PHONE && index % 5 === 0) return picture(700).png({ compressionLevel: 3 }).toBuffer();
	if (index >= OF_A_PHONE && index % 5 === 1) return picture(900).webp({ quality: 80, effort: 1 }).toBuffer();
	if (index >= OF_A_PHONE && index % 5 === 2) return picture(3000).jpeg({ quality: 90 }).toBuffer();
	return picture(2400).jpeg({ quality: 85 }).toBuffer();
}

type Batch = {
	readonly photosASecond: number;
	readonly busyShare: number;
	readonly slowestMs: number;
	readonly memory: readonly { readonly read: number; readonly mb: number }[];
};

const photoOf = (index: number): Promise<Buffer> => {
	const paths = demoPhotos();
	return variant(paths[index % paths.length]!, index);
};

/** Uploads and waits for the last reading; the pictures are made before, for the first ones whose time counts. */
async function readBatch(server: ServerProcess): Promise<Batch> {
	const pid = server.process.pid!;
	const home = { api: `${server.address}api/`, headers: {} };
	const memory: { read: number; mb: number }[] = [];
	let slowestMs = 0;
	const watch = async () => {
		for (;;) {
			const asked = performance.now();
			const waiting = await photosWaiting(home);
			slowestMs = Math.max(slowestMs, performance.now() - asked);
			if (waiting === 0) break;
			await pause(200);
		}
	};
	const made = await Promise.all(Array.from({ length: OF_A_PHONE }, (_, index) => photoOf(index)));
	const cpuBefore = cpuSeconds(pid);
	const { wallMs } = await timed(async () => {
		for (const bytes of made) await sendPhoto(home, bytes);
		await watch();
	});
	const busyShare = (cpuSeconds(pid) - cpuBefore) / (wallMs / 1000) / availableParallelism();
	for (let read = STEP; read <= MIXED; read += STEP) {
		for (let index = read - STEP; index < read; index++) await sendPhoto(home, await photoOf(OF_A_PHONE + index));
		await watch();
		memory.push({ read, mb: residentMb(pid) });
	}
	return { photosASecond: OF_A_PHONE / (wallMs / 1000), busyShare, slowestMs, memory };
}

/** Milliseconds that sharp alone takes to decode and shrink such a photo. */
async function floorMs(): Promise<number> {
	const bytes = await photoOf(0);
	const { wallMs } = await timed(async () => {
		for (let time = 0; time < 20; time++)
			await sharp(bytes).autoOrient().resize(DISPLAY_SIDE_PX, DISPLAY_SIDE_PX, { fit: 'inside' }).raw().toBuffer();
	});
	return wallMs / 20;
}

/** Photos uploaded by HTTP and read, end to end: how fast a phone's are, and whether memory grows with mixed ones. */
export async function run(): Promise<readonly Table[]> {
	const home = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
	const server = await startServer(home);
	try {
		const idleMb = residentMb(server.process.pid!);
		const { photosASecond, busyShare, slowestMs, memory } = await readBatch(server);
		const floor = await floorMs();
		return [
			{
				title: `Batch: the first ${OF_A_PHONE} photos, of about 8 megapixels, by HTTP`,
				columns: ['', 'photos/s', 'cores busy %', 'RSS idle MB', 'slowest answer meanwhile ms'],
				rows: [['upload to last reading', photosASecond, busyShare * 100, idleMb, slowestMs]],
				ratios: {
					"a photo of a batch / sharp's decode and shrink": 1000 / photosASecond / floor,
					[`memory after ${MIXED} mixed photos / after ${STEP}`]: memory.at(-1)!.mb / memory[0]!.mb,
				},
			},
			{
				title: `Memory while ${MIXED} more are read (JPEG of 8 and 12 megapixels, WebP, PNG)`,
				columns: ['photos read', 'RSS MB'],
				rows: memory.map(({ read, mb }): Row => [String(read), mb]),
			},
		];
	} finally {
		await server.stop();
		rmSync(home, { recursive: true, force: true });
	}
}
