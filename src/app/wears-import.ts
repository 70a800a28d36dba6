import { parse } from 'csv-parse/sync';
import { type WearImport, wearsFromRows } from '../wardrobe/season/wear-rows.ts';

/** Wears from a CSV table with the columns `day` and `garment`; a table that cannot be read is one problem, not an error. */
export function wearsFromCsv(
	text: string,
	garments: readonly { readonly id: string; readonly name: string }[],
	today: string,
): WearImport {
	try {
		const rows = parse(text, {
			columns: (heading: string[]) => heading.map((word) => word.trim().toLowerCase()),
			bom: true,
			skip_empty_lines: true,
		}) as Partial<Record<string, string>>[];
		return wearsFromRows(
			rows.map(({ day = '', garment = '' }) => ({ day, garment })),
			garments,
			today,
			2,
		);
	} catch (error) {
		return {
			wears: [],
			problems: [
				{
					line: 1,
					message: `Expected a CSV table with the columns day and garment; it cannot be read (${(error as Error).message}).`,
				},
			],
		};
	}
}
