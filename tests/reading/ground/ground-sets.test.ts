import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { chroma, type Lab65 } from '../../../src/colour/lab65.ts';
import { medianOf } from '../../../src/colour/median.ts';
import { agreedGround, type GroundPhoto, ownColour } from '../../../src/reading/ground/agreed-ground.ts';
import { rateOfFollowing } from '../../../src/reading/ground/following.ts';
import { groundLights } from '../../../src/reading/ground/ground-lights.ts';
import { modelFromGround } from '../../../src/reading/ground/ground-model.ts';
import { sameGroundGroups } from '../../../src/reading/ground/same-ground.ts';
import { correctedBy } from '../../../src/reading/light/light-model.ts';
import { modelFromNeutrals } from '../../../src/reading/light/neutral-model.ts';
import { errorOfGround } from '../../../src/wardrobe/words/light-error.ts';
import { groundShotsOf } from '../../support/ground-sets.ts';

/** Renders of the demo's garments whose true colour is known, phoned with white balance and exposure that drift (fixtures/grounds). */
const drifted = await groundShotsOf(3);
const shots = drifted.slice(0, drifted.length / 3);
const photoOf = new Map(shots.map(({ id, photo }) => [id, photo]));
const setOf = (ground: string) => shots.filter((shot) => shot.ground === ground);
const photosOf = (ground: string) => setOf(ground).map(({ id }) => photoOf.get(id)!);
const DULL = ['oak planks', 'pale planks', 'grey screed', 'blue bed', 'check tiles'];
/** 36 photos of each dull ground, in three drifts. */
const sets = DULL.map((ground) => drifted.filter((shot) => shot.ground === ground));

describe('photos of one ground', () => {
	const groups = sameGroundGroups([...photoOf.values()].map(({ id, ground }) => ({ id, seen: ground })));

	it('come together though each is balanced and exposed otherwise; two kinds of planks may be taken for one', () => {
		const kind = (id: string) => (id.includes('planks') ? 'planks' : id.replace(/-g\d.*/, ''));
		for (const ids of groups) expect(new Set(ids.map(kind)).size).toBe(1);
		for (const ground of [...DULL, 'green bed']) {
			const largest = Math.max(
				...groups.map((ids) => ids.filter((id) => id.startsWith(ground.replace(' ', '-'))).length),
			);
			expect(largest, ground).toBeGreaterThanOrEqual(10);
		}
	});

	it('are told whatever the order of the photos', () => {
		const turned = [...photoOf.values()].reverse().map(({ id, ground }) => ({ id, seen: ground }));
		expect(sameGroundGroups(turned)).toEqual(groups);
	});

	it('are what the user says, whatever they look like', () => {
		const [one, other] = [setOf('blue bed')[0]!.id, setOf('check tiles')[0]!.id];
		const told = (id: string, word: string | null) => ({ id, seen: photoOf.get(id)!.ground, told: word });
		expect(sameGroundGroups([told(one, 'the floor'), told(other, 'the floor')])).toEqual([[one, other].sort()]);
		const alike = setOf('blue bed')
			.slice(0, 2)
			.map(({ id }) => id);
		expect(sameGroundGroups(alike.map((id) => told(id, null)))).toEqual([]);
	});
});

