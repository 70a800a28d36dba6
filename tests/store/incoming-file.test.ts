import { createHash, randomBytes } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { dropIncoming, receiveFile } from '../../src/store/incoming-file.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

describe('a file that comes in', () => {
	it('is written as it comes, byte for byte, with its SHA-256', async () => {
		const pieces = Array.from({ length: 40 }, () => randomBytes(50_000));
		const file = await receiveFile(Readable.from(pieces), temporaryFolder());
		const bytes = Buffer.concat(pieces);
		expect(readFileSync(file.path).equals(bytes)).toBe(true);
		expect(file).toMatchObject({ sizeBytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') });
		await dropIncoming(file);
		expect(existsSync(file.path)).toBe(false);
		await dropIncoming(file);
	});

	it('that breaks off, or falls silent, leaves nothing', async () => {
		const folder = temporaryFolder();
		async function* broken() {
			yield Buffer.alloc(100_000);
			throw new Error('the line broke');
		}
		await expect(receiveFile(Readable.from(broken()), folder)).rejects.toThrow('the line broke');
		const endless = new Readable({ read: () => {} });
		endless.push('abc');
		await expect(receiveFile(endless, folder, 1)).rejects.toThrow('nothing came');
		expect(endless.destroyed).toBe(true);
		expect(readdirSync(folder)).toEqual([]);
	});
});
