import type { Garment } from '../../wardrobe/words/garment.ts';
import { csvOf } from './csv.ts';

/** Columns of the garment table, the same for export and import. */
export const GARMENT_COLUMNS = [
	'name',
	'kind',
	'place',
	'price',
	'boughtOn',
	'yearParts',
	'basic',
	'loved',
	'condition',
	'notes',
	'care',
] as const;

/** The garments as a table; `id` and colours come along for reading, and are passed over by an import. */
export const garmentsCsv = (garments: readonly Garment[]): string =>
	csvOf(
		['id', ...GARMENT_COLUMNS, 'colours'],
		garments.map((one) => [
			one.id,
			one.name,
			one.kind,
			one.place,
			one.price,
			one.boughtOn,
			one.yearParts.join(' '),
			one.basic ? 'yes' : 'no',
			one.loved,
			one.condition,
			one.notes,
			one.care,
			one.swatches.map(({ name, share }) => `${name} ${Math.round(share * 100)} %`).join('; '),
		]),
	);
