import type { CameraKind, Light } from '../wardrobe/words/light.ts';
import type { NeutralJudgement, NeutralPoint, Swatch, Trust } from '../wardrobe/words/reading.ts';
import { UserError } from './errors.ts';
import { foundIn } from './found-in.ts';
import type { Services } from './services.ts';

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
	id: string,
	{ neutrals, camera }: { readonly neutrals: readonly NeutralPoint[]; readonly camera?: CameraKind },
): Promise<LightTrial> {
	const photo = await foundIn(services.store.photos, 'photo')(id);
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
