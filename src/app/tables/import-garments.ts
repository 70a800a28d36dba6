import { newGarment } from '../../wardrobe/words/new-garment.ts';
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

/** Takes a table of garments in as one decision; a preview only says what that would do. */
export async function importGarments(
	services: Pick<Services, 'store' | 'events' | 'newId' | 'now'>,
	bytes: Uint8Array,
	{ preview }: { readonly preview: boolean },
): Promise<GarmentImportAnswer> {
	const { store, events, newId, now } = services;
	const found = await garmentsFromTable(bytes, await loadNamedDetails(store));
	const { added, changed } = found;
	if (!preview && added.length + changed.length > 0) {
		const at = now().toISOString();
		const put = [
			...added.map((told) => newGarment(told.id ?? newId(), told.name, at, told)),
			...changed.map(({ garment, changes }) => ({ ...garment, ...changes, changedAt: at })),
		];
		await store.garments.change({ put }, `Took in a table: ${added.length} garments added, ${changed.length} changed`);
		events.send({ event: 'changed', data: { what: 'garments' } });
	}
	return answerOf(found);
}
