import pg from 'pg';

/** Something told to all processes of one database. */
export type Notice = { readonly home: string; readonly event: string; readonly data: unknown };

/** What one process tells all others, through the database. */
export type Notices = {
	/** Told when it resolves. A notice larger than the database takes is told without its data. */
	tell(notice: Notice): Promise<void>;
	/** Waits for what is being told. */
	close(): Promise<void>;
};

/** Nothing can be told just now; the line is being opened again. */
class NoticesDownError extends Error {}

const CHANNEL = 'dyelot';

/** PostgreSQL takes less than 8,000 bytes in its default build (manual, NOTIFY). */
const MOST_BYTES = 7900;

/** Before a broken line to the database is opened again. */
const AGAIN_AFTER_MS = 1000;

const written = ({ home, event, data }: Notice): string => {
	const whole = JSON.stringify({ home, event, data });
	return Buffer.byteLength(whole) <= MOST_BYTES ? whole : JSON.stringify({ home, event, data: null });
};

/**
 * Listens to what other processes, and this one, tell: on a line of its own, opened again where it breaks. `onGap` hears that notices may have
 * been missed meanwhile.
 */
export async function openNotices(settings: {
	readonly connectionString: string;
	readonly onNotice: (notice: Notice) => void;
	readonly onGap: () => void;
	readonly report: (error: unknown) => void;
}): Promise<Notices> {
	const { connectionString, onNotice, onGap, report } = settings;
	let client: pg.Client | null = null;
	let again: NodeJS.Timeout | null = null;
	let closed = false;
	const telling = new Set<Promise<unknown>>();

	async function open(): Promise<void> {
		const opening = new pg.Client({ connectionString });
		opening.on('error', report);
		opening.on('notification', ({ payload }) => onNotice(JSON.parse(payload ?? '{}') as Notice));
		try {
			await opening.connect();
			await opening.query(`listen ${CHANNEL}`);
		} catch (error) {
			opening.end().catch(report);
			throw error;
		}
		client = opening;
		// Of a line that stood: one that could not be opened is tried again by whoever opened it, and twice would be two more each time.
		opening.once('end', () => {
			client = null;
			if (!closed) later();
		});
	}
	function later(): void {
		again = setTimeout(() => {
			open().then(onGap, (error: unknown) => {
				report(error);
				if (!closed) later();
			});
		}, AGAIN_AFTER_MS);
	}

	await open();
	return {
		async tell(notice) {
			if (!client) throw new NoticesDownError();
			const told = client.query('select pg_notify($1, $2)', [CHANNEL, written(notice)]);
			telling.add(told);
			await told.finally(() => telling.delete(told));
		},
		async close() {
			closed = true;
			if (again) clearTimeout(again);
			await Promise.allSettled(telling);
			await client?.end();
		},
	};
}
