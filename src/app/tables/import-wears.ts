import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import { LARGE } from '../beside/large-work.ts';
import { decide } from '../decide.ts';
import { type Services, todayOf } from '../services.ts';
import type { Problem, TableForm } from './read-table.ts';
import { wearsFromTable } from './wears-from-table.ts';

/** What an import of wears does, as told to the user. */
export type WearImportAnswer = TableForm & {
	readonly added: number;
	/** Lines of wears that are noted already. */
	readonly notedBefore: number;
	/** The first hundred; `problemCount` says how many there are. */
	readonly problems: readonly Problem[];
	readonly problemCount: number;
};

/** Takes a table of wears in as one decision; a preview only says what that would do. */
export async function importWears(
	services: Pick<Services, 'store' | 'events' | 'beside' | 'now'>,
	asked: Asked,
	bytes: Uint8Array,
	{ preview }: { readonly preview: boolean },
): Promise<WearImportAnswer> {
	if (services.beside && bytes.length > LARGE)
		return (await services.beside({ what: 'import-wears', asked, bytes, preview })) as WearImportAnswer;
	const { store } = services;
	const [garments, noted] = await Promise.all([store.garments.list(), store.wears()]);
	const { form, wears, notedBefore, problems } = await wearsFromTable(bytes, garments, noted, todayOf(services));
	const answer = { ...form, added: wears.length, notedBefore, problems: problems.first, problemCount: problems.count };
	if (preview || wears.length === 0) return answer;
	return decide(services, asked, async () => ({
		does: { wears: { put: wears } },
		sentence: keptWords('tables.tookWears', { count: wears.length }),
		answer: async () => answer,
	}));
}
