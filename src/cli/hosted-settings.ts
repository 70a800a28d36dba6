import { mkdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { say } from '../language/speak.ts';
import type { ObjectStoreSettings } from '../store/object-requests.ts';
import type { PhotoFiles } from '../store/photo-files.ts';
import { UsageError } from './usage.ts';

/** Commands of a host. */
type HostedCommand = 'host' | 'work';

/** Flags as they were given, without their dashes. */
type Flags = Readonly<Record<string, string | boolean | readonly string[] | undefined>>;

type Environment = Readonly<Record<string, string | undefined>>;

/** Where everything of a host is kept. */
export type HostedSettings = {
	readonly connectionString: string;
	readonly filesOf: (homeId: string) => PhotoFiles;
	readonly photosReady: () => Promise<void>;
	readonly workFolder: string;
	readonly listenOn: string;
};

/** How long the object store may take to say that it is there. */
const READY_WITHIN_MS = 2000;

/** Reads settings from flags, then from the environment: `--photos-region` is `DYELOT_PHOTOS_REGION`. */
export function settingReader(flags: Flags, environment: Environment) {
	return (flag: string): string | undefined => {
		const given = flags[flag];
		if (typeof given === 'string') return given;
		const variable = environment[`DYELOT_${flag.replaceAll('-', '_').toUpperCase()}`]?.trim();
		return variable === '' ? undefined : variable;
	};
}

type Setting = ReturnType<typeof settingReader>;

function secretIn(file: string, flag: string, command: HostedCommand): string {
	try {
		return readFileSync(file, 'utf8').trim();
	} catch (error) {
		const { code } = error as NodeJS.ErrnoException;
		throw new UsageError(say('hostCommands.unreadableFile', { flag, file, code: code ?? '' }), command);
	}
}

function databaseOf(flags: Flags, setting: Setting, command: HostedCommand): string {
	const file = setting('database-file');
	const address = file === undefined ? setting('database') : secretIn(file, 'database-file', command);
	if (address === undefined) throw new UsageError(say('hostCommands.noDatabase'), command);
	if (!/^postgres(ql)?:\/\//.test(address) || !URL.canParse(address))
		throw new UsageError(say('hostCommands.otherDatabase'), command);
	if (flags.database === address && new URL(address).password !== '')
		throw new UsageError(say('hostCommands.secretOnLine'), command);
	return address;
}

function objectStoreOf(
	place: string,
	setting: Setting,
	environment: Environment,
	command: HostedCommand,
): ObjectStoreSettings {
	const bucket = /^s3:\/\/([a-z0-9][a-z0-9.-]{1,61}[a-z0-9])\/?$/.exec(place)?.[1];
	if (!bucket) throw new UsageError(say('hostCommands.noBucket', { place }), command);
	const file = setting('photos-secret-file');
	const secretAccessKey =
		file === undefined ? environment.DYELOT_PHOTOS_SECRET : secretIn(file, 'photos-secret-file', command);
	const accessKeyId = environment.DYELOT_PHOTOS_KEY;
	const endpoint = setting('photos-endpoint');
	if (!endpoint || !URL.canParse(endpoint) || !accessKeyId || !secretAccessKey)
		throw new UsageError(say('hostCommands.noKey'), command);
	return { endpoint, bucket, region: setting('photos-region') ?? 'us-east-1', accessKeyId, secretAccessKey };
}

/** Where photos lie; what only one of the two places needs is loaded for it alone. */
async function photosOf(setting: Setting, environment: Environment, command: HostedCommand) {
	const place = setting('photos');
	if (place === undefined) throw new UsageError(say('hostCommands.noPhotos'), command);
	if (place.startsWith('s3:')) {
		const settings = objectStoreOf(place, setting, environment, command);
		const { openObjectStore } = await import('../store/object-store.ts');
		const { objectPhotoFiles } = await import('../store/object-photo-files.ts');
		const objects = openObjectStore(settings);
		const quick = openObjectStore({ ...settings, timeoutMs: READY_WITHIN_MS });
		return {
			filesOf: (homeId: string) => objectPhotoFiles(objects, homeId),
			photosReady: async () => void (await quick.size('is-it-there')),
		};
	}
	const { directoryPhotoFiles } = await import('../store/directory-photo-files.ts');
	const { makeHomeFolder } = await import('../store/home-folder.ts');
	const folder = resolve(place);
	await makeHomeFolder(folder);
	return {
		filesOf: (homeId: string) => directoryPhotoFiles(join(folder, homeId)),
		photosReady: () => makeHomeFolder(folder),
	};
}

/** What a process of a host is told, by flags and environment. Throws `UsageError`. */
export async function hostedSettings(
	command: HostedCommand,
	flags: Flags,
	environment: Environment = process.env,
): Promise<HostedSettings> {
	const setting = settingReader(flags, environment);
	const connectionString = databaseOf(flags, setting, command);
	const photos = await photosOf(setting, environment, command);
	const workFolder = resolve(setting('work-folder') ?? join(tmpdir(), 'dyelot-work'));
	mkdirSync(workFolder, { recursive: true, mode: 0o700 });
	return { connectionString, ...photos, workFolder, listenOn: setting('listen') ?? '127.0.0.1' };
}
