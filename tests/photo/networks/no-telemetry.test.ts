import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { plainPng } from '../../support/pictures.ts';
import { temporaryFolder } from '../../support/temporary-home.ts';

describe('reading photos', () => {
	it('leaves no trace of usage reports: no device id, no event store, no log', async () => {
		const home = temporaryFolder();
		const photo = join(home, 'photo.png');
		writeFileSync(photo, await plainPng(300, 400, '#884422'));
		const { ORT_DISABLE_TELEMETRY: _unset, ...environment } = process.env;
		const done = spawnSync(process.execPath, ['bin/dyelot.mjs', 'read', photo, '--json'], {
			encoding: 'utf8',
			env: { ...environment, HOME: home, TMPDIR: home, XDG_CACHE_HOME: join(home, '.cache') },
		});
		expect(JSON.parse(done.stdout)).toMatchObject({ ok: true });
		expect(readdirSync(home).filter((name) => name.startsWith('mat-debug'))).toEqual([]);
		expect(existsSync(join(home, '.cache', 'Microsoft'))).toBe(false);
	});
});
