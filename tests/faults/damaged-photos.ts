import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { endOf, startServer } from '../../bench/server-process.ts';
import { MAX_READ_SECONDS } from '../../src/photo/file/limits.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';
import { clientOf } from './http-client.ts';
import { mutated } from './mutations.ts';

/** A small whole photo in every format that is taken. */
async function wholePhotos(): Promise<Readonly<Record<string, Buffer>>> {
	const picture = () => sharp('demo-images/g05-blue-grey-shirt.jpg').resize(240);
	return {
		jpeg: await picture().jpeg().withMetadata().toBuffer(),
		png: await picture().png().toBuffer(),
		webp: await picture().webp().toBuffer(),
		avif: await picture().avif({ effort: 0 }).toBuffer(),
		tiff: await picture().tiff({ compression: 'lzw' }).toBuffer(),
		gif: await picture().gif().toBuffer(),
		heic: readFileSync('fixtures/heic/teal-p3.heic'),
	};
}

/** Spoilt photos of every format through the real server: each is read or answered with a reason, and the server goes on. */
export async function damagedPhotos(perFormat: number): Promise<Figures> {
	const server = await startServer(join(temporaryFolder(), 'home'));
	const client = clientOf(server.address);
	const random = seededRandom('damaged photos');
	const unexplained: string[] = [];
	const sent = new Map<string, string>();
	let refused = 0;
	const crashes: string[] = [];
	try {
		for (const [format, whole] of Object.entries(await wholePhotos())) {
			for (let index = 0; index < perFormat; index++) {
				const { how, bytes } = mutated(whole, index, random);
				const what = `${format} ${index}, ${how}`;
				const { status, body } = await client.upload(`${what}.${format}`, bytes);
				const item = body.items?.[0];
				if (status !== 202 || !item) unexplained.push(`${what}: answered ${status}`);
				else if (item.ok) sent.set(item.photoId, what);
				else if (item.message?.length > 20) refused++;
				else unexplained.push(`${what}: refused without a sentence`);
			}
		}
		const settled = await client.settled(900 + sent.size * 10);
		const photos = (await client.get('/api/photos')).body as {
			id: string;
			status: string;
			failure: { reason: string; message: string } | null;
		}[];
		let read = 0;
		let failed = 0;
		const slow: string[] = [];
		for (const { id, status, failure } of photos) {
			const what = sent.get(id) ?? id;
			if (status === 'read') read++;
			else if (status === 'failed' && failure && failure.message.length > 20) {
				failed++;
				if (failure.reason === 'crashed' || failure.reason === 'internal') crashes.push(`${what}: ${failure.message}`);
				if (failure.reason === 'too-slow') slow.push(what);
			} else unexplained.push(`${what}: ${status}`);
		}
		return {
			figures: [
				noneOf('crashes of the server', endOf(server)),
				noneOf('photos neither read nor answered with a reason', unexplained),
				noneOf(`photos that took longer than ${MAX_READ_SECONDS} s`, settled ? slow : ['never done']),
				noneOf('photos on which the reader itself broke down (it is started anew, and the photo told of)', crashes),
				atLeast(
					`spoilt photos: ${read} read all the same, ${failed} failed with a reason, refused at once`,
					refused,
					1,
				),
			],
		};
	} finally {
		await server.stop();
	}
}
