import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

/**
 * Files whose words are all in the catalogue. A file is added when its words have moved there; none may leave. The files of the page that are not listed still
 * hold English words of their own.
 */
const MOVED = [
	'web/src/language/language-choice.tsx',
	'web/src/pages/direction/add-colour.tsx',
	'web/src/pages/direction/colour-from-picture.tsx',
	'web/src/pages/direction/colour-grid.tsx',
	'web/src/pages/garments/filters.tsx',
	'web/src/pages/garments/garment-fields.tsx',
	'web/src/pages/garments/garment-list.tsx',
	'web/src/pages/garments/page.tsx',
	'web/src/parts/garment-judgement.tsx',
	'web/src/parts/loading.tsx',
	'web/src/parts/problem.tsx',
	'web/src/parts/verdict-mark.tsx',
	'web/src/shell/guard.tsx',
	'web/src/shell/season-page.tsx',
	'web/src/shell/station-path.tsx',
	'web/src/shell/station-words.ts',
	'web/src/shell/undo-bar.tsx',
] as const;

/** Attributes that are read by people. */
const SPOKEN = new Set([
	'label',
	'title',
	'alt',
	'aria-label',
	'placeholder',
	'hint',
	'name',
	'note',
	'purpose',
	'what',
]);
/** The program's own name, which no language translates. */
const NAMES = new Set(['Dyelot']);

const isSpoken = (text: string): boolean => /\p{L}{2}/u.test(text) && !NAMES.has(text.trim());

/** Words that stand in the file itself: text between tags, and texts given to attributes that people read. */
function wordsIn(path: string): string[] {
	const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
	const found: string[] = [];
	const visit = (node: ts.Node): void => {
		if (ts.isJsxText(node) && isSpoken(node.text)) found.push(node.text.trim());
		if (ts.isJsxAttribute(node) && SPOKEN.has(node.name.getText()) && node.initializer) {
			const value = ts.isJsxExpression(node.initializer) ? node.initializer.expression : node.initializer;
			if (value && (ts.isStringLiteral(value) || ts.isTemplateExpression(value)) && isSpoken(value.getText()))
				found.push(value.getText());
		}
		ts.forEachChild(node, visit);
	};
	visit(source);
	return found;
}

describe('words outside the catalogue', () => {
	it.each(MOVED)('%s has none', (path) => expect(wordsIn(path)).toEqual([]));

	it('are found where there are some, so that the check sees what it should', () => {
		expect(wordsIn('web/src/pages/seasons/start.tsx')).toContain('Look round first');
	});
});
