/**
 * Addresses of the page itself, as the router knows them: the same file is sent for each, and the page then shows what the address names.
 * They hold nothing of the wardrobe; a device needs them to show the field for the code.
 */
export const PAGE_ADDRESSES = ['/', '/seasons', '/devices', '/season/:id/:place'] as const;

/** Files that the page is built from. */
export const PAGE_FILES = { folder: '/assets/*', mark: '/mark.svg' } as const;

/** A page or file may be read with or without its content. */
export const readable = (address: string): string[] => [`GET ${address}`, `HEAD ${address}`];

/**
 * Every route that a device may ask without being paired, by method and the exact name under which it is registered. All others are
 * refused, a route added tomorrow too: whoever wants it open must write it here.
 */
export const OPEN_ROUTES: ReadonlySet<string> = new Set([
	...[...PAGE_ADDRESSES, ...Object.values(PAGE_FILES)].flatMap(readable),
	'POST /api/pair',
]);

/** Routes that a paired device may not ask either: who comes in, and which wardrobe is kept, is decided on the computer that runs the program. */
export const ROUTES_OF_THIS_COMPUTER: ReadonlySet<string> = new Set([
	...readable('/api/devices'),
	'DELETE /api/devices',
	'DELETE /api/devices/:id',
	'POST /api/restore',
]);
