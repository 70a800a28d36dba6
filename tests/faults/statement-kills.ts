import { type CompiledQuery, type DatabaseConnection, SqliteDriver } from 'kysely';

/** Counts the statements that reach the database, and kills whoever sends them at one. */
export type StatementKills = {
	/** From now on the `at`th statement and all after it fail, as if the program had been killed before it; 0 = none. */
	arm(at: number): void;
	/** Statements since it was armed. */
	count(): number;
	/** Whether the kill came. */
	isDead(): boolean;
	/** Lets statements through as before. */
	remove(): void;
};

/** What a killed program's statements come back with. */
class KilledError extends Error {}

/** Watches every SQLite connection of this process, at the level of single statements. */
export function watchStatements(): StatementKills {
	const { acquireConnection } = SqliteDriver.prototype;
	let dieAt = 0;
	let statements = 0;
	let dead = false;
	SqliteDriver.prototype.acquireConnection = async function (this: SqliteDriver): Promise<DatabaseConnection> {
		const connection = await acquireConnection.call(this);
		return {
			streamQuery: (...words) => connection.streamQuery(...words),
			async executeQuery<R>(query: CompiledQuery) {
				statements++;
				if (dieAt > 0 && statements >= dieAt) dead = true;
				if (dead) throw new KilledError(`killed before: ${query.sql.slice(0, 60)}`);
				return connection.executeQuery<R>(query);
			},
		};
	};
	return {
		arm(at) {
			dieAt = at;
			statements = 0;
			dead = false;
		},
		count: () => statements,
		isDead: () => dead,
		remove() {
			SqliteDriver.prototype.acquireConnection = acquireConnection;
		},
	};
}
