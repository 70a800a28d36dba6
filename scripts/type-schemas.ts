// TypeBox code for types, read through the TypeScript compiler; for make-answer-schemas.ts.
import ts from 'typescript';

/** One constant: of a named type of ours, or of a shape or a list of words that stand in several places. */
type Written = {
	readonly name: string;
	code: string;
	/** The type that it is the schema of. */
	readonly type?: { readonly name: string; readonly file: string };
};

/** What is known while schemas are written. */
export type Writer = {
	readonly checker: ts.TypeChecker;
	readonly isOfOurs: (file: string) => boolean;
	/** Constants by the name of their type, or their own; and in an order in which each stands before those made of it. */
	readonly done: Map<string, Written>;
	readonly order: Written[];
	/** Shapes that are written once, with the names of their constants; and every shape met, with a name for it. */
	readonly shared: ReadonlyMap<string, string>;
	readonly met: Map<string, { readonly name: string; times: number }>;
	/** Fields of named types that others are made of and add to, with names for them; and the fields of each type, once they were written out. */
	readonly bases: Map<string, string>;
	readonly ownFields: Map<ts.Type, readonly string[]>;
	/** Names of exported lists of words, by the words. */
	readonly wordLists: ReadonlyMap<string, string>;
	/** The named type that is being written. */
	open: string | null;
};

export const constOf = (typeName: string): string => typeName[0]!.toLowerCase() + typeName.slice(1);
const quoted = (text: string): string => JSON.stringify(text);
const capital = (text: string): string => text[0]!.toUpperCase() + text.slice(1);

/** Lists of words shorter than this are written where they stand. */
const WORDS_FROM = 4;

const wordsOf = (types: readonly ts.Type[]): string[] =>
	types.filter((part) => part.isStringLiteral()).map((part) => quoted(part.value));
const wordKey = (words: readonly string[]): string => [...words].sort().join(' ');

/** The exported types of ours that are nothing but a list of words. */
function wordListsOf(program: ts.Program, isOfOurs: Writer['isOfOurs']): Map<string, string> {
	const checker = program.getTypeChecker();
	const found = new Map<string, string>();
	for (const file of program.getSourceFiles()) {
		const module = isOfOurs(file.fileName) ? checker.getSymbolAtLocation(file) : undefined;
		for (const symbol of module ? checker.getExportsOfModule(module) : []) {
			if (!(symbol.flags & ts.SymbolFlags.TypeAlias)) continue;
			const type = checker.getDeclaredTypeOfSymbol(symbol);
			const words = type.isUnion() ? wordsOf(type.types) : [];
			if (type.isUnion() && words.length >= WORDS_FROM && words.length === type.types.length)
				if (!found.has(wordKey(words))) found.set(wordKey(words), `${constOf(symbol.name)}Words`);
		}
	}
	return found;
}

/** A writer that has written nothing yet. `sources`: the folder of what is ours. */
export function writerOf(program: ts.Program, sources: string, shared: Writer['shared']): Writer {
	const isOfOurs = (file: string) => file.startsWith(sources);
	return {
		checker: program.getTypeChecker(),
		isOfOurs,
		done: new Map(),
		order: [],
		shared,
		met: new Map(),
		bases: new Map(),
		ownFields: new Map(),
		wordLists: wordListsOf(program, isOfOurs),
		open: null,
	};
}

function write(writer: Writer, key: string, written: Written): string {
	if (!writer.done.has(key)) {
		writer.done.set(key, written);
		writer.order.push(written);
	}
	return written.name;
}

/** A shape by its code: as it is, or the name of the constant where it is written once. `place` names it after where it stands first. */
function shapeOf(writer: Writer, code: string, place: string): string {
	const met = writer.met.get(code) ?? { name: place, times: 0 };
	writer.met.set(code, met);
	met.times++;
	const name = writer.shared.get(code);
	return name === undefined ? code : write(writer, name, { name, code });
}

const commentOf = ({ checker }: Writer, symbol: ts.Symbol): string =>
	ts
		.displayPartsToString(symbol.getDocumentationComment(checker))
		.replace(/\{@link ([^}]*)\}/g, '$1')
		.replace(/\s+/g, ' ')
		.trim();

const isList = (writer: Writer, type: ts.Type): boolean =>
	writer.checker.isArrayType(type) ||
	writer.checker.isTupleType(type) ||
	(type.isIntersection() && type.types.some((part) => isList(writer, part)));

