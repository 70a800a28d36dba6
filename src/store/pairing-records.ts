import type { Kysely } from 'kysely';
import type { Tables } from './schema.ts';

/** A device that gave the code once. Its token is not kept, only the SHA-256 of it: who reads the database cannot come in with it. */
export type Pairing = {
	readonly id: string;
	/** SHA-256 in hex. */
	readonly tokenHash: string;
	/** What kind of device it said it was, in plain words. */
	readonly device: string;
	/** ISO instants. */
	readonly pairedAt: string;
	readonly seenAt: string;
};

/** The paired devices, on disk when a promise resolves. No decision of the wardrobe: undo passes over them. */
export type PairingRecords = {
	list(): Promise<Pairing[]>;
	add(pairing: Pairing): Promise<void>;
	saveSeen(id: string, seenAt: string): Promise<void>;
	remove(ids: readonly string[]): Promise<void>;
};

export function pairingRecords(db: Kysely<Tables>): PairingRecords {
	return {
		async list() {
			const rows = await db.selectFrom('pairings').selectAll().orderBy('paired_at').orderBy('id').execute();
			return rows.map(({ id, token_hash, device, paired_at, seen_at }) => ({
				id,
				tokenHash: token_hash,
				device,
				pairedAt: paired_at,
				seenAt: seen_at,
			}));
		},
		async add({ id, tokenHash, device, pairedAt, seenAt }) {
			await db
				.insertInto('pairings')
				.values({ id, token_hash: tokenHash, device, paired_at: pairedAt, seen_at: seenAt })
				.execute();
		},
		async saveSeen(id, seenAt) {
			await db.updateTable('pairings').set({ seen_at: seenAt }).where('id', '=', id).execute();
		},
		async remove(ids) {
			if (ids.length > 0) await db.deleteFrom('pairings').where('id', 'in', ids).execute();
		},
	};
}
