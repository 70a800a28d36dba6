import { createHash } from 'node:crypto';
import { COMMON_HASHES } from './common-hashes.ts';

/** Letters of base64url for the 42 bits kept of each hash: a good password is taken for a common one once in four hundred million. */
const HASH_LETTERS = 7;

/** What is kept of a common password, however it is written in case and blanks: 42 bits of its SHA-256. */
export const commonHashOf = (password: string): string =>
	createHash('sha256')
		.update(password.normalize('NFKC').toLowerCase().replaceAll(/\s/g, ''))
		.digest('base64url')
		.slice(0, HASH_LETTERS);

const hashes = new Set(
	Array.from({ length: COMMON_HASHES.length / HASH_LETTERS }, (_, index) =>
		COMMON_HASHES.slice(index * HASH_LETTERS, (index + 1) * HASH_LETTERS),
	),
);

/** Whether it is among the commonest passwords of 15 letters and more that people were found to use (OWASP ASVS 5.0, 6.2.4, asks for 3,000). */
export const isCommonPassword = (password: string): boolean => hashes.has(commonHashOf(password));