/** The name and file of a type of ours that holds fields, or null for all others. */
function namedType(writer: Writer, type: ts.Type): { symbol: ts.Symbol; file: string } | null {
	const symbol = type.aliasSymbol;
	const declared = symbol?.declarations?.[0];
	if (!symbol || !declared || type.aliasTypeArguments?.length) return null;
	const file = declared.getSourceFile().fileName;
	if (!(ts.getCombinedModifierFlags(declared) & ts.ModifierFlags.Export) || !writer.isOfOurs(file)) return null;
	const parts = type.isUnion() ? type.types : [type];
	const holdsFields =
		type.isIntersection() || parts.every((part) => part.flags & ts.TypeFlags.Object && !isList(writer, part));
	return holdsFields ? { symbol, file } : null;
}

/** The name of the constant for a named type of ours that holds fields, written where it was not yet; null for all others. */
export function namedCode(writer: Writer, type: ts.Type): string | null {
	const found = namedType(writer, type);
	if (!found) return null;
	const { symbol, file } = found;
	const known = writer.done.get(symbol.name);
	if (known?.type?.file === file) return known.name;
	if (known) throw new Error(`Two types are called ${symbol.name}: in ${known.type?.file} and ${file}.`);
	const outer = writer.open;
	writer.open = symbol.name;
	const described = commentOf(writer, symbol);
	const about = [`title: ${quoted(symbol.name)}`, ...(described ? [`description: ${quoted(described)}`] : [])];
	const own = shape(writer, type, constOf(symbol.name));
	writer.open = outer;
	const code = `Type.Unsafe<${symbol.name}>({ ...${own}, ${about.join(', ')} })`;
	return write(writer, symbol.name, { name: constOf(symbol.name), code, type: { name: symbol.name, file } });
}

function list(writer: Writer, type: ts.Type, place: string): string {
	// A list with a mark that only the compiler sees.
	if (type.isIntersection()) return list(writer, type.types.find((part) => isList(writer, part))!, place);
	const parts = writer.checker.getTypeArguments(type as ts.TypeReference);
	if (!writer.checker.isTupleType(type)) return `Type.Array(${codeOf(writer, parts[0]!, place)})`;
	const codes = [...new Set(parts.map((part) => codeOf(writer, part, place)))];
	const item = codes.length === 1 ? codes[0]! : `Type.Union([${codes.join(', ')}])`;
	return `Type.Array(${item}, { minItems: ${parts.length}, maxItems: ${parts.length} })`;
}

/** One field of an object: its name and its code. `value` stands for what is written of its type. */
function field(writer: Writer, property: ts.Symbol, value: string): string {
	const told = commentOf(writer, property);
	const described = told ? `told(${value}, ${quoted(told)})` : value;
	const isOptional = (property.flags & ts.SymbolFlags.Optional) !== 0;
	return `${quoted(property.name)}: ${isOptional ? `Type.Optional(${described})` : described}`;
}

function typeOf({ checker }: Writer, property: ts.Symbol): ts.Type {
	const declared = property.valueDeclaration ?? property.declarations?.[0];
	return declared ? checker.getTypeOfSymbolAtLocation(property, declared) : checker.getTypeOfSymbol(property);
}

/** Whether the type of a field is, but for null, the very type that is being written. */
const isItself = (writer: Writer, type: ts.Type): boolean =>
	writer.open !== null && writer.checker.getNonNullableType(type).aliasSymbol?.name === writer.open;

/** The codes of the fields of a type but those within `left`. */
function fieldCodes(writer: Writer, type: ts.Type, place: string, left: ReadonlySet<string>): string[] {
	return writer.checker
		.getPropertiesOfType(type)
		.filter(({ name }) => !left.has(name))
		.map((property) =>
			field(writer, property, codeOf(writer, typeOf(writer, property), `${place}${capital(property.name)}`)),
		);
}

/** The fields of a type as one code, worked out once. */
function fieldsCode(writer: Writer, type: ts.Type, place: string): string {
	const codes = writer.ownFields.get(type) ?? fieldCodes(writer, type, place, new Set());
	writer.ownFields.set(type, codes);
	return `{ ${codes.join(', ')} }`;
}

/** The named types that an intersection adds to without changing a field of theirs. */
function basesOf(writer: Writer, type: ts.Type): { part: ts.Type; symbol: ts.Symbol }[] {
	const { checker } = writer;
	const typeIn = (of: ts.Type, { name }: ts.Symbol) => checker.getTypeOfSymbol(checker.getPropertyOfType(of, name)!);
	return (type.isIntersection() ? type.types : []).flatMap((part) => {
		const symbol = namedType(writer, part)?.symbol;
		const isKept = checker.getPropertiesOfType(part).every((own) => typeIn(type, own) === typeIn(part, own));
		return symbol && isKept ? [{ part, symbol }] : [];
	});
}

