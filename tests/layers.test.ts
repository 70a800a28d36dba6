import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from './support/temporary-home.ts';

/** Which folder may never reach which, as a path pattern each; the table of DEVELOPERS.md. */
const forbidden: readonly { name: string; from: string; to: string }[] = [
	{ name: 'colour imports nothing of ours', from: '^src/colour/', to: '^(src/(?!colour/)|web/|tests/|bench/)' },
	{
		name: 'wardrobe imports colour only',
		from: '^src/wardrobe/',
		to: '^(src/(?!colour/|wardrobe/)|web/|tests/|bench/)',
	},
	{
		name: 'photo stays below store and server',
		from: '^src/photo/',
		to: '^(src/(store|server|cli|main)|web/|tests/|bench/)',
	},
	{ name: 'store stays below server and cli', from: '^src/store/', to: '^(src/(server|cli|main)|web/|tests/|bench/)' },
	{ name: 'server does not know the command line', from: '^src/server/', to: '^(src/cli/|web/src/|tests/|bench/)' },
	{ name: 'nothing in src imports tests or bench', from: '^src/', to: '^(tests|bench)/' },
	{
		name: 'the pocket page has no React and no server',
		from: '^web/pocket/',
		to: '^(src/(photo|store|server|cli)/|node_modules/react)',
	},
];

const sourceFilesBelow = (folder: string) =>
	readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => /\.tsx?$/.test(name)).length;

/** `root` is where the folders lie. */
async function modulesOf(folders: readonly string[], root = process.cwd()) {
	const { output } = await cruise([...folders], {
		baseDir: root,
		tsPreCompilationDeps: true,
		doNotFollow: { path: 'node_modules' },
		exclude: { path: 'web/dist' },
		enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'] },
		ruleSet: {
			forbidden: [
				...forbidden.map(({ name, from, to }) => ({
					name,
					severity: 'error' as const,
					from: { path: from },
					to: { path: to },
				})),
				{
					name: 'pure parts use no Node module',
					severity: 'error',
					from: { path: '^src/(colour|wardrobe)/' },
					to: { dependencyTypes: ['core'] },
				},
				{
					name: 'photo imports only types of wardrobe, apart from its tables of slots and kinds',
					severity: 'error',
					from: { path: '^src/photo/' },
					to: { path: '^src/wardrobe/(?!slot\\.ts|kind\\.ts|reading\\.ts)', dependencyTypesNot: ['type-only'] },
				},
				{
					name: 'the page imports only types from the server',
					severity: 'error',
					from: { path: '^web/' },
					to: { path: '^src/(photo|store|server|cli)/', dependencyTypesNot: ['type-only'] },
				},
				{
					name: 'no circles',
					severity: 'error',
					from: { path: '^src/' },
					to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
				},
			],
		},
		validate: true,
	});
	if (typeof output === 'string') throw new TypeError('expected a result object from the cruiser');
	return output;
}

describe('layers', () => {
	it('imports run one way, and the check saw every source file', async () => {
		const folders = ['src', 'web'];
		const result = await modulesOf(folders);
		const violations = result.summary.violations.map((found) => `${found.rule.name}: ${found.from} -> ${found.to}`);
		expect(violations).toEqual([]);
		const ours = result.modules.filter((module) => /^(src|web)\//.test(module.source) && /\.tsx?$/.test(module.source));
		const onDisk = folders.reduce((count, folder) => count + sourceFilesBelow(folder), 0);
		// The cruiser reports success when it can read nothing: this is what fails then.
		expect(ours.length).toBeGreaterThanOrEqual(onDisk);
		expect(ours.filter((module) => module.dependencies.length > 0).length).toBeGreaterThan(onDisk / 2);
	});

	it('a forbidden import is reported by the same rules', async () => {
		const root = temporaryFolder();
		for (const folder of ['src/server', 'src/store', 'src/wardrobe', 'web'])
			mkdirSync(join(root, folder), { recursive: true });
		writeFileSync(join(root, 'src/server/a.ts'), 'export const a = 1;\n');
		writeFileSync(join(root, 'src/store/b.ts'), "import { a } from '../server/a.ts';\nexport const b = a;\n");
		writeFileSync(
			join(root, 'src/wardrobe/c.ts'),
			"import { readFileSync } from 'node:fs';\nexport const c = readFileSync;\n",
		);
		writeFileSync(join(root, 'web/d.ts'), "import { b } from '../src/store/b.ts';\nexport const d = b;\n");
		const { summary } = await modulesOf(['src', 'web'], root);
		const found = summary.violations.map(({ rule, from }) => `${rule.name}: ${from}`);
		expect(found).toContain('store stays below server and cli: src/store/b.ts');
		expect(found).toContain('pure parts use no Node module: src/wardrobe/c.ts');
		expect(found).toContain('the page imports only types from the server: web/d.ts');
	});
});
