/** An option as it is parsed and told: `value` names what stands after it; without, it is a switch. */
export type OptionWords = { readonly value?: string; readonly several?: true; readonly says: string };

/** What a command takes, does and shows; the whole command line is described here, and parsed by it. */
export type CommandWords = {
	/** Words after the command's name, as the user is told of them; '' = none. */
	readonly takes: string;
	readonly least: number;
	readonly most: number;
	readonly does: string;
	readonly options: Readonly<Record<string, OptionWords>>;
	readonly example: string;
	readonly exampleSays: string;
};

const HOME = { value: 'FOLDER', says: "the folder of your wardrobe; left out: the system's usual place" } as const;
const JSON_TOO = { says: 'the answer as JSON, for other programs' } as const;
const PORT = {
	value: 'N',
	says: "the number in the page's address, 4810 when left out; 0 = any that is free",
} as const;

export const COMMANDS = {
	serve: {
		takes: '',
		least: 0,
		most: 0,
		does: 'The page, on this machine; with --share also on devices of your network that give the code.',
		options: {
			home: HOME,
			port: PORT,
			share: { says: 'let paired devices of the local network in' },
			open: { says: 'open the page in the browser, too' },
		},
		example: 'dyelot serve --port 4900',
		exampleSays: 'opens the page at http://localhost:4900/',
	},
	demo: {
		takes: '',
		least: 0,
		most: 0,
		does: 'A made-up wardrobe and the report of its season. It is thrown away afterwards, unless --home names a folder.',
		options: { home: { value: 'FOLDER', says: 'keep the made-up wardrobe in this folder' }, json: JSON_TOO },
		example: 'dyelot demo --home demo-home',
		exampleSays: 'then "dyelot serve --home demo-home" shows it',
	},
	report: {
		takes: '',
		least: 0,
		most: 0,
		does: "A season's report: palette, fit of each garment, gaps, wishes.",
		options: {
			home: HOME,
			season: { value: 'NAME', says: 'name or id of the season; left out: the newest that is not archived' },
			json: JSON_TOO,
		},
		example: 'dyelot report --season "Spring 2027"',
		exampleSays: 'prints the same numbers and sentences as the page',
	},
	read: {
		takes: 'PHOTO...',
		least: 1,
		most: Number.POSITIVE_INFINITY,
		does: 'The colours of the clothes in each photo.',
		options: {
			shades: { value: 'N', says: 'also N plain shades of the same pixels, 1 to 64' },
			neutral: {
				value: 'X,Y[,L]',
				several: true,
				says: 'a white or grey spot in the picture, and its lightness (95 or "white" for white paper, 50 or "grey" for a grey card; left out: by how bright it is in the picture); point at a white and a grey where both lie there',
			},
			at: { value: 'X,Y', several: true, says: 'also the colour at this spot; may be given several times' },
			json: { says: 'one line of JSON a photo' },
		},
		example: 'dyelot read bed.jpg --neutral 320,200,white',
		exampleSays: 'reads the garment on the bed, with the sheet of paper at 320,200 for the white',
	},
	palette: {
		takes: 'PHOTO...',
		least: 1,
		most: Number.POSITIVE_INFINITY,
		does: 'A palette derived from inspiration pictures.',
		options: { json: JSON_TOO },
		example: 'dyelot palette board/*.jpg --json > palette.json',
		exampleSays: 'keeps the palette for "dyelot check"',
	},
	check: {
		takes: 'PHOTO',
		least: 1,
		most: 1,
		does: 'How far one piece lies within a palette.',
		options: {
			palette: { value: 'FILE', says: 'what "dyelot palette --json" printed' },
			kind: { value: 'KIND', says: 'what the piece is, where the photo does not tell' },
			json: JSON_TOO,
		},
		example: 'dyelot check coat.jpg --palette palette.json --kind coat',
		exampleSays: 'says fits, near, off or unsure, and why',
	},
	backup: {
		takes: 'FILE',
		least: 1,
		most: 1,
		does: 'Everything kept, in one new archive. While the page is open, take the archive there instead.',
		options: { home: HOME, json: JSON_TOO },
		example: 'dyelot backup wardrobe-2027-01.tar',
		exampleSays: 'writes photos, garments and decisions into that file',
	},
	restore: {
		takes: 'FILE',
		least: 1,
		most: 1,
		does: 'An archive into an empty folder, checked first.',
		options: { home: { value: 'FOLDER', says: 'an empty or new folder; needed' }, json: JSON_TOO },
		example: 'dyelot restore wardrobe-2027-01.tar --home new-home',
		exampleSays: 'then "dyelot serve --home new-home" shows it',
	},
} as const satisfies Record<string, CommandWords>;

export type CommandName = keyof typeof COMMANDS;

export const COMMAND_NAMES = Object.keys(COMMANDS) as readonly CommandName[];
