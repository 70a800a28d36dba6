// A Node runtime as the npm registry carries it, checked against its pinned checksum.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { gunzipSync } from 'node:zlib';
import { extract } from 'tar-stream';

/** The package's bytes; fetched into `cache` once. Throws where the checksum is another, and throws the file away. */
function packageBytes({ package: name, version, integrity }, cache) {
	mkdirSync(cache, { recursive: true });
	const file = join(cache, `${name}-${version}.tgz`);
	if (!existsSync(file)) {
		const done = spawnSync('npm', ['pack', '--silent', `${name}@${version}`], {
			cwd: cache,
			encoding: 'utf8',
			shell: process.platform === 'win32',
		});
		if (done.status !== 0)
			throw new Error(`Expected to fetch ${name}@${version}; npm ended with ${done.status}:\n${done.stderr}`);
	}
	const bytes = readFileSync(file);
	const found = `sha512-${createHash('sha512').update(bytes).digest('base64')}`;
	if (found === integrity) return bytes;
	rmSync(file);
	throw new Error(`Expected ${name}@${version} with the checksum ${integrity}; received ${found}. It was thrown away.`);
}

/** Writes the runtime's binary, and its licence where the package has it, into `folder`; returns the binary's path. */
export async function unpackRuntime(runtime, platform, folder, cache) {
	const binary = platform === 'win32' ? 'node.exe' : 'node';
	mkdirSync(folder, { recursive: true });
	for await (const entry of Readable.from([gunzipSync(packageBytes(runtime, cache))]).pipe(extract())) {
		const chunks = [];
		for await (const chunk of entry) chunks.push(chunk);
		const { name } = entry.header;
		if (name === `package/bin/${binary}`) writeFileSync(join(folder, binary), Buffer.concat(chunks), { mode: 0o755 });
		if (name === 'package/LICENSE') writeFileSync(join(folder, 'LICENSE'), Buffer.concat(chunks));
	}
	return join(folder, binary);
}
