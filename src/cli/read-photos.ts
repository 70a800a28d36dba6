import { createReaderPool, type ReadOptions, type ReadResult } from '../photo/readers/pool.ts';

export type NamedResult = { readonly photo: string; readonly result: ReadResult };

/** Reads the photos side by side and yields them in the order given. */
export async function* readInOrder(photos: readonly string[], options: ReadOptions): AsyncGenerator<NamedResult> {
	const pool = createReaderPool({});
	try {
		const results = photos.map((photo) => pool.read(photo, options));
		for (const [index, photo] of photos.entries()) yield { photo, result: await results[index]! };
	} finally {
		await pool.close();
	}
}