/** The fields of the types that this one adds to, by the names of their constants, where these are written once. */
function inherited(writer: Writer, type: ts.Type): { spreads: string[]; names: Set<string> } {
	const spreads: string[] = [];
	const names = new Set<string>();
	for (const { part, symbol } of basesOf(writer, type)) {
		const code = fieldsCode(writer, part, constOf(symbol.name));
		writer.bases.set(code, `${constOf(symbol.name)}Fields`);
		const name = writer.shared.get(code);
		if (name === undefined) continue;
		spreads.push(`...${write(writer, name, { name, code })}`);
		for (const own of writer.checker.getPropertiesOfType(part)) names.add(own.name);
	}
	return { spreads, names };
}

function fields(writer: Writer, type: ts.Type, place: string): string {
	const within = writer.checker
		.getPropertiesOfType(type)
		.filter((property) => isItself(writer, typeOf(writer, property)));
	if (within.length > 0) return fieldsWithItself(writer, type, place, within);
	const { spreads, names } = inherited(writer, type);
	if (spreads.length > 0) {
		const all = [...spreads, ...fieldCodes(writer, type, place, names)];
		return shapeOf(writer, `exact({ ${all.join(', ')} })`, place);
	}
	const code = fieldsCode(writer, type, place);
	const name = writer.shared.get(code);
	return shapeOf(writer, `exact(${name === undefined ? code : write(writer, name, { name, code })})`, place);
}

/** A type that holds itself is written out once more; deeper down it is null. */
function fieldsWithItself(writer: Writer, type: ts.Type, place: string, within: readonly ts.Symbol[]): string {
	const lines = fieldCodes(writer, type, place, new Set(within.map(({ name }) => name)));
	const own = write(writer, `${place}Own`, { name: `${place}Own`, code: `{ ${lines.join(', ')} }` });
	const exactly = (inner: string) =>
		`exact({ ...${own}, ${within.map((property) => field(writer, property, inner)).join(', ')} })`;
	return exactly(`Type.Union([Type.Null(), ${exactly('Type.Null()')}])`);
}

/** A list of words: by name where it is long and a type of ours. Sorted: the compiler gives them in the order in which it came across them anywhere. */
function oneOfWords(writer: Writer, words: readonly string[]): string {
	const name = writer.wordLists.get(wordKey(words));
	const code = `oneOf([${words.toSorted().join(', ')}])`;
	return name === undefined ? code : write(writer, name, { name, code });
}

function union(writer: Writer, types: readonly ts.Type[], place: string): string {
	const kept = types.filter((part) => !(part.flags & ts.TypeFlags.Undefined));
	const words = wordsOf(kept);
	const numbers = kept.filter((part) => part.isNumberLiteral()).map((part) => String(part.value));
	const truths = kept
		.filter((part) => part.flags & ts.TypeFlags.BooleanLiteral)
		.map((part) => writer.checker.typeToString(part));
	const others = kept.filter(
		(part) => !part.isStringLiteral() && !part.isNumberLiteral() && !(part.flags & ts.TypeFlags.BooleanLiteral),
	);
	const codes = [
		...(words.length > 0 ? [oneOfWords(writer, words)] : []),
		...(numbers.length > 0 ? [`oneOfNumbers([${numbers.join(', ')}])`] : []),
		...(truths.length === 2 ? ['Type.Boolean()'] : truths.map((truth) => `Type.Literal(${truth})`)),
		...others.map((part) => codeOf(writer, part, place)),
	];
	const different = [...new Set(codes)];
	return different.length === 1 ? different[0]! : `Type.Union([${different.join(', ')}])`;
}

function shape(writer: Writer, type: ts.Type, place: string): string {
	if (type.isUnion()) return union(writer, type.types, place);
	if (type.isStringLiteral() || type.isNumberLiteral() || type.flags & ts.TypeFlags.BooleanLiteral)
		return union(writer, [type], place);
	if (type.flags & ts.TypeFlags.String) return 'Type.String()';
	if (type.flags & ts.TypeFlags.Number) return 'Type.Number()';
	if (type.flags & ts.TypeFlags.Boolean) return 'Type.Boolean()';
	if (type.flags & ts.TypeFlags.Null) return 'Type.Null()';
	if (type.flags & ts.TypeFlags.NonPrimitive) return 'Type.Object({})';
	if (isList(writer, type)) return list(writer, type, place);
	const index = writer.checker.getIndexInfoOfType(type, ts.IndexKind.String);
	if (index) return `mapOf(${codeOf(writer, index.type, place)})`;
	if (type.flags & ts.TypeFlags.Object || type.isIntersection()) return fields(writer, type, place);
	throw new Error(`Expected a type that JSON can hold; ${writer.checker.typeToString(type)} is none.`);
}

/** The code for any type. `place` names its shape where that is written once: the type and field that it stands at first. */
export const codeOf = (writer: Writer, type: ts.Type, place: string): string =>
	namedCode(writer, type) ?? shape(writer, type, place);
