// The packages that the program itself is made of: not the page's, which are built in, and not those that build or test.
import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';

/** An import at the start of a line that is not of types alone, its last line, or one as the program goes on; what follows the package's name is a path inside it. */
const IMPORT =
	/(?:^(?:import(?! type)|export(?! type)|\})[^"'\n]*\bfrom |^import |\bimport\()["']((?:@[\w-]+\/)?\w[\w.-]*)(?:\/[^"'\n]*)?["']/gm;

/** Names of the packages that the modules below `folder` import, in order. */
export function packagesImportedBelow(folder) {
	const names = new Set();
	for (const file of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
		if (!/\.[jt]s$/.test(file)) continue;
		for (const [, name] of readFileSync(join(folder, file), 'utf8').matchAll(IMPORT))
			if (!builtinModules.includes(name)) names.add(name);
	}
	return [...names].sort();
}
