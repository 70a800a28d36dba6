// `npm run schemas`: brings src/server/schemas/answers.ts up to date.
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { answerSchemas } from './make-answer-schemas.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const path = `${root}src/server/schemas/answers.ts`;
writeFileSync(path, answerSchemas());
const biome = `${root}node_modules/@biomejs/biome/bin/biome`;
const done = spawnSync(process.execPath, [biome, 'check', '--write', path], { cwd: root, stdio: ['inherit', 2, 2] });
process.exitCode = done.status ?? 1;
