import type { AnswerOf, BodyOf, Sent } from '../../../src/server/operations/contract.ts';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { call, pathTo } from './call.ts';
import { RequestProblem, request } from './request.ts';
import { newRequestKey, takeRequestKey } from './request-key.ts';

/** A thing that somebody changed since this page saw it. */
type StaleEntry = {
	readonly id: string;
	readonly fields: readonly string[];
	readonly now: { readonly version?: number };
};

type Seen = { readonly version?: number };

/** Operations that change fields of one thing, and those that take one away. */
type ChangeId =
	| 'changeSeason'
	| 'changeGarment'
	| 'changeWish'
	| 'changeCandidate'
	| 'changeMaker'
	| 'changeInspiration'
	| 'chooseLineUp';
type RemoveId =
	| 'removeSeason'
	| 'removeGarment'
	| 'removeWish'
	| 'removeCandidate'
	| 'removeMaker'
	| 'removeInspiration';

const pathOf = (operation: ChangeId | RemoveId, id: string): string => pathTo(operation, { params: { id } });

/** Versions that this page made itself, by address: newer than those it has fetched so far. */
const own = new Map<string, number>();

const newest = (path: string, { version }: Seen): number | undefined =>
	version === undefined ? undefined : Math.max(version, own.get(path) ?? 0);

const staleThings = (error: unknown): readonly StaleEntry[] =>
	error instanceof RequestProblem && error.code === 'stale' ? (error.details.changed as readonly StaleEntry[]) : [];

const underWay = new Map<string, Promise<unknown>>();

/** One change of a thing after the other, so that each knows the version that the one before made. */
export function afterOthers<T>(path: string, act: () => Promise<T>): Promise<T> {
	const before = underWay.get(path) ?? Promise.resolve();
	const mine = before.then(act, act);
	underWay.set(path, mine);
	void mine.catch(() => {}).then(() => underWay.get(path) === mine && underWay.delete(path));
	return mine;
}

/** Tries of one change: each time somebody else changed something else between. */
const TRIES = 4;

async function sendChange<Id extends ChangeId>(
	operation: Id,
	id: string,
	seen: Seen,
	changes: object,
	key: string,
): Promise<AnswerOf<Id>> {
	const path = pathOf(operation, id);
	let version = newest(path, seen);
	for (let tries = 1; ; tries++) {
		try {
			const body = version === undefined ? changes : { ...changes, version };
			const changed = await request<AnswerOf<Id> & Seen>('PATCH', path, body, {
				key: tries === 1 ? key : newRequestKey(),
			});
			if (changed.version !== undefined) own.set(path, changed.version);
			return changed;
		} catch (error) {
			const [stale] = staleThings(error);
			const isTheSameField = stale?.fields.some((field) => field in changes) ?? true;
			if (!stale || isTheSameField || tries === TRIES || stale.now.version === undefined) throw error;
			version = stale.now.version;
		}
	}
}

/**
 * Changes fields of a thing as it was seen, and no others. Where another window changed other fields meanwhile, both changes stand; where it
 * changed the same ones, the program's refusal is thrown and nothing is overwritten.
 */
export function changeThing<Id extends ChangeId>(
	operation: Id,
	id: string,
	seen: Seen,
	changes: Sent<Omit<BodyOf<Id>, 'version'>>,
): Promise<AnswerOf<Id>> {
	const key = takeRequestKey();
	return afterOthers(pathOf(operation, id), () => sendChange(operation, id, seen, changes, key));
}

/** Takes a thing away, unless another window changed it since it was seen. */
export const removeThing = (operation: RemoveId, id: string, seen: Seen): Promise<unknown> => {
	const version = newest(pathOf(operation, id), seen);
	return call(operation, { params: { id }, query: versionQuery(version) });
};

/** Changes a season's palette as it was seen, unless another window changed it meanwhile; a colour that is added can overwrite nothing, and is sent without. */
export function changePalette(
	seasonId: string,
	seen: Seen,
	send: (version: number | undefined) => Promise<AnswerOf<'editPalette'>>,
): Promise<AnswerOf<'editPalette'>> {
	const path = pathTo('getPalette', { params: { id: seasonId } });
	return afterOthers(path, async () => {
		const changed = await send(newest(path, seen));
		if (changed.palette.version !== undefined) own.set(path, changed.palette.version);
		return changed;
	});
}

/** The version as a query has it. */
export const versionQuery = (version: number | undefined) => (version === undefined ? {} : { version });

/** Corrects a photo as it was seen, unless another window corrected it meanwhile. `send` gets the version that this page knows. */
export function correctPhoto(
	photo: PhotoRecord,
	send: (version: number) => Promise<PhotoRecord>,
): Promise<PhotoRecord> {
	const path = pathTo('getPhoto', { params: { id: photo.id } });
	return afterOthers(path, async () => {
		const corrected = await send(newest(path, photo) ?? photo.version);
		own.set(path, corrected.version);
		return corrected;
	});
}

/** Versions of several garments as they were seen, for changes of all of them at once. */
export const versionsSeen = (garments: readonly (Seen & { readonly id: string })[]): Record<string, number> =>
	Object.fromEntries(
		garments.flatMap((garment) => {
			const version = newest(pathOf('changeGarment', garment.id), garment);
			return version === undefined ? [] : [[garment.id, version] as const];
		}),
	);

/** Notes the versions that this page made of garments. */
export function noteOwnVersions(versions: Readonly<Record<string, number>>): void {
	for (const [id, version] of Object.entries(versions)) own.set(pathOf('changeGarment', id), version);
}
