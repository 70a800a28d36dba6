import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** The functions of a source text that have more than `most` lines, from the first of the head to the closing bracket. */
export function longFunctionsIn(text: string, most: number): string[] {
	const file = ts.createSourceFile('source.tsx', text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
	const lineOf = (position: number) => file.getLineAndCharacterOfPosition(position).line;
	const found: string[] = [];
	const look = (node: ts.Node): void => {
		if (ts.isFunctionLike(node) && 'body' in node && node.body) {
			const first = lineOf(node.getStart(file));
			const lines = lineOf(node.end) - first + 1;
			if (lines > most) found.push(`line ${first + 1}: ${lines} lines`);
		}
		ts.forEachChild(node, look);
	};
	look(file);
	return found;
}

/** The same of every TypeScript file below a folder, each with its path. */
export const longFunctionsBelow = (folder: string, most: number): string[] =>
	readdirSync(folder, { recursive: true, encoding: 'utf8' })
		.filter((name) => /\.tsx?$/.test(name))
		.map((name) => join(folder, name))
		.flatMap((path) => longFunctionsIn(readFileSync(path, 'utf8'), most).map((found) => `${path}, ${found}`));
