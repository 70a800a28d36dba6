// Writes src/server/schemas/answers.ts: a TypeBox schema for every type that src/server/schemas/answer-types.ts names, and for every named type of
// ours that these are made of. Run by `npm run schemas`; tests/server/answer-schemas.test.ts says when it is due.
import { dirname, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { namedCode, type Writer, writerOf } from './type-schemas.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const SOURCES = resolve(root, 'src');
const TYPES = resolve(SOURCES, 'server/schemas/answer-types.ts');

function openProgram(): ts.Program {
	const { config } = ts.readConfigFile(resolve(root, 'tsconfig.json'), ts.sys.readFile);
	const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
	return ts.createProgram([TYPES], { ...options, noEmit: true });
}

/** Writes every type that `answer-types.ts` exports, shapes in `shared` under the name given there. */
function written(program: ts.Program, shared: ReadonlyMap<string, string>): Writer {
	const checker = program.getTypeChecker();
	const writer = writerOf(program, SOURCES, shared);
	for (const exported of checker.getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(TYPES)!)!)) {
		const target = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
		const type = checker.getDeclaredTypeOfSymbol(target);
		if (namedCode(writer, type) === null) throw new Error(`Expected a type with fields for ${exported.name}.`);
	}
	return writer;
}

/** Shorter shapes are written where they stand. */
const SHARED_FROM_LENGTH = 160;

/** The fields of a type that another adds to, where both are written. */
const baseIn = ({ bases, met }: Writer, shared: ReadonlyMap<string, string>): [string, string] | undefined =>
	[...bases].find(([code]) => !shared.has(code) && met.has(`exact(${code})`));

/** Every type written, with each longer shape that stands in several places written once: what types add to first, then the innermost. */
function writtenOnce(program: ts.Program): Writer {
	const shared = new Map<string, string>();
	for (;;) {
		const writer = written(program, shared);
		const base = baseIn(writer, shared);
		if (base) {
			shared.set(...base);
			continue;
		}
		const again = [...writer.met].filter(
			([code, { times }]) => times > 1 && code.length >= SHARED_FROM_LENGTH && !shared.has(code),
		);
		const [first] = again.sort(([one], [other]) => one.length - other.length);
		if (!first) return writer;
		shared.set(first[0], first[1].name);
	}
}

/** The source of `answers.ts`, not yet formatted. */
export function answerSchemas(): string {
	const { order } = writtenOnce(openProgram());
	const typed = order.flatMap(({ type }) => type ?? []);
	const imports = [...new Set(typed.map(({ file }) => file))].sort().map((file) => {
		const names = typed.filter((one) => one.file === file).map(({ name }) => name);
		return `import type { ${names.sort().join(', ')} } from ${JSON.stringify(relative(dirname(TYPES), file))};`;
	});
	const body = order.map(({ name, code, type }) => `${type ? 'export ' : ''}const ${name} = ${code};`);
	return `// Written by \`npm run schemas\` from the types that answer-types.ts names: change those.
import { Type } from 'typebox';
${imports.join('\n')}
import { exact, mapOf, oneOf, oneOfNumbers, told } from './basics.ts';

${body.join('\n\n')}
`;
}
