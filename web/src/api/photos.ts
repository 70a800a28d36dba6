import { useQuery } from '@tanstack/react-query';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { call } from './call.ts';

/** Ids a request: 64 characters each, and a request's head may not grow past 16 kB. */
const IDS_A_REQUEST = 100;

async function fetchPhotos(ids: readonly string[]): Promise<ReadonlyMap<string, PhotoRecord>> {
	const batches: string[][] = [];
	for (let start = 0; start < ids.length; start += IDS_A_REQUEST) batches.push(ids.slice(start, start + IDS_A_REQUEST));
	const lists = await Promise.all(batches.map((batch) => call('listPhotos', { query: { ids: batch.join(',') } })));
	return new Map(lists.flat().map((photo) => [photo.id, photo]));
}

const none: ReadonlyMap<string, PhotoRecord> = new Map();

/** The records of these photos by id; ids may repeat and come in any order. */
export function usePhotos(ids: readonly string[]): ReadonlyMap<string, PhotoRecord> {
	const unique = [...new Set(ids)].sort();
	const { data } = useQuery({
		queryKey: ['photos', unique],
		queryFn: () => fetchPhotos(unique),
		enabled: unique.length > 0,
		placeholderData: (previous) => previous,
	});
	return data ?? none;
}
