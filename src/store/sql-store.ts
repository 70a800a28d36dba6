import type { Kysely, Transaction } from 'kysely';
import { binOf, restoreIn } from './bin.ts';
import { carryOut, changedBy } from './carry-out.ts';
import { decideIn, type InTurn, once } from './deciding.ts';
import { editsOf } from './edits.ts';
import { moveIn, sizeOfNext } from './moving.ts';
import { pairingRecords } from './pairing-records.ts';
import type { PhotoFiles } from './photo-files.ts';
import { photoRecords } from './photo-records.ts';
import { readsOf } from './reads.ts';
import type { Tables } from './schema.ts';
import { type Asked, type Decision, type Outcome, type Store, UNASKED } from './store.ts';

/**
 * The store over any SQL database that the query builder speaks to. `takeTurn` is called first in each transaction that decides: where
 * several programs share a database it waits until the others have decided, so that each decision sees the one before.
 */
export function sqlStore(
	db: Kysely<Tables>,
	files: PhotoFiles,
	now: () => Date,
	takeTurn: (trx: Transaction<Tables>) => Promise<void> = async () => {},
): Store {
	const inTurn: InTurn = (act) =>
		db.transaction().execute(async (trx) => {
			await takeTurn(trx);
			return act(trx);
		});
	const move = (which: 'undo' | 'redo', asked: Asked): Promise<Outcome<Decision | null>> =>
		inTurn((trx) =>
			once(trx, asked, now(), async () => {
				const moved = await moveIn(trx, which);
				return { answer: moved?.decision ?? null, changed: moved?.changed ?? [] };
			}),
		);
	return {
		...readsOf(db),
		pairings: pairingRecords(db),
		photos: photoRecords(db, files),
		decide: (asked, plan) =>
			inTurn((trx) =>
				once(trx, asked, now(), async () => {
					const home = readsOf(trx);
					const { does, follows, sentence, answer } = await plan(home);
					const following = async () => (follows ? editsOf(await follows(home)) : null);
					const changed = await decideIn(trx, editsOf(does), sentence, now().toISOString(), following);
					return { answer: await answer(home), changed };
				}),
			),
		note: (plan) =>
			inTurn(async (trx) => changedBy(await carryOut(trx, editsOf(await plan(readsOf(trx))), now().toISOString()))),
		async decisions(limit) {
			const rows = await db
				.selectFrom('decisions')
				.select(['id', 'at', 'sentence', 'undone'])
				.orderBy('id', 'desc')
				.limit(limit)
				.execute();
			return rows.map(({ id, at, sentence, undone }) => ({ id, at, sentence, undone: undone === 1 }));
		},
		sizeOfNext: (which) => sizeOfNext(db, which),
		undo: (asked = UNASKED) => move('undo', asked),
		redo: (asked = UNASKED) => move('redo', asked),
		bin: () => binOf(db),
		restoreFromBin: (id, asked = UNASKED) =>
			inTurn((trx) => once(trx, asked, now(), () => restoreIn(trx, id, now().toISOString()))),
		close: () => db.destroy(),
	};
}
