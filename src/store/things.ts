import type { Kysely, Transaction } from 'kysely';
import { counted } from '../wardrobe/words/counted.ts';
import type { Tables } from './schema.ts';
import type { BinEntry, Decision } from './store.ts';

/** Days that a deleted thing stays in the bin. */
export const BIN_DAYS = 90;

/** What a thing was at one moment; null = it did not exist. */
type State = { readonly body: string; readonly binnedAt: string | null } | null;

/** One thing before and after a decision. */
type Change = { readonly kind: string; readonly id: string; readonly before: State; readonly after: State };

/** What a decision does to one thing: a new body, or `null` to take it away (to the bin, where it has one). */
export type ThingEdit = { readonly kind: string; readonly id: string; readonly body: unknown };

/** Kinds that go to the bin when deleted; all others just go (the decision that took them away can be undone). */
const BINNED: ReadonlySet<string> = new Set<BinEntry['what']>([
	'garment',
	'inspiration',
	'wish',
	'candidate',
	'season',
]);

type Connection = Kysely<Tables> | Transaction<Tables>;

async function stateOf(db: Connection, kind: string, id: string): Promise<State> {
	const row = await db
		.selectFrom('things')
		.select(['body', 'binned_at'])
		.where('kind', '=', kind)
		.where('id', '=', id)
		.executeTakeFirst();
	return row ? { body: row.body, binnedAt: row.binned_at } : null;
}

async function setState(db: Connection, kind: string, id: string, state: State): Promise<void> {
	if (state === null) {
		await db.deleteFrom('things').where('kind', '=', kind).where('id', '=', id).execute();
		return;
	}
	const row = { kind, id, body: state.body, binned_at: state.binnedAt };
	await db
		.insertInto('things')
		.values(row)
		.onConflict((conflict) =>
			conflict.columns(['kind', 'id']).doUpdateSet({ body: row.body, binned_at: row.binned_at }),
		)
		.execute();
}

/** Ids from `from` (it too) up to `before` (not it), by code point. */
export type IdRange = { readonly from?: string; readonly before?: string };

/** The things the user decides about, with every decision kept so that it can be taken back. */
export type Things = {
	/** All of a kind, by id; `from` and `before` keep to a range of ids. */
	list<T>(kind: string, range?: IdRange): Promise<T[]>;
	/** How many of a kind there are; what lies in the bin is not counted. */
	count(kind: string): Promise<number>;
	get<T>(kind: string, id: string): Promise<T | null>;
	/** Carries out one decision, all of it or nothing; returns how many things it changed. */
	decide(edits: readonly ThingEdit[], sentence: string): Promise<number>;
	/**
	 * Writes what the program found out by itself of a thing that is there: nobody's decision, so that undo passes over it. Doing the thing's last
	 * decision again brings it as it was then, without the note.
	 */
	note(kind: string, id: string, body: unknown): Promise<void>;
	decisions(limit: number): Promise<Decision[]>;
	undo(): Promise<Decision | null>;
	redo(): Promise<Decision | null>;
	bin(): Promise<BinEntry[]>;
	/** A season brings the garments along that went to the bin with it. */
	restoreFromBin(id: string): Promise<boolean>;
	/** Drops what has been in the bin for more than 90 days. */
	emptyOldBin(): Promise<number>;
};

/**
 * Things in any SQL database. `takeTurn` is called first in each transaction that decides: where several programs share a database it waits
 * until the others have decided, so that each decision sees the one before.
 */
