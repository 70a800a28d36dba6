import { readFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import { fileURLToPath } from 'node:url';
import { besideBaseline, keepBaseline } from './baseline.ts';
import { type Table, textOfTable } from './table.ts';

/** Every section measures in this one run, so that its ratios hold whatever the machine. A section may be given a setting: `grounds=FOLDER`. */
const sections: Readonly<
	Record<string, () => Promise<{ run: (setting: string | null) => Promise<readonly Table[]> }>>
> = {
	colour: () => import('./colour.ts'),
	judgements: () => import('./judgements.ts'),
	'line-up': () => import('./line-up.ts'),
	stability: () => import('./stability.ts'),
	grounds: () => import('./grounds.ts'),
	photos: () => import('./photos.ts'),
	batch: () => import('./batch.ts'),
	start: () => import('./start.ts'),
	tables: () => import('./tables.ts'),
	page: () => import('./page.ts'),
	install: () => import('./install.ts'),
	host: () => import('./hosted.ts'),
	readers: () => import('./readers.ts'),
};

const { dependencies, devDependencies } = JSON.parse(
	readFileSync(fileURLToPath(new URL('../package.json', import.meta.url)), 'utf8'),
) as {
	dependencies: Record<string, string>;
	devDependencies: Record<string, string>;
};
const versions = [
	'sharp',
	'culori',
	'colorjs.io',
	'color-diff',
	'node-vibrant',
	'colorthief',
	'extract-colors',
	'onnxruntime-node',
]
	.map((name) => `${name} ${dependencies[name] ?? devDependencies[name]}`)
	.join(', ');

console.log(
	`Dyelot bench, ${new Date().toISOString().slice(0, 10)}, Node ${process.versions.node}, ${process.platform} ${process.arch}`,
);
console.log(
	`${cpus().length} cores (${cpus()[0]?.model ?? 'unknown'}), ${Math.round(totalmem() / 1024 ** 3)} GB; ${versions}`,
);
console.log('Medians; compare within this run only.');

const words = process.argv.slice(2);
const isKept = words.includes('--keep');
const wanted = new Map(
	words
		.filter((word) => word !== '--keep')
		.map((word) => {
			const [name, ...setting] = word.split('=');
			return [name!, setting.length > 0 ? setting.join('=') : null] as const;
		}),
);
for (const name of wanted.keys()) {
	if (!(name in sections)) {
		console.error(`Expected sections out of ${Object.keys(sections).join(', ')} for the bench; received "${name}".`);
		process.exit(2);
	}
}
const measured: Table[] = [];
for (const [name, load] of Object.entries(sections)) {
	if (wanted.size > 0 && !wanted.has(name)) continue;
	const { run } = await load();
	const tables = await run(wanted.get(name) ?? null);
	measured.push(...tables);
	for (const table of tables) console.log(textOfTable(table));
}
const beside = besideBaseline(measured);
if (beside) console.log(textOfTable(beside));
if (isKept) keepBaseline(measured);
