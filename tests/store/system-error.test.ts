import { constants } from 'node:os';
import { describe, expect, it } from 'vitest';
import { meaningOfSystemError, sentenceOfSystemError } from '../../src/store/system-error.ts';

describe('what the system says of a file', () => {
	it('is never left as a code alone, for all the codes that this system has', () => {
		for (const code of Object.keys(constants.errno)) {
			const sentence = sentenceOfSystemError(Object.assign(new Error(code), { code, path: '/tmp/x' }));
			expect(sentence).toMatch(/^Expected to use "\/tmp\/x"; .+ .+\.$/);
		}
	});

	it('of a disk that can only be read, or is full, is told as that', () => {
		expect(meaningOfSystemError({ code: 'EROFS' })).toBe('its disk can only be read');
		expect(meaningOfSystemError({ code: 'ENOSPC' })).toBe('the disk is full');
	});

	it.each([new Error('a fault'), { code: 'ERR_INVALID_ARG_TYPE' }, null])(
		'is nothing where it said nothing',
		(error) => {
			expect(meaningOfSystemError(error)).toBeNull();
		},
	);
});
