// Takes out of installed packages what no start of the program reads: binaries for other systems, sources of compiled code, source maps.
// Node built-ins only: setup.mjs runs it right after the installation.
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/** Folders of which only the part for one system is needed, and how that part is called. */
const systemFolders = (platform, arch) => [
	['onnxruntime-node/bin/napi-v6', platform],
	[`onnxruntime-node/bin/napi-v6/${platform}`, arch],
	['@photostructure/sqlite/prebuilds', `${platform}-${arch}`],
];

/** Whole folders that only somebody who compiles the package needs. */
const compilersFolders = ['@photostructure/sqlite/src'];

/** Source maps, and modules compiled for another runtime than Node. */
const UNUSED_FILE = /\.(map|bare)$/;

/**
 * Makes `nodeModules` lean for one system: `platform` and `arch` as Node names them. A folder that is not there is passed over, one
 * without a part for this system is kept whole, so that nothing goes missing when a package is laid out anew.
 */
export function makeLean(nodeModules, platform, arch) {
	for (const [folder, own] of systemFolders(platform, arch)) {
		const path = join(nodeModules, folder);
		if (!existsSync(join(path, own))) continue;
		for (const name of readdirSync(path)) if (name !== own) rmSync(join(path, name), { recursive: true });
	}
	for (const folder of compilersFolders) rmSync(join(nodeModules, folder), { recursive: true, force: true });
	for (const entry of readdirSync(nodeModules, { withFileTypes: true, recursive: true }))
		if (entry.isFile() && UNUSED_FILE.test(entry.name)) rmSync(join(entry.parentPath, entry.name));
}
