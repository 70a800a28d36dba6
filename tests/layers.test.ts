import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import { describe, expect, it } from 'vitest';
import { longFunctionsBelow, longFunctionsIn } from './support/long-functions.ts';
import { temporaryFolder } from './support/temporary-home.ts';

/** The rooms of a floor, lowest first: a room may import those before it, types included. */
const floors = {
	'src/wardrobe/': ['words', 'days', 'palette', 'fit', 'pairs', 'pictures', 'gaps', 'line-up', 'wishes', 'season'],
	'src/': ['colour', 'language', 'wardrobe', 'reading', 'process', '(store|photo)', 'app', '(server|cli)'],
} as const;

/** What a room must not reach: the rooms after its own on the same floor. */
const upwards = Object.entries(floors).flatMap(([floor, rooms]) =>
	rooms.slice(0, -1).map((room, index) => ({
		name: `${floor}${room} imports no room above it`,
		from: `^${floor}${room}/`,
		to: `^${floor}(${rooms.slice(index + 1).join('|')})/`,
	})),
);

/** Which folder may never reach which, as a path pattern each; the table of DEVELOPERS.md. */
const forbidden: readonly { name: string; from: string; to: string }[] = [
	...upwards,
	{ name: 'the pure floors know no page', from: '^src/(colour|language|wardrobe|reading)/', to: '^web/' },
	{ name: 'photo does not know the store', from: '^src/photo/', to: '^src/store/' },
	{ name: 'server does not know the command line', from: '^src/server/', to: '^(src/cli/|web/src/)' },
	{
		name: 'the command line knows the server only to serve',
		from: '^src/cli/(?!commands/(serve|host|work)\\.ts$)',
		to: '^src/server/',
	},
	{ name: 'nothing in src imports tests or bench', from: '^src/', to: '^(tests|bench)/' },
	{
		name: 'the pocket page has no React and no server',
		from: '^web/pocket/',
		to: '^(src/(photo|store|app|server|cli)/|node_modules/react)',
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
					from: { path: '^src/(colour|language|wardrobe|reading)/' },
					to: { dependencyTypes: ['core'] },
				},
				{
					name: 'the page imports only types from the server',
					severity: 'error',
					from: { path: '^web/' },
					to: { path: '^src/(photo|store|app|server|cli)/', dependencyTypesNot: ['type-only'] },
				},
				{
					name: 'no circles',
					severity: 'error',
					from: { path: '^src/' },
					to: { circular: true },
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

	it('every room says in at most 15 lines what belongs there and what it may import', () => {
		const rooms = new Set(
			readdirSync('src', { recursive: true, encoding: 'utf8' }).flatMap((name) =>
				name.endsWith('.ts') ? dirname(name) : [],
			),
		);
		expect(rooms.size).toBeGreaterThan(20);
		for (const room of rooms) {
			const lines = readFileSync(join('src', room, 'README.md'), 'utf8')
				.trimEnd()
				.split('\n');
			expect(lines.length, room).toBeLessThanOrEqual(15);
		}
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
		expect(found).toContain('src/(store|photo) imports no room above it: src/store/b.ts');
		expect(found).toContain('pure parts use no Node module: src/wardrobe/c.ts');
		expect(found).toContain('the page imports only types from the server: web/d.ts');
	});

	it('no function is longer than 60 lines', () => {
		expect(['src', 'web/src', 'web/pocket', 'scripts'].flatMap((folder) => longFunctionsBelow(folder, 60))).toEqual([]);
		const ofLines = (count: number) => `const long = () => {\n${'\ta();\n'.repeat(count - 2)}};\n`;
		expect(longFunctionsIn(ofLines(60), 60)).toEqual([]);
		expect(longFunctionsIn(`\n${ofLines(61)}`, 60)).toEqual(['line 2: 61 lines']);
	});
});
