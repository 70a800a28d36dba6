import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked, HomeReads } from '../../store/store.ts';
import type { GarmentDetails } from '../../wardrobe/words/garment.ts';
import { newGarment } from '../../wardrobe/words/new-garment.ts';
import { LARGE } from '../beside/large-work.ts';
import { decide } from '../decide.ts';
import { loadNamedDetails } from '../load-garments.ts';
import type { Services } from '../services.ts';
import { type GarmentImport, garmentsFromTable } from './garments-from-table.ts';
import type { Problem, TableForm } from './read-table.ts';

/** What an import of garments does, as told to the user: how many of each, and the first of them by name. */
export type GarmentImportAnswer = TableForm & {
	readonly added: number;
	readonly addedNames: readonly string[];
	/** Of the added ones: how many have the name and kind of a garment that is there already. */
	readonly likeOthers: number;
	readonly changed: number;
	readonly changedNames: readonly { readonly name: string; readonly columns: readonly string[] }[];
	readonly unchanged: number;
	/** The first hundred; `problemCount` says how many there are. */
	readonly problems: readonly Problem[];
	readonly problemCount: number;
};

const NAMED = 8;

function answerOf({ form, added, likeOthers, changed, unchanged, problems }: GarmentImport): GarmentImportAnswer {
	return {
		...form,
		added: added.length,
		addedNames: added.slice(0, NAMED).map(({ name }) => name),
		likeOthers,
		changed: changed.length,
		changedNames: changed.slice(0, NAMED).map(({ garment, columns }) => ({ name: garment.name, columns })),
		unchanged,
		problems: problems.first,
		problemCount: problems.count,
	};
}

/** What is written for the found changes: on what each garment is now, since it may have been changed while the table was read. */
async function garmentsToPut(
	home: HomeReads,
	{ added, changed }: GarmentImport,
	{ newId, at }: { readonly newId: () => string; readonly at: string },
): Promise<GarmentDetails[]> {
	const put: GarmentDetails[] = [];
	const there = new Map((await home.garments.list()).map((garment) => [garment.id, garment]));
	for (const told of added) {
		const id = told.id === undefined || there.has(told.id) ? newId() : told.id;
		put.push(newGarment(id, told.name, at, { ...told, id }));
	}
	for (const { garment, changes } of changed) {
		const now = there.get(garment.id);
		if (now) put.push({ ...now, ...changes, changedAt: at });
	}
	return put;
}

/** Takes a table of garments in as one decision; a preview only says what that would do. */
export async function importGarments(
	services: Pick<Services, 'store' | 'events' | 'beside' | 'newId' | 'now'>,
	asked: Asked,
	bytes: Uint8Array,
	{ preview }: { readonly preview: boolean },
): Promise<GarmentImportAnswer> {
	if (services.beside && bytes.length > LARGE)
		return (await services.beside({ what: 'import-garments', asked, bytes, preview })) as GarmentImportAnswer;
	const found = await garmentsFromTable(bytes, await loadNamedDetails(services.store));
	const { added, changed } = found;
	if (preview || added.length + changed.length === 0) return answerOf(found);
	const told = { newId: services.newId, at: services.now().toISOString() };
	return decide(services, asked, async (home) => ({
		does: { garments: { put: await garmentsToPut(home, found, told) } },
		sentence: keptWords('tables.tookGarments', {
			added: keptWords('counts.garments', { count: added.length }),
			changed: changed.length,
		}),
		answer: async () => answerOf(found),
	}));
}
