import type { Garment, GarmentDetails } from '../../wardrobe/words/garment.ts';
import { csvOf } from './csv.ts';

/** What a cell of each column of the garment table holds; the same for export and import. */
export const GARMENT_CELLS = {
	id: ({ id }) => id,
	name: ({ name }) => name,
	kind: ({ kind }) => kind,
	place: ({ place }) => place,
	price: ({ price }) => price,
	boughtOn: ({ boughtOn }) => boughtOn,
	yearParts: ({ yearParts }) => yearParts.join(' '),
	basic: ({ basic }) => (basic ? 'yes' : 'no'),
	loved: ({ loved }) => loved,
	warmth: ({ warmth }) => warmth,
	condition: ({ condition }) => condition,
	wayOut: ({ wayOut }) => wayOut,
	pattern: ({ patternByUser }) => patternByUser,
	notes: ({ notes }) => notes,
	care: ({ care }) => care,
} as const satisfies Record<string, (garment: GarmentDetails) => string | number | null>;

export type GarmentColumn = keyof typeof GARMENT_CELLS;

export const GARMENT_COLUMNS = Object.keys(GARMENT_CELLS) as readonly GarmentColumn[];

/** The garments as a table; the colours come along for reading, and are passed over by an import. */
export const garmentsCsv = (garments: readonly Garment[]): string =>
	csvOf(
		[...GARMENT_COLUMNS, 'colours'],
		garments.map((one) => [
			...GARMENT_COLUMNS.map((column) => GARMENT_CELLS[column](one)),
			one.swatches.map(({ name, share }) => `${name} ${Math.round(share * 100)} %`).join('; '),
		]),
	);
