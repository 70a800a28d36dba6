import { deltaE2000 } from '../src/colour/delta-e.ts';
import type { Lab65 } from '../src/colour/lab65.ts';
import { medianOf } from '../src/colour/median.ts';
import { agreedGround } from '../src/reading/ground/agreed-ground.ts';
import { groundLights } from '../src/reading/ground/ground-lights.ts';
import { sameGroundGroups } from '../src/reading/ground/same-ground.ts';
import { correctedBy } from '../src/reading/light/light-model.ts';
import { type GroundShot, groundShots } from '../tests/support/ground-sets.ts';
import type { Row, Table } from './table.ts';

const ROUNDS = 3;

/** Distances between the two shots of each garment, and of each shot from the truth, in one set. */
type Errors = { readonly apart: number[]; readonly off: number[] };

function errorsOf(shots: readonly GroundShot[], colour: (shot: GroundShot) => Lab65): Errors {
	const pairs = shots.flatMap((one, at) => shots.slice(at + 1).map((other) => [one, other] as const));
	return {
		apart: pairs
			.filter(([one, other]) => one.garment === other.garment)
			.map(([one, other]) => deltaE2000(colour(one), colour(other))),
		off: shots.map((shot) => deltaE2000(colour(shot), shot.truth)),
	};
}

/** Cloth whose true colour is known, rendered on six grounds and phoned with white balance and exposure that drift: alone, and agreed by ground. */
export async function run(): Promise<readonly Table[]> {
	const rows: Row[] = [];
	const whole = { alone: [] as number[], agreed: [] as number[], offAlone: [] as number[], offAgreed: [] as number[] };
	let [together, astray, shown] = [0, 0, 0];
	const rounds = await Promise.all(Array.from({ length: ROUNDS }, (_, round) => groundShots(round)));
	for (const shots of rounds) {
		const groundOf = new Map(shots.map(({ id, ground }) => [id, ground]));
		const groups = sameGroundGroups(shots.map(({ id, photo }) => ({ id, seen: photo.ground })));
		for (const ids of groups) {
			const counts = new Map<string, number>();
			for (const id of ids) counts.set(groundOf.get(id)!, (counts.get(groundOf.get(id)!) ?? 0) + 1);
			const most = Math.max(...counts.values());
			together += most;
			astray += ids.length - most;
		}
		shown += shots.length;
	}
	for (const ground of new Set(rounds[0]!.map((shot) => shot.ground))) {
		const alone: Errors = { apart: [], off: [] };
		const agreed: Errors = { apart: [], off: [] };
		let unused: string | null = null;
		for (const shots of rounds) {
			const set = shots.filter((shot) => shot.ground === ground);
			const lights = groundLights(set.map(({ photo }) => photo));
			unused = agreedGround(set.map(({ photo }) => photo)).unused;
			const own = (shot: GroundShot) => correctedBy(shot.photo.ownLight.model ?? null)(shot.seen);
			const shared = (shot: GroundShot) => {
				const light = lights.get(shot.id);
				return light ? correctedBy(light.model ?? null)(shot.seen) : own(shot);
			};
			for (const [errors, colour] of [
				[alone, own],
				[agreed, shared],
			] as const) {
				const found = errorsOf(set, colour);
				errors.apart.push(...found.apart);
				errors.off.push(...found.off);
			}
		}
		if (!unused) {
			whole.alone.push(...alone.apart);
			whole.agreed.push(...agreed.apart);
			whole.offAlone.push(...alone.off);
			whole.offAgreed.push(...agreed.off);
		}
		rows.push([
			ground,
			unused ?? 'used',
			medianOf(alone.apart),
			medianOf(agreed.apart),
			medianOf(alone.off),
			medianOf(agreed.off),
		]);
	}
	rows.push([
		'all that are used',
		'',
		medianOf(whole.alone),
		medianOf(whole.agreed),
		medianOf(whole.offAlone),
		medianOf(whole.offAgreed),
	]);
	return [
		{
			title: `The ground as reference: ${shown} renders of cloth of known colour, six grounds, ${ROUNDS} drifts (median CIEDE2000)`,
			columns: [
				'ground',
				'as reference',
				'two photos of a garment, each alone',
				'agreed by ground',
				'off the truth, each alone',
				'agreed by ground',
			],
			rows,
			notes: [`Of ${shown} photos ${together} came together with their ground, ${astray} with another.`],
		},
	];
}
