import { say } from '../../language/speak.ts';
import { csvOf } from '../../store/export/csv.ts';
import { isDay } from '../../wardrobe/words/iso-day.ts';
import type { Wear } from '../../wardrobe/words/wear.ts';
import { WEAR_WORDS } from './heading-words.ts';
import { readTable, type TableForm } from './read-table.ts';
import { LineError, type Problems, takeRows } from './take-rows.ts';

type NamedGarment = { readonly id: string; readonly name: string };

/** What an import of wears would do. */
export type WearImport = {
	readonly form: TableForm;
	/** Wears that are not noted yet, each once. */
	readonly wears: readonly Wear[];
	/** Lines of wears that are noted already, or stand in the table twice. */
	readonly notedBefore: number;
	readonly problems: Problems;
};

const keyOf = ({ garmentId, on }: Wear): string => `${on} ${garmentId}`;

/** The id that a cell means: a garment's id, or its name where only one has it. */
function garmentFinder(garments: readonly NamedGarment[]): (text: string) => string {
	const ids = new Set(garments.map(({ id }) => id));
	const byName = new Map<string, string[]>();
	for (const { id, name } of garments) {
		const key = name.trim().toLowerCase();
		byName.set(key, [...(byName.get(key) ?? []), id]);
	}
	return (text) => {
		if (ids.has(text)) return text;
		const named = byName.get(text.toLowerCase()) ?? [];
		if (named.length === 1) return named[0]!;
		const received = text.slice(0, 60);
		throw new LineError(
			named.length > 1
				? say('tables.severalGarments', { received, count: named.length })
				: say('tables.noGarment', { received }),
		);
	};
}

function dayOf(text: string, today: string): string {
	if (!isDay(text)) throw new LineError(say('tables.noDay', { received: text.slice(0, 60) }));
	if (text > today) throw new LineError(say('tables.laterDay', { today, received: text }));
	return text;
}

/**
 * What a table of wears (CSV with the columns `day` and `garment`) would bring. `noted` = the wears that are there already; `today` an ISO date.
 * Nothing is stored.
 */
export async function wearsFromTable(
	bytes: Uint8Array,
	garments: readonly NamedGarment[],
	noted: readonly Wear[],
	today: string,
): Promise<WearImport> {
	const table = readTable(bytes, WEAR_WORDS, () => ['day', 'garment']);
	const idOf = garmentFinder(garments);
	const seen = new Set(noted.map(keyOf));
	const wears: Wear[] = [];
	let notedBefore = 0;
	const problems = await takeRows(table, ({ cells: { day = '', garment = '' } }) => {
		const wear: Wear = { garmentId: idOf(garment), on: dayOf(day, today) };
		if (seen.has(keyOf(wear))) notedBefore++;
		else wears.push(wear);
		seen.add(keyOf(wear));
	});
	return { form: table.form, wears, notedBefore, problems };
}

/** Wears as a table that {@link wearsFromTable} takes again; the name comes along for reading. */
export function wearsCsv(wears: readonly Wear[], garments: readonly NamedGarment[]): string {
	const names = new Map(garments.map(({ id, name }) => [id, name]));
	return csvOf(
		['day', 'garment', 'name'],
		wears.map(({ on, garmentId }) => [on, garmentId, names.get(garmentId) ?? null]),
	);
}
