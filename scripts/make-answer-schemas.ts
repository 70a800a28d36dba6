// Writes src/server/schemas/answers.ts: a TypeBox schema for every type that src/server/schemas/answer-types.ts names, and for every named type of
// ours that these are made of. Run by `npm run schemas`; tests/server/answer-schemas.test.ts says when it is due.
import { dirname, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('..', import.meta.url));
const TYPES = resolve(root, 'src/server/schemas/answer-types.ts');

type Named = { readonly name: string; readonly file: string; code: string };

const constOf = (typeName: string): string => typeName[0]!.toLowerCase() + typeName.slice(1);
const quoted = (text: string): string => JSON.stringify(text);
const isOfOurs = (file: string): boolean => file.startsWith(resolve(root, 'src'));

function openProgram(): ts.Program {
	const { config } = ts.readConfigFile(resolve(root, 'tsconfig.json'), ts.sys.readFile);
	const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
	return ts.createProgram([TYPES], { ...options, noEmit: true });
}

/** The source of `answers.ts`, not yet formatted. */
export function answerSchemas(): string {
	const program = openProgram();
	const checker = program.getTypeChecker();
	const done = new Map<string, Named>();
	/** In an order in which each stands before those made of it. */
	const order: Named[] = [];

	const commentOf = (symbol: ts.Symbol): string =>
		ts
			.displayPartsToString(symbol.getDocumentationComment(checker))
			.replace(/\{@link ([^}]*)\}/g, '$1')
			.replace(/\s+/g, ' ')
			.trim();

	/** Named types that are being written now, and how deep they stand within themselves. */
	const open = new Map<string, number>();

	/** A type that holds itself is written out once more; deeper down it is null. */
	function withinItself(name: string, type: ts.Type): string {
		const depth = open.get(name)!;
		if (depth > 1) return 'Type.Null()';
		open.set(name, depth + 1);
		const inner = shape(type);
		open.set(name, depth);
		return inner;
	}

	/** The code for a named type of ours that holds fields, or null for all others. */
	function named(type: ts.Type): string | null {
		const symbol = type.aliasSymbol;
		const declared = symbol?.declarations?.[0];
		const file = declared?.getSourceFile().fileName;
		if (
			!symbol ||
			!file ||
			!(ts.getCombinedModifierFlags(declared) & ts.ModifierFlags.Export) ||
			!isOfOurs(file) ||
			type.aliasTypeArguments?.length
		)
			return null;
		const parts = type.isUnion() ? type.types : [type];
		if (!parts.every((part) => part.flags & ts.TypeFlags.Object && !isList(part)) && !type.isIntersection())
			return null;
		const known = done.get(symbol.name);
		if (known) {
			if (known.file !== file) throw new Error(`Two types are called ${symbol.name}: in ${known.file} and ${file}.`);
			return open.has(symbol.name) ? withinItself(symbol.name, type) : constOf(symbol.name);
		}
		const entry: Named = { name: symbol.name, file, code: '' };
		done.set(symbol.name, entry);
		open.set(symbol.name, 1);
		const described = commentOf(symbol);
		const about = [`title: ${quoted(symbol.name)}`, ...(described ? [`description: ${quoted(described)}`] : [])];
		entry.code = `Type.Unsafe<types.${symbol.name}>({ ...${shape(type)}, ${about.join(', ')} })`;
		open.delete(symbol.name);
		order.push(entry);
		return constOf(symbol.name);
	}

	const isList = (type: ts.Type): boolean =>
		checker.isArrayType(type) || checker.isTupleType(type) || (type.isIntersection() && type.types.some(isList));

	function list(type: ts.Type): string {
		// A list with a mark that only the compiler sees.
		if (type.isIntersection()) return list(type.types.find(isList)!);
		const parts = checker.getTypeArguments(type as ts.TypeReference);
		if (!checker.isTupleType(type)) return `Type.Array(${code(parts[0]!)})`;
		const codes = [...new Set(parts.map(code))];
		const item = codes.length === 1 ? codes[0]! : `Type.Union([${codes.join(', ')}])`;
		return `Type.Array(${item}, { minItems: ${parts.length}, maxItems: ${parts.length} })`;
	}

	function fields(type: ts.Type): string {
		const lines = checker.getPropertiesOfType(type).map((property) => {
			const isOptional = (property.flags & ts.SymbolFlags.Optional) !== 0;
			const declared = property.valueDeclaration ?? property.declarations?.[0];
			const found = declared
				? checker.getTypeOfSymbolAtLocation(property, declared)
				: checker.getTypeOfSymbol(property);
			const told = commentOf(property);
			const value = code(found);
			const described = told ? `told(${value}, ${quoted(told)})` : value;
			return `${quoted(property.name)}: ${isOptional ? `Type.Optional(${described})` : described}`;
		});
		return `exact({ ${lines.join(', ')} })`;
	}

	function union(types: readonly ts.Type[]): string {
		const kept = types.filter((part) => !(part.flags & ts.TypeFlags.Undefined));
		const words = kept.filter((part) => part.isStringLiteral()).map((part) => quoted(part.value));
		const numbers = kept.filter((part) => part.isNumberLiteral()).map((part) => String(part.value));
		const truths = kept
			.filter((part) => part.flags & ts.TypeFlags.BooleanLiteral)
			.map((part) => checker.typeToString(part));
		const others = kept.filter(
			(part) => !part.isStringLiteral() && !part.isNumberLiteral() && !(part.flags & ts.TypeFlags.BooleanLiteral),
		);
		const codes = [
			...(words.length > 0 ? [`oneOf([${words.join(', ')}])`] : []),
			...(numbers.length > 0 ? [`oneOfNumbers([${numbers.join(', ')}])`] : []),
			...(truths.length === 2 ? ['Type.Boolean()'] : truths.map((truth) => `Type.Literal(${truth})`)),
			...others.map(code),
		];
		const different = [...new Set(codes)];
		return different.length === 1 ? different[0]! : `Type.Union([${different.join(', ')}])`;
	}

	function shape(type: ts.Type): string {
		if (type.isUnion()) return union(type.types);
		if (type.isStringLiteral() || type.isNumberLiteral() || type.flags & ts.TypeFlags.BooleanLiteral)
			return union([type]);
		if (type.flags & ts.TypeFlags.String) return 'Type.String()';
		if (type.flags & ts.TypeFlags.Number) return 'Type.Number()';
		if (type.flags & ts.TypeFlags.Boolean) return 'Type.Boolean()';
		if (type.flags & ts.TypeFlags.Null) return 'Type.Null()';
		if (type.flags & ts.TypeFlags.NonPrimitive) return 'Type.Object({})';
		if (isList(type)) return list(type);
		const index = checker.getIndexInfoOfType(type, ts.IndexKind.String);
		if (index) return `mapOf(${code(index.type)})`;
		if (type.flags & ts.TypeFlags.Object || type.isIntersection()) return fields(type);
		throw new Error(`Expected a type that JSON can hold; ${checker.typeToString(type)} is none.`);
	}

	const code = (type: ts.Type): string => named(type) ?? shape(type);

	const module = checker.getSymbolAtLocation(program.getSourceFile(TYPES)!)!;
	for (const exported of checker.getExportsOfModule(module)) {
		const target = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
		const type = checker.getDeclaredTypeOfSymbol(target);
		if (named(type) === null) throw new Error(`Expected a type with fields for ${exported.name}.`);
	}

	const imports = [...new Set(order.map(({ file }) => file))].sort().map((file) => {
		const names = order.filter((one) => one.file === file).map(({ name }) => name);
		const path = relative(dirname(TYPES), file);
		return `import type { ${names.sort().join(', ')} } from ${quoted(path)};`;
	});
	const body = order.map(({ name, code }) => `export const ${constOf(name)} = ${code.replace(`types.${name}`, name)};`);
	return `// Written by \`npm run schemas\` from the types that answer-types.ts names: change those.
import { Type } from 'typebox';
${imports.join('\n')}
import { exact, mapOf, oneOf, oneOfNumbers, told } from './basics.ts';

${body.join('\n\n')}
`;
}
