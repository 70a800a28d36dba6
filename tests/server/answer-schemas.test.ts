import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answerSchemas } from '../../scripts/make-answer-schemas.ts';

const PATH = 'src/server/schemas/answers.ts';

describe('schemas of the answers', () => {
	it('are in step with the types that they describe; where this fails, run "npm run schemas"', () => {
		const biome = ['node_modules/@biomejs/biome/bin/biome', 'check', '--write', `--stdin-file-path=${PATH}`];
		const { stdout } = spawnSync(process.execPath, biome, { input: answerSchemas(), encoding: 'utf8' });
		expect(stdout === readFileSync(PATH, 'utf8')).toBe(true);
	});
});
