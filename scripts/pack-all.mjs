// Makes the downloads for all systems, or those named: `npm run pack-all -- [linux-x64 ...]`. They come to rest in downloads/.
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { sha256Of, writeArchive } from './pack/archive.mjs';
import { stage } from './pack/stage.mjs';
import { TARGETS } from './pack/targets.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !TARGETS.some((target) => target.name === name));
if (unknown.length > 0) {
	console.error(
		`Expected names of systems (${TARGETS.map(({ name }) => name).join(', ')}); received ${unknown.join(', ')}.`,
	);
	process.exit(2);
}

const downloads = join(root, 'downloads');
mkdirSync(downloads, { recursive: true });
const lines = [];
for (const target of TARGETS.filter(({ name }) => asked.length === 0 || asked.includes(name))) {
	const top = `dyelot-${version}-${target.name}`;
	const folder = join(root, 'node_modules/.cache/dyelot-pack', top);
	await stage(target, root, folder, join(root, 'node_modules/.cache/dyelot-pack/runtimes'));
	const archive = join(downloads, `${top}${target.platform === 'win32' ? '.zip' : '.tar.gz'}`);
	await writeArchive(folder, top, archive);
	const line = `${sha256Of(archive)}  ${archive.slice(downloads.length + 1)}`;
	lines.push(line);
	console.log(`${line}  ${(statSync(archive).size / 1e6).toFixed(0)} MB`);
}
writeFileSync(join(downloads, 'SHA256SUMS'), `${lines.join('\n')}\n`);
