import { existsSync, mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { clearWorkFolder } from '../../../src/app/hosting/work-folder.ts';
import { temporaryFolder } from '../../support/temporary-home.ts';

const HOURS = 3600 * 1000;

describe('files on their way that a killed process left', () => {
	const now = new Date('2026-11-30T12:00:00Z');
	const folder = temporaryFolder();
	function leave(path: string, hoursAgo: number): void {
		const at = new Date(now.getTime() - hoursAgo * HOURS);
		const whole = join(folder, path);
		if (path.endsWith('/')) mkdirSync(join(whole, 'home'), { recursive: true });
		else writeFileSync(whole, 'half');
		utimesSync(whole, at, at);
	}

	it('go after a day, and what may still be on its way stays', async () => {
		mkdirSync(join(folder, 'incoming'));
		leave('bring-in-old/', 30);
		leave('take-away-now/', 20);
		leave('incoming/old.part', 25);
		leave('incoming/now.part', 1);
		leave('incoming/', 40);
		await clearWorkFolder(folder, now);
		const left = ['bring-in-old', 'take-away-now', 'incoming/old.part', 'incoming/now.part'].filter((path) =>
			existsSync(join(folder, path)),
		);
		expect(left).toEqual(['take-away-now', 'incoming/now.part']);
	});

	it('are none where the folder was never made', async () => {
		await clearWorkFolder(join(folder, 'nowhere'), now);
		expect(existsSync(join(folder, 'nowhere'))).toBe(false);
	});
});