export function thingsIn(
	db: Kysely<Tables>,
	now: () => Date,
	takeTurn: (trx: Transaction<Tables>) => Promise<void> = async () => {},
): Things {
	const inTurn = <T>(decide: (trx: Transaction<Tables>) => Promise<T>): Promise<T> =>
		db.transaction().execute(async (trx) => {
			await takeTurn(trx);
			return decide(trx);
		});

	/** `at` is the decision's moment: what went to the bin together lies there with the same one. */
	function afterEdit(edit: ThingEdit, before: State, at: string): State {
		if (edit.body !== null) return { body: JSON.stringify(edit.body), binnedAt: null };
		if (before === null || !BINNED.has(edit.kind)) return null;
		// What lies in the bin already keeps its day.
		if (before.binnedAt !== null) return before;
		return { body: before.body, binnedAt: at };
	}

	/** Puts every changed thing into the state it had before (or after) a decision. */
	async function move(which: 'undo' | 'redo'): Promise<Decision | null> {
		return inTurn(async (trx) => {
			const undone = which === 'undo' ? 0 : 1;
			const row = await trx
				.selectFrom('decisions')
				.selectAll()
				.where('undone', '=', undone)
				.orderBy('id', which === 'undo' ? 'desc' : 'asc')
				.limit(1)
				.executeTakeFirst();
			if (!row) return null;
			const changes = JSON.parse(row.changes) as Change[];
			for (const { kind, id, before, after } of which === 'undo' ? changes.reverse() : changes) {
				await setState(trx, kind, id, which === 'undo' ? before : after);
			}
			await trx
				.updateTable('decisions')
				.set({ undone: 1 - undone })
				.where('id', '=', row.id)
				.execute();
			return { id: row.id, at: row.at, sentence: row.sentence, undone: which === 'undo' };
		});
	}

	const things: Things = {
		async list<T>(kind: string, { from, before }: IdRange = {}) {
			let query = db.selectFrom('things').select('body').where('kind', '=', kind).where('binned_at', 'is', null);
			if (from !== undefined) query = query.where('id', '>=', from);
			if (before !== undefined) query = query.where('id', '<', before);
			const rows = await query.orderBy('id').execute();
			return rows.map(({ body }) => JSON.parse(body) as T);
		},
		async count(kind) {
			const { things } = await db
				.selectFrom('things')
				.select(({ fn }) => fn.countAll().as('things'))
				.where('kind', '=', kind)
				.where('binned_at', 'is', null)
				.executeTakeFirstOrThrow();
			return Number(things);
		},
		async get<T>(kind: string, id: string) {
			const state = await stateOf(db, kind, id);
			return state && state.binnedAt === null ? (JSON.parse(state.body) as T) : null;
		},
		decide: (edits, sentence) =>
			inTurn(async (trx) => {
				const at = now().toISOString();
				const changes: Change[] = [];
				for (const edit of edits) {
					const before = await stateOf(trx, edit.kind, edit.id);
					const after = afterEdit(edit, before, at);
					if (JSON.stringify(before) === JSON.stringify(after)) continue;
					await setState(trx, edit.kind, edit.id, after);
					changes.push({ kind: edit.kind, id: edit.id, before, after });
				}
				if (changes.length === 0) return 0;
				// A new decision ends what could have been done again.
				await trx.deleteFrom('decisions').where('undone', '=', 1).execute();
				await trx
					.insertInto('decisions')
					.values({ at, sentence, changes: JSON.stringify(changes), undone: 0 })
					.execute();
				return changes.length;
			}),
		note: (kind, id, body) =>
			inTurn(async (trx) => {
				const before = await stateOf(trx, kind, id);
				if (before !== null && before.binnedAt === null)
					await setState(trx, kind, id, { body: JSON.stringify(body), binnedAt: null });
			}),
		async decisions(limit) {
			const rows = await db
				.selectFrom('decisions')
				.select(['id', 'at', 'sentence', 'undone'])
				.orderBy('id', 'desc')
				.limit(limit)
				.execute();
			return rows.map(({ id, at, sentence, undone }) => ({ id, at, sentence, undone: undone === 1 }));
		},
		undo: () => move('undo'),
		redo: () => move('redo'),
		async bin() {
			const rows = await db
				.selectFrom('things')
				.selectAll()
				.where('binned_at', 'is not', null)
				.orderBy('binned_at', 'desc')
				.execute();
			return rows.map(({ kind, id, body, binned_at }) => {
				const { name, title } = JSON.parse(body) as { name?: string; title?: string };
				return { id, what: kind as BinEntry['what'], name: name ?? title ?? '', deletedAt: binned_at! };
			});
		},
		async restoreFromBin(id) {
			const row = await db
				.selectFrom('things')
				.selectAll()
				.where('id', '=', id)
				.where('binned_at', 'is not', null)
				.executeTakeFirst();
			if (!row) return false;
			const withIt =
				row.kind === 'season'
					? await db
							.selectFrom('things')
							.selectAll()
							.where('kind', '=', 'garment')
							.where('binned_at', '=', row.binned_at)
							.execute()
					: [];
			const body = JSON.parse(row.body) as { name?: string; title?: string };
			const name = body.name ?? body.title ?? 'it';
			await things.decide(
				[row, ...withIt].map(({ kind, id, body }) => ({ kind, id, body: JSON.parse(body) })),
				`Took ${name}${withIt.length > 0 ? ` and ${counted(withIt.length, 'garment')}` : ''} out of the bin`,
			);
			return true;
		},
		async emptyOldBin() {
			const limit = new Date(now().getTime() - BIN_DAYS * 24 * 3600 * 1000).toISOString();
			const { numDeletedRows } = await db.deleteFrom('things').where('binned_at', '<', limit).executeTakeFirst();
			return Number(numDeletedRows);
		},
	};
	return things;
}
