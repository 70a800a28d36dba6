import { relit } from '../reading/light/shown-light.ts';
import type { PhotoRecord } from '../store/store.ts';
import type { CameraKind, Light } from '../wardrobe/words/light.ts';
import {
	type Correction,
	type NeutralJudgement,
	type NeutralPoint,
	neutralsOf,
	type Swatch,
	type Trust,
} from '../wardrobe/words/reading.ts';
import { UserError } from './errors.ts';
import type { Services } from './services.ts';

type Lit = Pick<Services, 'store' | 'pool' | 'jobs' | 'events' | 'sharedLight' | 'followLight'>;

/** Whether two corrections ask the same of the photo's pixels: then they differ in what is put on top of a reading, no more. */
const readsAlike = (one: Correction, other: Correction): boolean =>
	JSON.stringify([neutralsOf(one), one.camera ?? null, one.mask ?? false]) ===
	JSON.stringify([neutralsOf(other), other.camera ?? null, other.mask ?? false]);

/**
 * Keeps a correction of the photo's light. Steps by hand and a shared light are put on the stored uncorrected colours at once; only what looks at
 * the photo's pixels anew (a neutral, a camera) has it read again.
 */
export async function correctLight(services: Lit, photo: PhotoRecord, correction: Correction): Promise<PhotoRecord> {
	const { store, jobs, events } = services;
	const mask = await store.photos.derived(photo.id, 'mask');
	const saved = await store.photos.saveCorrection(photo.id, correction, mask);
	const isRead = photo.status === 'read' && photo.reading !== null && readsAlike(photo.correction, correction);
	const next = isRead ? relit(photo.reading, correction, await services.sharedLight(saved)) : null;
	if (!next) {
		jobs.enqueue(photo.id);
		events.send({ event: 'photo', data: { id: photo.id, status: 'waiting' } });
		return saved;
	}
	await store.photos.saveReading(photo.id, next, {});
	events.send({ event: 'photo', data: { id: photo.id, status: 'read' } });
	await services.followLight(saved, next);
	return { ...saved, status: 'read', reading: next };
}

/** What a correction by neutrals would do, before anything is kept. */
export type LightTrial = {
	readonly neutrals: readonly NeutralJudgement[];
	readonly light: Light;
	readonly trust: Trust;
	readonly swatches: readonly Swatch[];
};

/** Tries neutrals out on the photo without keeping them. */
export async function triedLight(
	services: Pick<Services, 'store' | 'pool' | 'sharedLight'>,
	photo: PhotoRecord,
	neutrals: readonly NeutralPoint[],
	camera: CameraKind | undefined,
): Promise<LightTrial> {
	const { neutral: _older, ...kept } = photo.correction;
	const mask = kept.mask ? await services.store.photos.derived(photo.id, 'mask') : null;
	const source =
		(await services.store.photos.originalPath(photo.id)) ?? (await services.store.photos.original(photo.id));
	const result = await services.pool.read(source, {
		correction: { ...kept, neutrals, ...(camera ? { camera } : {}) },
		sharedLight: await services.sharedLight(photo),
		...(mask ? { mask } : {}),
	});
	if (!result.ok) throw new UserError('bad-request', result.message);
	const { light, trust, swatches } = result.reading;
	return { neutrals: result.reading.neutrals ?? [], light, trust, swatches };
}
