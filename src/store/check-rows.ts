import { type Kysely, sql } from 'kysely';
import { keptWords } from '../language/kept-sentence.ts';
import { inLanguage, isSaid } from '../language/speak.ts';
import { dropEntry } from './entry-rows.ts';
import type { EntryKey } from './entry-state.ts';
import type { SetAsideRow, Tables } from './schema.ts';
import { misshapenIn } from './shapes.ts';

/** What an entry of the kind is called; the kind as it is where this program has no word for it. */
function nounOf(kind: string): string {
	const noun = `nouns.${kind}`;
	return isSaid(noun) ? keptWords(noun) : kind;
}

/** Before the kind, in the source of an entry that was set aside. */
const ENTRIES = 'entries/';

const isJson = (column: string) => sql<number>`json_valid(${sql.ref(column)})`;

/**
 * Moves rows whose JSON cannot be read into `set_aside`, so that one damaged row does not hide all the others; photos keep their row
 * and are read again. SQLite only: its `json_valid` looks through ten thousand readings in a moment.
 */
export async function setUnreadableAside(db: Kysely<Tables>, now: () => Date): Promise<string[]> {
	const at = now().toISOString();
	return db
		.transaction()
		.execute(async (trx) => [
			...(await setUnreadableEntriesAside(trx, at)),
			...(await setMisshapenAside(trx, at)),
			...(await setDecisionsAside(trx, at)),
			...(await readDamagedAgain(trx, at)),
		]);
}

async function setUnreadableEntriesAside(db: Kysely<Tables>, at: string): Promise<string[]> {
	const entries = await db.selectFrom('entries').selectAll().where(isJson('body'), '=', 0).execute();
	await setEntriesAside(db, entries, at);
	const [first] = entries;
	if (!first) return [];
	return [keptWords('homeChecks.unreadRows', { count: entries.length, what: nounOf(first.kind), id: first.id })];
}

async function setDecisionsAside(db: Kysely<Tables>, at: string): Promise<string[]> {
	const decisions = await db.selectFrom('decisions').selectAll().where(isJson('changes'), '=', 0).execute();
	for (const { id, changes } of decisions) {
		await setAside(db, { source: 'decisions', id: String(id), body: String(changes), at });
		await db.deleteFrom('decisions').where('id', '=', id).execute();
	}
	return decisions.length > 0 ? [keptWords('homeChecks.lostDecisions', { count: decisions.length })] : [];
}

async function readDamagedAgain(db: Kysely<Tables>, at: string): Promise<string[]> {
	const photos = await db
		.selectFrom('photos')
		.selectAll()
		.where((where) =>
			where.or([
				where(isJson('correction'), '=', 0),
				where(isJson('reading'), '=', 0),
				where(isJson('failure'), '=', 0),
				lacksAPart,
			]),
		)
		.execute();
	for (const { id, correction, reading, failure, mask } of photos) {
		await setAside(db, { source: 'photos', id, body: JSON.stringify({ correction, reading, failure }), at });
		await db
			.updateTable('photos')
			.set({ reading: null, failure: null, status: 'waiting' })
			.set(readable(correction) ? {} : { correction: mask ? '{"mask":true}' : '{}' })
			.where('id', '=', id)
			.execute();
	}
	return photos.length > 0 ? [keptWords('homeChecks.damagedReadings', { count: photos.length })] : [];
}

async function setAside(db: Kysely<Tables>, row: SetAsideRow): Promise<void> {
	await db.insertInto('set_aside').values(row).execute();
}

type Entry = EntryKey & { readonly body: string };

async function setEntriesAside(db: Kysely<Tables>, entries: readonly Entry[], at: string): Promise<void> {
	for (const { kind, id, body } of entries) {
		await setAside(db, { source: `${ENTRIES}${kind}`, id, body: String(body), at });
		await dropEntry(db, { kind, id });
	}
}

/**
 * Moves entries that can be read but have not the form that the judgements take for granted into `set_aside`, so that all others still show. Any
 * database.
 */
export async function setMisshapenAside(db: Kysely<Tables>, at: string): Promise<string[]> {
	const entries = await db.selectFrom('entries').select(['kind', 'id', 'body']).execute();
	const found = entries.flatMap((entry) => {
		const what = inLanguage('kept', () => misshapenIn(entry.kind, entry.body));
		return what === null ? [] : [{ ...entry, what }];
	});
	await setEntriesAside(db, found, at);
	return sentenceOf(found);
}

type Misshapen = { readonly kind: string; readonly id: string; readonly what: string };

function sentenceOf(found: readonly Misshapen[]): string[] {
	const [first] = found;
	if (!first) return [];
	const { kind, id, what: fault } = first;
	return [keptWords('homeChecks.otherForm', { count: found.length, what: nounOf(kind), id, fault })];
}

/** Says again what {@link setMisshapenAside} set aside since `from`, whichever program did: one sentence at most. */
export async function misshapenAside(db: Kysely<Tables>, from: string): Promise<string[]> {
	const rows = await db
		.selectFrom('set_aside')
		.select(['source', 'id', 'body'])
		.where('source', 'like', `${ENTRIES}%`)
		.where('at', '>=', from)
		.orderBy('at')
		.orderBy('id')
		.execute();
	return sentenceOf(
		rows.flatMap(({ source, id, body }) => {
			const kind = source.slice(ENTRIES.length);
			const what = inLanguage('kept', () => misshapenIn(kind, body));
			return what === null ? [] : [{ kind, id, what }];
		}),
	);
}

/** Parts that every reading has, and their JSON types. */
const READING_PARTS = {
	swatches: 'array',
	uncorrected: 'array',
	kindGuesses: 'array',
	pattern: 'object',
	light: 'object',
	trust: 'object',
};

/** SQL for "what was read of this photo lacks a part"; false where nothing was read. SQLite only. */
const lacksAPart = sql<boolean>`reading is not null and json_valid(reading) and not (${sql.join(
	Object.entries(READING_PARTS).map(([part, type]) => sql`coalesce(json_type(reading, ${`$.${part}`}), '') = ${type}`),
	sql` and `,
)})`;

function readable(json: string): boolean {
	try {
		JSON.parse(json);
		return true;
	} catch {
		return false;
	}
}
