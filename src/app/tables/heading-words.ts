import type { GarmentColumn } from '../../store/export/garments-csv.ts';
import type { ColumnWords } from './read-table.ts';

/** What a heading may call each column of garments, in English and German; common practice, no source. */
export const GARMENT_WORDS: ColumnWords<GarmentColumn> = {
	id: [],
	name: ['garment', 'piece', 'item', 'title', 'kleidungsstück', 'stück', 'titel'],
	kind: ['type', 'category', 'art', 'kategorie'],
	place: ['where', 'location', 'ort'],
	price: ['cost', 'paid', 'price paid', 'preis'],
	boughtOn: ['bought', 'date bought', 'purchased', 'purchase date', 'gekauft', 'gekauft am', 'kaufdatum'],
	yearParts: ['seasons', 'season', 'parts of the year', 'time of year', 'jahreszeiten'],
	basic: ['year round', 'all year', 'ganzjährig'],
	loved: ['love', 'geliebt'],
	warmth: ['warm', 'wärme'],
	condition: ['state', 'zustand'],
	wayOut: ['leaves by', 'weg hinaus'],
	pattern: ['pattern by user', 'muster'],
	notes: ['note', 'comments', 'comment', 'remarks', 'notizen', 'bemerkungen'],
	care: ['care instructions', 'washing', 'wash', 'pflege'],
};

/** What a heading may call each column of wears; common practice, no source. */
export const WEAR_WORDS: ColumnWords<'day' | 'garment'> = {
	day: ['on', 'date', 'worn', 'worn on', 'tag', 'datum', 'getragen am'],
	garment: ['garment id', 'piece', 'item', 'name', 'kleidungsstück', 'stück'],
};
