import { describe, expect, it } from 'vitest';
import { UserError } from '../../src/app/errors.ts';
import { createSharing, type Sharing } from '../../src/app/sharing.ts';
import { type OpenHome, openHome } from '../../src/store/open-home.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const START = Date.parse('2026-03-01T10:00:00.000Z');

async function codeOfError(action: () => Promise<unknown>): Promise<string> {
	try {
		await action();
	} catch (error) {
		if (error instanceof UserError) return error.code;
		throw error;
	}
	return 'none';
}

/** A code that is certainly not the one shown. */
const otherThan = (code: string) => String((Number(code) + 1) % 1e8).padStart(8, '0');

type Trial = { readonly sharing: Sharing; readonly home: OpenHome; readonly clock: { now: number } };

/** Sharing over a home on disk, and the clock it goes by. */
async function over(path: string, trial: (trial: Trial) => Promise<void>, now = START): Promise<void> {
	const clock = { now };
	const home = await openHome(path, { now: () => new Date(clock.now) });
	const failures: unknown[] = [];
	try {
		const sharing = await createSharing({
			records: home.store.pairings,
			now: () => clock.now,
			report: (error) => failures.push(error),
		});
		await trial({ sharing, home, clock });
	} finally {
		await home.close();
	}
	expect(failures).toEqual([]);
}

const paired = (sharing: Sharing, token: string | undefined) => sharing.recognise(token).paired;

describe('sharing on the local network', () => {
	it('pairs a device that gives the code, spaces and all, and knows it again', () =>
		over(temporaryFolder(), async ({ sharing }) => {
			const { code } = sharing.code();
			expect(code).toMatch(/^\d{8}$/);
			const token = await sharing.pair(`${code.slice(0, 4)} ${code.slice(4)}`, 'iPhone');
			expect(paired(sharing, token)).toBe(true);
			expect(paired(sharing, `${token}x`)).toBe(false);
			expect(paired(sharing, undefined)).toBe(false);
			expect(sharing.devices()).toMatchObject([{ device: 'iPhone', pairedAt: '2026-03-01T10:00:00.000Z' }]);
		}));

	it('a code serves one device only, also where two give it at once', () =>
		over(temporaryFolder(), async ({ sharing }) => {
			const { code } = sharing.code();
			const both = await Promise.allSettled([sharing.pair(code, 'one'), sharing.pair(code, 'other')]);
			expect(both.map(({ status }) => status)).toEqual(['fulfilled', 'rejected']);
			expect(await codeOfError(() => sharing.pair(code, 'third'))).toBe('too-many-tries');
			expect(sharing.code().code).not.toBe(code);
		}));

	it('a code is thrown away after five wrong tries', () =>
		over(temporaryFolder(), async ({ sharing }) => {
			const { code } = sharing.code();
			for (let i = 0; i < 5; i++) expect(await codeOfError(() => sharing.pair(otherThan(code), ''))).toBe('wrong-code');
			expect(await codeOfError(() => sharing.pair(code, ''))).toBe('too-many-tries');
		}));

	it('a code is worth nothing after ten minutes, and a new one is shown', () =>
		over(temporaryFolder(), async ({ sharing, clock }) => {
			const { code, validForMs } = sharing.code();
			expect(validForMs).toBe(10 * MINUTE);
			clock.now += 10 * MINUTE + 1;
			expect(await codeOfError(() => sharing.pair(code, ''))).toBe('too-many-tries');
			expect(sharing.code().validForMs).toBe(10 * MINUTE);
		}));

	it('nobody gets in before a code was ever shown', () =>
		over(temporaryFolder(), async ({ sharing }) => {
			expect(await codeOfError(() => sharing.pair('', ''))).toBe('too-many-tries');
		}));
});

describe('a paired device', () => {
	it('is known again after a restart, and nothing on the disk lets anybody else in', async () => {
		const path = temporaryFolder();
		let token = '';
		await over(path, async ({ sharing }) => {
			token = await sharing.pair(sharing.code().code, 'iPhone');
		});
		await over(path, async ({ sharing, home }) => {
			const kept = JSON.stringify(await home.store.pairings.list());
			expect(kept).not.toContain(token);
			expect(paired(sharing, (await home.store.pairings.list())[0]!.tokenHash)).toBe(false);
			expect(paired(sharing, token)).toBe(true);
		});
	});

	it('that is used stays, whenever it was paired; its own note is renewed at most once an hour', () =>
		over(temporaryFolder(), async ({ sharing, clock }) => {
			const token = await sharing.pair(sharing.code().code, '');
			for (let day = 0; day < 90; day += 29) {
				clock.now += 29 * DAY;
				expect(sharing.recognise(token)).toEqual({ paired: true, renewed: true });
				expect(sharing.recognise(token)).toEqual({ paired: true, renewed: false });
			}
			clock.now += 10 * MINUTE;
			sharing.recognise(token);
			expect(sharing.devices()[0]!.seenAt).toBe(new Date(clock.now).toISOString());
		}));

	it('that is not used for 30 days is forgotten by the program too, running or not', async () => {
		const path = temporaryFolder();
		let token = '';
		await over(path, async ({ sharing, home, clock }) => {
			token = await sharing.pair(sharing.code().code, '');
			const other = await sharing.pair(sharing.code().code, '');
			clock.now += 30 * DAY + 1;
			expect(sharing.devices()).toEqual([]);
			expect(paired(sharing, other)).toBe(false);
			expect(await home.store.pairings.list()).toHaveLength(1);
		});
		await over(
			path,
			async ({ sharing, home }) => {
				expect(paired(sharing, token)).toBe(false);
				expect(await home.store.pairings.list()).toEqual([]);
			},
			START + 30 * DAY + 1,
		);
	});

	it('is sent away alone or with all others, for good', async () => {
		const path = temporaryFolder();
		const tokens: string[] = [];
		await over(path, async ({ sharing }) => {
			for (const name of ['a', 'b', 'c']) tokens.push(await sharing.pair(sharing.code().code, name));
			const [first] = sharing.devices();
			expect(await sharing.unpair(first!.id)).toBe(true);
			expect(await sharing.unpair(first!.id)).toBe(false);
			expect(tokens.map((token) => paired(sharing, token))).toEqual([false, true, true]);
			await sharing.unpairAll();
		});
		await over(path, async ({ sharing }) => {
			expect(tokens.map((token) => paired(sharing, token))).toEqual([false, false, false]);
		});
	});
});
