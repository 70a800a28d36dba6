import { deltaE2000 } from '../src/colour/delta-e.ts';
import type { Lab65 } from '../src/colour/lab65.ts';
import { medianOf } from '../src/colour/median.ts';
import { agreedGround } from '../src/reading/ground/agreed-ground.ts';
import { groundLights } from '../src/reading/ground/ground-lights.ts';
import { sameGroundGroups } from '../src/reading/ground/same-ground.ts';
import { correctedBy } from '../src/reading/light/light-model.ts';
import { type GroundShot, groundShotsOf } from '../tests/support/ground-sets.ts';
import { realSets } from './real-grounds.ts';
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

/** Photos that came together with others of their ground, and with those of another; in a line. */
function groupingNote(shots: readonly GroundShot[]): string {
	let [together, astray] = [0, 0];
	const groundOf = new Map(shots.map(({ id, ground }) => [id, ground]));
	for (const ids of sameGroundGroups(shots.map(({ id, photo }) => ({ id, seen: photo.ground })))) {
		const counts = new Map<string, number>();
		for (const id of ids) counts.set(groundOf.get(id)!, (counts.get(groundOf.get(id)!) ?? 0) + 1);
		const most = Math.max(...counts.values());
		together += most;
		astray += ids.length - most;
	}
	return `Of ${shots.length} photos ${together} came together with their ground, ${astray} with another.`;
}

/** What one set errs by, each photo alone and agreed by ground; `unused`: why the ground is no reference, or null. */
function setErrors(set: readonly GroundShot[]): { alone: Errors; agreed: Errors; unused: string | null } {
	const photos = set.map(({ photo }) => photo);
	const lights = groundLights(photos);
	const own = (shot: GroundShot) => correctedBy(shot.photo.ownLight.model ?? null)(shot.seen);
	const shared = (shot: GroundShot) => {
		const light = lights.get(shot.id);
		return light ? correctedBy(light.model ?? null)(shot.seen) : own(shot);
	};
	return { alone: errorsOf(set, own), agreed: errorsOf(set, shared), unused: agreedGround(photos).unused };
}

const joined = (all: readonly Errors[]): Errors => ({
	apart: all.flatMap(({ apart }) => apart),
	off: all.flatMap(({ off }) => off),
});

const rowOf = (name: string, use: string, alone: Errors, agreed: Errors): Row => [
	name,
	use,
	medianOf(alone.apart),
	medianOf(agreed.apart),
	medianOf(alone.off),
	medianOf(agreed.off),
];

/** Renders of known colour, and real wardrobes where a folder of them is named. */
export async function run(folder: string | null): Promise<readonly Table[]> {
	return [await renderedSets(), await realSets(folder)];
}

/** Cloth whose true colour is known, rendered on six grounds and phoned with white balance and exposure that drift: alone, and agreed by ground. */
async function renderedSets(): Promise<Table> {
	const shots = await groundShotsOf(ROUNDS);
	const grounds = [...new Set(shots.map((shot) => shot.ground))].map((ground) => ({
		ground,
		...setErrors(shots.filter((shot) => shot.ground === ground)),
	}));
	const used = grounds.filter(({ unused }) => !unused);
	return {
		title: `The ground as reference: ${shots.length} renders of cloth of known colour, six grounds, ${ROUNDS} drifts (median CIEDE2000)`,
		columns: [
			'ground',
			'as reference',
			'two photos of a garment, each alone',
			'agreed by ground',
			'off the truth, each alone',
			'agreed by ground',
		],
		rows: [
			...grounds.map(({ ground, unused, alone, agreed }) => rowOf(ground, unused ?? 'used', alone, agreed)),
			rowOf('all that are used', '', joined(used.map(({ alone }) => alone)), joined(used.map(({ agreed }) => agreed))),
		],
		notes: [groupingNote(shots)],
	};
}
