import { keptWords } from '../../language/kept-sentence.ts';
import { inLanguage, say } from '../../language/speak.ts';
import { relit } from '../../reading/light/shown-light.ts';
import type { Asked, HomeReads, PhotoRecord } from '../../store/store.ts';
import { type Correction, neutralsOf } from '../../wardrobe/words/reading.ts';
import { decideOnce } from '../decide.ts';
import { UserError } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import { staleError } from '../refuse-stale.ts';
import type { Services } from '../services.ts';

/** The photo's new correction, from the one it has. */
type Corrected = { readonly correction: Correction; readonly mask: string | null; readonly sentence: string };

/** Keeps the correction as one decision; returns the photo before and after, the first null where nothing changed. */
async function correct(
	services: Services,
	asked: Asked,
	id: string,
	seen: number | undefined,
	corrected: (photo: PhotoRecord, home: HomeReads) => Promise<Corrected>,
): Promise<{ readonly before: PhotoRecord | null; readonly photo: PhotoRecord }> {
	let before: PhotoRecord | null = null;
	const { answer, changed } = await decideOnce(services, asked, async (home) => {
		const photo = await foundIn(home.photos, 'photo')(id);
		before = photo;
		if (seen !== undefined && seen !== photo.version)
			throw staleError([{ kind: 'photo', id, fields: ['correction'], now: photo }]);
		const { correction, mask, sentence } = await corrected(photo, home);
		return {
			does: { corrections: [{ photoId: id, correction, mask }] },
			sentence,
			answer: async (after) => (await after.photos.get(id))!,
		};
	});
	return { before: changed.length > 0 ? before : null, photo: answer };
}

/** Has a photo read again whose pixels are to be looked at anew. */
async function readAnew(
	{ jobs }: Services,
	{ before, photo }: { readonly before: PhotoRecord | null; readonly photo: PhotoRecord },
): Promise<PhotoRecord> {
	if (before) await jobs.enqueue(photo.id);
	return photo;
}

/** Whether two corrections ask the same of the photo's pixels: then they differ in what is put on top of a reading, no more. */
const readsAlike = (one: Correction, other: Correction): boolean =>
	JSON.stringify([neutralsOf(one), one.camera ?? null, one.mask ?? false]) ===
	JSON.stringify([neutralsOf(other), other.camera ?? null, other.mask ?? false]);

/** What of a correction is said of the photo's light itself. */
type LightWords = Omit<Correction, 'mask' | 'ground'>;

/** What else is said of a photo, and stays when its light is corrected. */
const besideLight = ({ mask, ground }: Correction): Pick<Correction, 'mask' | 'ground'> => ({
	...(mask ? { mask } : {}),
	...(ground === undefined ? {} : { ground }),
});

/**
 * Says what is known of the photo's light: neutrals pointed at, steps by hand, the light it shares. The outline stays. Steps by hand and a shared
 * light are put on the stored uncorrected colours at once; only what looks at the photo's pixels anew (a neutral, a camera) has it read again.
 */
export async function correctLight(
	services: Services,
	asked: Asked,
	id: string,
	{ version, ...told }: LightWords & { readonly version?: number },
): Promise<PhotoRecord> {
	const { store, events } = services;
	const { before, photo } = await correct(services, asked, id, version, async (before, home) => ({
		correction: { ...told, ...besideLight(before.correction) },
		mask: await home.photos.maskOf(id),
		sentence: keptWords('decisions.correctedLight', { photo: before.originalName }),
	}));
	const isRead = before?.status === 'read' && readsAlike(before.correction, photo.correction);
	const reading = isRead ? before.reading : null;
	const shared = reading ? await services.sharedLight(photo) : null;
	const next = reading ? inLanguage('kept', () => relit(reading, photo.correction, shared)) : null;
	if (!next) return readAnew(services, { before, photo });
	await store.photos.saveReading(id, next, {});
	events.send({ event: 'photo', data: { id, status: 'read' } });
	await services.followLight(photo, next);
	return { ...photo, status: 'read', reading: next };
}

const isPng = (bytes: Uint8Array): boolean => bytes[1] === 0x50 && bytes[2] === 0x4e && bytes[3] === 0x47;

/** Keeps an outline drawn by hand: a grey PNG, 255 = clothes. */
export async function drawOutline(
	services: Services,
	asked: Asked,
	id: string,
	png: unknown,
	version: number | undefined,
): Promise<PhotoRecord> {
	if (!(png instanceof Uint8Array) || !isPng(png)) throw new UserError('bad-request', say('refusals.noPng'));
	await foundIn(services.store.photos, 'photo')(id);
	const mask = await services.store.photos.keepMask(id, png);
	const corrected = await correct(services, asked, id, version, async (photo) => ({
		correction: { ...photo.correction, mask: true },
		mask,
		sentence: keptWords('decisions.drewOutline', { photo: photo.originalName }),
	}));
	return readAnew(services, corrected);
}

/** Goes back to the outline that the program found. */
export async function forgetOutline(
	services: Services,
	asked: Asked,
	id: string,
	version: number | undefined,
): Promise<PhotoRecord> {
	const corrected = await correct(services, asked, id, version, async (photo) => {
		const { mask: _drawn, ...correction } = photo.correction;
		return { correction, mask: null, sentence: keptWords('decisions.forgotOutline', { photo: photo.originalName }) };
	});
	return readAnew(services, corrected);
}
