import type { Wear } from '../words/wear.ts';

/** What an import of wears brings: the wears understood, and each line that was not, with the reason. */
export type WearImport = {
	readonly wears: readonly Wear[];
	readonly problems: readonly { readonly line: number; readonly message: string }[];
};

/** A day as ISO 8601 writes it, that exists in the calendar. */
const isDay = (text: string): boolean =>
	/^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text)) && new Date(text).toISOString().startsWith(text);

/**
 * Wears from rows of a table with a day and a garment (its id, or its name where only one has it). `rows` are the lines after the heading;
 * `firstLine` is the line number of the first, for the messages.
 */
export function wearsFromRows(
	rows: readonly { readonly day: string; readonly garment: string }[],
	garments: readonly { readonly id: string; readonly name: string }[],
	today: string,
	firstLine: number,
): WearImport {
	const ids = new Set(garments.map(({ id }) => id));
	const byName = new Map<string, string[]>();
	for (const { id, name } of garments) byName.set(name.toLowerCase(), [...(byName.get(name.toLowerCase()) ?? []), id]);
	const wears: Wear[] = [];
	const problems: { line: number; message: string }[] = [];
	for (const [index, { day, garment }] of rows.entries()) {
		const line = firstLine + index;
		const named = byName.get(garment.trim().toLowerCase()) ?? [];
		const id = ids.has(garment.trim()) ? garment.trim() : named.length === 1 ? named[0] : undefined;
		if (!isDay(day.trim()))
			problems.push({ line, message: `Expected a day like 2026-03-14 for a wear; received "${day}".` });
		else if (day.trim() > today)
			problems.push({ line, message: `Expected a day up to today (${today}) for a wear; received ${day}.` });
		else if (!id) {
			const found = named.length > 1 ? `${named.length} garments have it` : 'none has it';
			problems.push({
				line,
				message: `Expected the name of one garment for a wear; received "${garment}", and ${found}.`,
			});
		} else wears.push({ garmentId: id, on: day.trim() });
	}
	return { wears, problems };
}
