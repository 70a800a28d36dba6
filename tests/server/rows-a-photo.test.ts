import { join } from 'node:path';
import { DatabaseSync } from '@photostructure/sqlite';
import { SqliteDriver } from 'kysely';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { DATABASE_FILE } from '../../src/store/open-home.ts';
import { aReading, aSwatch, INK, OAT, RUST } from '../support/build-wardrobe.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { cutOut } from '../support/pictures.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

/** The project's own choice: what a photo needs is itself, its garment, and those taken beside it. */
const MOST_ROWS = 60;

/** Fills a home by plain SQL, five photos a garment, each photo taken an hour after the one before. */
function fill(database: InstanceType<typeof DatabaseSync>, garments: number): void {
	const reading = aReading([aSwatch(OAT, 1, 'top')], { background: INK });
	const photo = database.prepare(
		`INSERT INTO photos (id, original_name, media_type, size_bytes, added_at, status, correction, version, reading, taken_at)
		VALUES (?, 'IMG_1.jpg', 'image/jpeg', 1, '2026-01-01T00:00:00.000Z', 'read', '{}', 1, ?, ?)`,
	);
	const entry = database.prepare(`INSERT INTO entries (kind, id, body, version) VALUES ('garment', ?, ?, 1)`);
	const shown = database.prepare(`INSERT INTO shown_photos (photo_id, kind, entry_id) VALUES (?, 'garment', ?)`);
	database.exec('BEGIN');
	for (let garment = 0; garment < garments; garment++) {
		const photoIds = [0, 1, 2, 3, 4].map((at) => `photo ${garment} ${at}`);
		for (const [at, id] of photoIds.entries()) {
			const takenAt = new Date(Date.UTC(2020, 0, 1, garment * 5 + at)).toISOString().slice(0, 19);
			photo.run(id, JSON.stringify({ ...reading, takenAt }), takenAt);
			shown.run(id, `g${garment}`);
		}
		entry.run(`g${garment}`, JSON.stringify(garmentDetails({ id: `g${garment}`, nameFrom: 'looks', photoIds })));
	}
	database.exec('COMMIT');
}

/** Rows that come back while `act` runs, and the statements for which SQLite looks through a whole table (sqlite.org/eqp.html). */
async function workOf(database: InstanceType<typeof DatabaseSync>, act: () => Promise<unknown>) {
	const { acquireConnection } = SqliteDriver.prototype;
	let rows = 0;
	const statements = new Set<string>();
	SqliteDriver.prototype.acquireConnection = async function (this: SqliteDriver) {
		const connection = await acquireConnection.call(this);
		return {
			streamQuery: (...words) => connection.streamQuery(...words),
			async executeQuery(query) {
				const result = await connection.executeQuery(query);
				rows += result.rows.length;
				if (/^(select|update|insert|delete)/i.test(query.sql)) statements.add(query.sql);
				// biome-ignore lint/suspicious/noExplicitAny: rows of any table pass through
				return result as any;
			},
		};
	};
	try {
		await act();
	} finally {
		SqliteDriver.prototype.acquireConnection = acquireConnection;
	}
	const scans = [...statements].filter((sql) =>
		(database.prepare(`EXPLAIN QUERY PLAN ${sql}`).all() as { detail: string }[]).some(({ detail }) =>
			/^SCAN (?!CONSTANT|\d+ CONSTANT)/.test(detail),
		),
	);
	return { rows, scans, statements: statements.size };
}

/** A photo of one colour, taken at that moment, comes in as a garment and is read. */
async function comesIn(test: TestApp, lab: Lab65, taken: string): Promise<void> {
	const bytes = await sharp(await cutOut(lab))
		.withExif({ IFD2: { DateTimeOriginal: taken } })
		.png()
		.toBuffer();
	const { status, body } = await test.upload({ purpose: 'garment' }, [{ name: 'IMG_2.png', bytes }]);
	expect(status).toBe(202);
	const { reading } = (await test.get(`/api/photos/${body.items[0].photoId}`)).body;
	expect(reading.takenAt).toBe(taken.replace(/^(\d+):(\d+):(\d+) /, '$1-$2-$3T'));
}

describe('a photo that comes in and is read', () => {
	it('costs as many rows in a home of 2,000 garments and 10,000 photos as in one of 20, and looks through no table', async () => {
		const homePath = temporaryFolder();
		const test = await testApp({ homePath });
		const database = new DatabaseSync(join(homePath, DATABASE_FILE));
		try {
			fill(database, 20);
			const small = await workOf(database, () => comesIn(test, RUST, '2020:01:02 03:05:00'));
			database.exec('DELETE FROM shown_photos; DELETE FROM entries; DELETE FROM photos;');
			fill(database, 2000);
			expect(database.prepare('SELECT count(*) AS photos FROM photos').get()).toEqual({ photos: 10_000 });
			const large = await workOf(database, () => comesIn(test, RUST, '2020:01:02 03:05:00'));
			expect(large.rows).toBe(small.rows);
			expect(large.rows).toBeGreaterThan(5);
			expect(large.rows).toBeLessThanOrEqual(MOST_ROWS);
			expect(large.scans).toEqual([]);
		} finally {
			database.close();
			await test.close();
		}
	});
});
