import type { SentenceKey } from '../language/speak.ts';

/** An option as it is parsed and told: `value` names what stands after it; without, it is a switch. */
export type OptionWords = { readonly value?: string; readonly several?: true; readonly says: SentenceKey };

/** What a command takes, does and shows; the whole command line is described here, and parsed by it. */
export type CommandWords = {
	/** Words after the command's name, as the user is told of them; '' = none. */
	readonly takes: string;
	readonly least: number;
	readonly most: number;
	readonly does: SentenceKey;
	readonly options: Readonly<Record<string, OptionWords>>;
	readonly example: string;
	readonly exampleSays: SentenceKey;
};

const HOME = { value: 'FOLDER', says: 'commands.home' } as const;
const JSON_TOO = { says: 'commands.json' } as const;
const PORT = {
	value: 'N',
	says: 'commands.port',
} as const;

const PORT_OF_HOST = { value: 'N', says: 'hostCommands.port' } as const;

/** What every process of a host is told; a variable of the environment stands for each, and secrets have no flag. */
const HOSTED_OPTIONS = {
	database: {
		value: 'URL',
		says: 'hostCommands.database',
	},
	'database-file': { value: 'FILE', says: 'hostCommands.databaseFile' },
	photos: {
		value: 'PLACE',
		says: 'hostCommands.photos',
	},
	'photos-endpoint': {
		value: 'URL',
		says: 'hostCommands.endpoint',
	},
	'photos-region': { value: 'NAME', says: 'hostCommands.region' },
	'photos-secret-file': {
		value: 'FILE',
		says: 'hostCommands.secretFile',
	},
	'work-folder': {
		value: 'FOLDER',
		says: 'hostCommands.workFolder',
	},
	listen: {
		value: 'ADDRESS',
		says: 'hostCommands.listen',
	},
} as const;

export const COMMANDS = {
	serve: {
		takes: '',
		least: 0,
		most: 0,
		does: 'commands.serve',
		options: {
			home: HOME,
			port: PORT,
			share: { says: 'commands.share' },
			open: { says: 'commands.open' },
		},
		example: 'dyelot serve --port 4900',
		exampleSays: 'commands.serveShows',
	},
	host: {
		takes: '',
		least: 0,
		most: 0,
		does: 'hostCommands.host',
		options: {
			...HOSTED_OPTIONS,
			port: PORT_OF_HOST,
			address: {
				value: 'URL',
				says: 'hostCommands.address',
			},
			'behind-proxy': {
				value: 'ADDRESS',
				several: true,
				says: 'hostCommands.proxy',
			},
		},
		example: 'dyelot host --database postgres://dyelot@localhost/dyelot --photos /srv/dyelot',
		exampleSays: 'hostCommands.hostExample',
	},
	work: {
		takes: '',
		least: 0,
		most: 0,
		does: 'hostCommands.work',
		options: {
			...HOSTED_OPTIONS,
			port: { value: 'N', says: 'hostCommands.health' },
			'at-once': { value: 'N', says: 'hostCommands.atOnce' },
		},
		example: 'dyelot work --database postgres://dyelot@localhost/dyelot --photos /srv/dyelot',
		exampleSays: 'hostCommands.workExample',
	},
	demo: {
		takes: '',
		least: 0,
		most: 0,
		does: 'commands.demo',
		options: { home: { value: 'FOLDER', says: 'commands.demoHome' }, json: JSON_TOO },
		example: 'dyelot demo --home demo-home',
		exampleSays: 'commands.demoShows',
	},
	report: {
		takes: '',
		least: 0,
		most: 0,
		does: 'commands.report',
		options: {
			home: HOME,
			season: { value: 'NAME', says: 'commands.season' },
			json: JSON_TOO,
		},
		example: 'dyelot report --season "Spring 2027"',
		exampleSays: 'commands.reportShows',
	},
	read: {
		takes: 'PHOTO...',
		least: 1,
		most: Number.POSITIVE_INFINITY,
		does: 'commands.read',
		options: {
			shades: { value: 'N', says: 'commands.shades' },
			neutral: {
				value: 'X,Y[,L]',
				several: true,
				says: 'commands.neutral',
			},
			at: { value: 'X,Y', several: true, says: 'commands.at' },
			json: { says: 'commands.readJson' },
		},
		example: 'dyelot read bed.jpg --neutral 320,200,white',
		exampleSays: 'commands.readShows',
	},
	palette: {
		takes: 'PHOTO...',
		least: 1,
		most: Number.POSITIVE_INFINITY,
		does: 'commands.palette',
		options: { json: JSON_TOO },
		example: 'dyelot palette board/*.jpg --json > palette.json',
		exampleSays: 'commands.paletteShows',
	},
	check: {
		takes: 'PHOTO',
		least: 1,
		most: 1,
		does: 'commands.check',
		options: {
			palette: { value: 'FILE', says: 'commands.paletteFile' },
			kind: { value: 'KIND', says: 'commands.kind' },
			json: JSON_TOO,
		},
		example: 'dyelot check coat.jpg --palette palette.json --kind coat',
		exampleSays: 'commands.checkShows',
	},
	backup: {
		takes: 'FILE',
		least: 1,
		most: 1,
		does: 'commands.backup',
		options: { home: HOME, json: JSON_TOO },
		example: 'dyelot backup wardrobe-2027-01.tar',
		exampleSays: 'commands.backupShows',
	},
	restore: {
		takes: 'FILE',
		least: 1,
		most: 1,
		does: 'commands.restore',
		options: { home: { value: 'FOLDER', says: 'commands.restoreHome' }, json: JSON_TOO },
		example: 'dyelot restore wardrobe-2027-01.tar --home new-home',
		exampleSays: 'commands.restoreShows',
	},
} as const satisfies Record<string, CommandWords>;

export type CommandName = keyof typeof COMMANDS;

export const COMMAND_NAMES = Object.keys(COMMANDS) as readonly CommandName[];
