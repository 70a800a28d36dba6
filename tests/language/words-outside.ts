import { readFileSync } from 'node:fs';
import ts from 'typescript';

/** Attributes whose one word alone may be read by people. */
const SPOKEN = new Set([
	'label',
	'title',
	'alt',
	'aria-label',
	'hint',
	'note',
	'purpose',
	'what',
	'heading',
	'text',
	'children',
	'aria-description',
	'aria-roledescription',
	'aria-valuetext',
	'placeholder',
]);
/** Properties of elements that people read or hear, where code sets them. */
const SET = new Set(['textContent', 'innerText', 'title', 'alt', 'placeholder', 'ariaLabel']);
/** What writes to the terminal. */
const TELLS = /^(console\.(log|error|warn)|process\.(stdout|stderr)\.write)$/;
/** Attributes that are read by browsers alone, whatever stands in them. */
const UNSPOKEN = new Set([
	'className',
	'class',
	'style',
	'd',
	'viewBox',
	'sizes',
	'accept',
	'autoComplete',
	'points',
	'transform',
]);
/** Exceptions that only a fault of ours can raise: their words are for those who mend it. */
const FAULTS = new Set(['TypeError', 'RangeError']);
/** The program's own name, which no language translates. */
const NAMES = new Set(['Dyelot']);

const hasLetters = (text: string): boolean => /\p{L}{2}/u.test(text) && !NAMES.has(text.trim());
/** Text of formats: queries, markup, headers of an answer, addresses, custom properties of CSS. */
const isOfAFormat = (text: string): boolean =>
	/^update \{\}\.\w+ set |^(SELECT|SET|select|listen|PRAGMA|BEGIN|begin|GET|HEAD|dyelot|npm start|-c) |^\w+\.\w+ as \w+$|^<|^[a-z]+\/[a-z]+;|^attachment;|^(public|private), |^\t--\{\}: \{\}; \/\*/.test(
		text,
	);
/** Two words with a blank between them, or a sentence's end: prose, wherever it stands. */
const isProse = (text: string): boolean =>
	/\p{L}{2,}[,;:)”’]? (?:[(“‘]?\p{L}|\{\})|\p{Ll}{2,}[.?!]$|\{\} \p{L}{2,}/u.test(text);

/** The text of a string or template, `{}` for each of its blanks; null for any other node. */
function textOf(node: ts.Node): string | null {
	if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
	if (ts.isTemplateExpression(node))
		return node.head.text + node.templateSpans.map(({ literal }) => `{}${literal.text}`).join('');
	return null;
}

/** Where words are meant for machines or for those who write the program: types, addresses, faults, names of keys, attributes that browsers read. */
function isForMachines(node: ts.Node): boolean {
	if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return true;
	if (ts.isNewExpression(node) && FAULTS.has(node.expression.getText())) return true;
	if (ts.isTaggedTemplateExpression(node) && node.tag.getText().startsWith('sql')) return true;
	if (ts.isCallExpression(node) && ['say', 'keptWords'].includes(node.expression.getText())) return true;
	if (ts.isCallExpression(node) && /\.set(IsolationLevel|AccessMode)$/.test(node.expression.getText()))
		return node.arguments.every((one) => ts.isStringLiteral(one));
	if (ts.isJsxAttribute(node) && UNSPOKEN.has(node.name.getText())) return true;
	return (
		ts.isPropertyAssignment(node) && /^['"]?(className|description|summary|pattern)['"]?$/.test(node.name.getText())
	);
}

/** What an expression may come out as: both sides of a choice, and what stands in brackets. */
function* outcomes(node: ts.Expression | undefined): Generator<ts.Expression> {
	if (!node) return;
	if (ts.isConditionalExpression(node)) {
		yield* outcomes(node.whenTrue);
		yield* outcomes(node.whenFalse);
	} else if (ts.isParenthesizedExpression(node)) yield* outcomes(node.expression);
	else if (ts.isBinaryExpression(node)) {
		yield* outcomes(node.left);
		yield* outcomes(node.right);
	} else yield node;
}

/** What code outside of markup gives people to read: `aria-label` of an element made by hand, its text, a line of the terminal. */
function givenBy(node: ts.Node): readonly ts.Expression[] {
	if (
		ts.isPropertyAssignment(node) &&
		/^['"]aria-/.test(node.name.getText()) &&
		SPOKEN.has(node.name.getText().slice(1, -1))
	)
		return [node.initializer];
	if (
		ts.isBinaryExpression(node) &&
		node.operatorToken.kind === ts.SyntaxKind.EqualsToken &&
		ts.isPropertyAccessExpression(node.left)
	)
		return SET.has(node.left.name.text) ? [node.right] : [];
	return ts.isCallExpression(node) && TELLS.test(node.expression.getText()) ? node.arguments : [];
}

/** Words in a spoken attribute, or between tags, even where they are one word. */
function spokenIn(node: ts.Node): ts.Node[] {
	if (ts.isJsxText(node)) return [node];
	const given = givenBy(node).flatMap((one) => [...outcomes(one)]);
	if (given.length > 0) return given.filter((outcome) => textOf(outcome) !== null);
	const value =
		ts.isJsxAttribute(node) && SPOKEN.has(node.name.getText())
			? node.initializer
			: ts.isJsxExpression(node) && !ts.isJsxAttribute(node.parent)
				? node
				: undefined;
	if (!value) return [];
	const expression = ts.isJsxExpression(value) ? value.expression : (value as ts.Expression);
	return [...outcomes(expression)].filter((outcome) => textOf(outcome) !== null);
}

/** A place in a source file where words stand that people read, and those words; `{}` for each blank. */
type Outside = { readonly node: ts.Node; readonly text: string };

/** Words of a parsed source that people read and that do not come from the catalogue, in the order they stand. */
export function outsideIn(source: ts.SourceFile): Outside[] {
	const found = new Map<ts.Node, string>();
	const visit = (node: ts.Node): void => {
		if (isForMachines(node)) return;
		for (const spoken of spokenIn(node)) {
			const text = ts.isJsxText(spoken) ? spoken.text : (textOf(spoken) ?? '');
			if (hasLetters(text.replaceAll('{}', ''))) found.set(spoken, text);
		}
		const text = textOf(node);
		if (text !== null && isProse(text) && !isOfAFormat(text)) found.set(node, text);
		ts.forEachChild(node, visit);
	};
	visit(source);
	return [...found]
		.map(([node, text]) => ({ node, text: text.trim().replaceAll(/\s+/g, ' ') }))
		.toSorted((a, b) => a.node.pos - b.node.pos);
}

/** The same of a file. */
export const wordsOutside = (path: string): string[] =>
	outsideIn(ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)).map(
		({ text }) => text,
	);
