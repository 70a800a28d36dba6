import { describe, expect, it } from 'vitest';
import { UserError } from '../../src/app/errors.ts';
import { createSharing } from '../../src/app/sharing.ts';

const MINUTE = 60_000;

function codeOfError(action: () => unknown): string {
	try {
		action();
	} catch (error) {
		if (error instanceof UserError) return error.code;
		throw error;
	}
	return 'none';
}

/** A code that is certainly not the one shown. */
const otherThan = (code: string) => String((Number(code) + 1) % 1e8).padStart(8, '0');

describe('sharing on the local network', () => {
	it('pairs a device that gives the code, spaces and all, and knows it again', () => {
		const sharing = createSharing(() => 0);
		const { code } = sharing.code();
		expect(code).toMatch(/^\d{8}$/);
		const token = sharing.pair(`${code.slice(0, 4)} ${code.slice(4)}`);
		expect(sharing.isPaired(token)).toBe(true);
		expect(sharing.isPaired(`${token}x`)).toBe(false);
		expect(sharing.isPaired(undefined)).toBe(false);
	});

	it('a code serves one device only', () => {
		const sharing = createSharing(() => 0);
		const { code } = sharing.code();
		sharing.pair(code);
		expect(codeOfError(() => sharing.pair(code))).toBe('too-many-tries');
		expect(sharing.code().code).not.toBe(code);
	});

	it('a code is thrown away after five wrong tries', () => {
		const sharing = createSharing(() => 0);
		const { code } = sharing.code();
		for (let i = 0; i < 5; i++) expect(codeOfError(() => sharing.pair(otherThan(code)))).toBe('wrong-code');
		expect(codeOfError(() => sharing.pair(code))).toBe('too-many-tries');
	});

	it('a code is worth nothing after ten minutes, and a new one is shown', () => {
		let now = 0;
		const sharing = createSharing(() => now);
		const { code, validForMs } = sharing.code();
		expect(validForMs).toBe(10 * MINUTE);
		now = 10 * MINUTE + 1;
		expect(codeOfError(() => sharing.pair(code))).toBe('too-many-tries');
		expect(sharing.code().validForMs).toBe(10 * MINUTE);
	});

	it('nobody gets in before a code was ever shown', () => {
		expect(codeOfError(() => createSharing(() => 0).pair(''))).toBe('too-many-tries');
	});
});