describe('the light that a shared ground tells', () => {
	// 36 photos of each of five grounds: 8.9 alone and 4.2 agreed, 7.9 and 4.3 off the truth (`npm run bench -- grounds`).
	it('halves the error between two photos of one garment, and brings both nearer to the truth, by an error that is stated', () => {
		const apart = { alone: [] as number[], agreed: [] as number[] };
		const off = { alone: [] as number[], agreed: [] as number[] };
		for (const set of sets) {
			const lights = groundLights(set.map(({ photo }) => photo));
			const colours = set.map(({ id, seen, photo }) => ({
				alone: correctedBy(photo.ownLight.model!)(seen),
				agreed: correctedBy(lights.get(id)!.model!)(seen),
			}));
			for (const way of ['alone', 'agreed'] as const) {
				for (const [i, one] of set.entries()) {
					off[way].push(deltaE2000(colours[i]![way], one.truth));
					for (const [j, other] of set.entries())
						if (i < j && one.garment === other.garment) apart[way].push(deltaE2000(colours[i]![way], colours[j]![way]));
				}
			}
		}
		expect(medianOf(apart.agreed)).toBeLessThanOrEqual(medianOf(apart.alone) / 2);
		expect(medianOf(off.agreed)).toBeLessThan(0.6 * medianOf(off.alone));
		const covered = off.agreed.filter((error) => error <= errorOfGround(null)).length / off.agreed.length;
		expect(covered).toBeGreaterThanOrEqual(0.75);
		expect(covered).toBeLessThanOrEqual(0.9);
	});

	/** Median chroma of the set's nearly grey garments, each photo alone and agreed. */
	function greysOf(photos: readonly GroundPhoto[]): { readonly alone: number; readonly agreed: number } {
		const lights = groundLights(photos);
		const greys = photos
			.map((photo) => ({ own: ownColour(photo, photo.cloth[0]!), light: lights.get(photo.id)!, seen: photo.cloth[0]! }))
			.filter(({ own }) => chroma(own) < 12);
		return {
			alone: medianOf(greys.map(({ own }) => chroma(own))),
			agreed: medianOf(greys.map(({ light, seen }) => chroma(correctedBy(light.model!)(seen)))),
		};
	}

	it('is followed where greys follow their ground, and left where they stay grey while it swings', () => {
		// Cameras that keep greys grey and let the wood swing: the cloth as it is in truth, the ground as it was photographed.
		const kept = sets.map((set) => set.map(({ photo, truth }) => ({ ...photo, cloth: [truth] })));
		for (const photos of kept) {
			const { alone, agreed } = greysOf(photos);
			expect(agreed).toBeLessThanOrEqual(alone + 1);
			expect(rateOfFollowing(photos, agreedGround(photos).lab)).toBeLessThan(0.2);
		}
		const followed = sets.map((set) => set.map(({ photo }) => photo));
		for (const photos of followed) expect(greysOf(photos).agreed).toBeLessThanOrEqual(greysOf(photos).alone + 0.5);
	});

	it('moves no tint where the ground is not followed, however much lighter or darker it makes the photo', () => {
		const agreed: Lab65 = [65, 8, 22];
		const seen: Lab65 = [50, 10, 20];
		for (const lightness of [0, 0.5, 1]) {
			const model = modelFromGround({ seen, own: seen, agreed }, 'phone', { lightness, chromaticity: 0 })!;
			for (const L of [20, 50, 80]) expect(chroma(correctedBy(model)([L, 0, 0]))).toBeLessThan(0.01);
		}
	});

	it('is not taken from a vivid ground, from two photos that nothing measures, or from no ground at all', () => {
		expect(agreedGround(photosOf('green bed')).unused).toBe('vivid');
		expect(groundLights(photosOf('green bed')).size).toBe(0);
		expect(agreedGround(photosOf('oak planks').slice(0, 2)).unused).toBe('few');
	});

	it('is the measured one for all once one photo has a white or grey in it', () => {
		const [first, ...rest] = photosOf('grey screed');
		const grey = { kind: 'grey' as const, seen: first!.ground.lab, lightness: 62 };
		const model = modelFromNeutrals({ white: null, grey }, 'phone', null);
		const ownLight = { ...first!.ownLight, source: 'neutral-pointed' as const, strength: 1, model, error: 5.5 };
		const lights = groundLights([{ ...first!, ownLight }, ...rest]);
		expect(lights.has(first!.id)).toBe(false);
		for (const photo of rest) {
			const light = lights.get(photo.id)!;
			expect(light).toMatchObject({ source: 'ground', strength: 1 });
			expect(light.error).toBeLessThan(first!.ownLight.error!);
			expect(correctedBy(light.model!)(photo.ground.lab)[0]).toBeCloseTo(62, 0);
		}
	});

	it('is not measured by a neutral that is in doubt', () => {
		const photos = photosOf('grey screed');
		const [first, ...rest] = photos;
		const doubtful = { ...first!.ownLight, source: 'neutral-pointed' as const, strength: 0, error: 10 };
		expect(agreedGround([{ ...first!, ownLight: doubtful }, ...rest]).measuredBy).toEqual([]);
	});
});
