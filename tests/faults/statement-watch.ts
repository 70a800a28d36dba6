import { type CompiledQuery, type DatabaseConnection, SqliteDriver } from 'kysely';

/** Sees every statement that this process sends to SQLite. */
export type StatementWatch = {
	/** From now on `before` is called before each statement, with its number from 1. */
	begin(before?: (statement: number) => void): void;
	/** Statements since it began. */
	count(): number;
	/** Lets statements through as before. */
	remove(): void;
};

/** Watches every SQLite connection of this process, at the level of single statements. */
export function watchStatements(): StatementWatch {
	const { acquireConnection } = SqliteDriver.prototype;
	let statements = 0;
	let look: (statement: number) => void = () => {};
	SqliteDriver.prototype.acquireConnection = async function (this: SqliteDriver): Promise<DatabaseConnection> {
		const connection = await acquireConnection.call(this);
		return {
			streamQuery: (...words) => connection.streamQuery(...words),
			executeQuery<R>(query: CompiledQuery) {
				look(++statements);
				return connection.executeQuery<R>(query);
			},
		};
	};
	return {
		begin(before = () => {}) {
			statements = 0;
			look = before;
		},
		count: () => statements,
		remove() {
			SqliteDriver.prototype.acquireConnection = acquireConnection;
		},
	};
}
