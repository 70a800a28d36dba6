import type { Kysely, Transaction } from 'kysely';
import { keptWords } from '../language/kept-sentence.ts';
import { decideIn } from './deciding.ts';
import { dropEntry } from './entry-rows.ts';
import type { Tables } from './schema.ts';
import type { BinEntry, ChangedEntry } from './store.ts';

/** Days that a deleted entry stays in the bin. */
const BIN_DAYS = 90;

const nameIn = (body: string): string => {
	const { name, title } = JSON.parse(body) as { name?: string; title?: string };
	return name ?? title ?? '';
};

/** What lies in the bin, the newest first. */
export async function binOf(db: Kysely<Tables>): Promise<BinEntry[]> {
	const rows = await db
		.selectFrom('entries')
		.select(['kind', 'id', 'body', 'binned_at'])
		.where('binned_at', 'is not', null)
		.orderBy('binned_at', 'desc')
		.execute();
	return rows.map(({ kind, id, body, binned_at }) => ({
		id,
		what: kind as BinEntry['what'],
		name: nameIn(body),
		deletedAt: binned_at!,
	}));
}

/** Takes an entry out of the bin, a season with the garments that went there with it. */
export async function restoreIn(
	trx: Transaction<Tables>,
	id: string,
	at: string,
): Promise<{ readonly answer: boolean; readonly changed: readonly ChangedEntry[] }> {
	const row = await trx
		.selectFrom('entries')
		.select(['kind', 'id', 'body', 'binned_at'])
		.where('id', '=', id)
		.where('binned_at', 'is not', null)
		.executeTakeFirst();
	if (!row) return { answer: false, changed: [] };
	const withIt =
		row.kind === 'season'
			? await trx
					.selectFrom('entries')
					.select(['kind', 'id', 'body'])
					.where('kind', '=', 'garment')
					.where('binned_at', '=', row.binned_at)
					.execute()
			: [];
	const entries = [row, ...withIt].map(({ kind, id, body }) => ({ kind, id, body: JSON.parse(body) as unknown }));
	const name = nameIn(row.body) || keptWords('nouns.it');
	const company = keptWords('counts.garments', { count: withIt.length });
	const sentence =
		withIt.length > 0
			? keptWords('decisions.outOfBinWith', { name, company })
			: keptWords('decisions.outOfBin', { name });
	return { answer: true, changed: await decideIn(trx, { entries, photos: [] }, sentence, at) };
}

/** Drops what has lain in the bin for more than 90 days. */
export async function emptyOldBin(db: Kysely<Tables>, now: Date): Promise<void> {
	const limit = new Date(now.getTime() - BIN_DAYS * 24 * 3600 * 1000).toISOString();
	await db.transaction().execute(async (trx) => {
		const old = await trx.selectFrom('entries').select(['kind', 'id']).where('binned_at', '<', limit).execute();
		for (const entry of old) await dropEntry(trx, entry);
	});
}
