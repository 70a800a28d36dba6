import { distanceBetween } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { colourName } from '../../colour/name.ts';
import { EMPTY_PALETTE, type Palette, type PaletteColour } from '../words/palette-colour.ts';
import { seededRandom } from '../words/seeded-random.ts';
import { weightOf } from './palette-centre.ts';
import { type PaletteCounts, paletteClusters } from './palette-clusters.ts';
import {
	type PaletteSource,
	type PoolPoint,
	photosHolding,
	photosInOrder,
	poolOf,
	withoutHeld,
} from './palette-pool.ts';
import { REACH } from './palette-reach.ts';
import { inPaletteOrder, rolesOf } from './palette-roles.ts';

export type DeriveOptions = {
	/** Neutrals and colours asked for; `null`, the default = as many as the board holds. */
	readonly baseCount?: number | null;
	readonly colourCount?: number | null;
	/** Of the resampling; same seed, same firmness. Default 1. */
	readonly seed?: number;
	/** The palette so far: its locked colours stay, its removed ones stay out, the others lend their ids to the new ones near them. */
	readonly keep?: Palette;
	/** Ids of new colours; default `colour-1`, `colour-2` ... in order, passing over those in use. */
	readonly newId?: () => string;
};

/** Resampled boards behind a firmness (measured: 20 tell firm from tentative). */
const RESAMPLED_BOARDS = 20;

type Photos = ReturnType<typeof photosInOrder>;

/** How often each colour comes back when boards are drawn anew from the same photos, 0..1; 0 from a single photo, which cannot be resampled. */
function firmnessOf(
	labs: readonly Lab65[],
	photos: Photos,
	held: readonly Lab65[],
	counts: PaletteCounts,
	seed: number,
) {
	if (photos.length < 2) return labs.map(() => 0);
	const returned = labs.map(() => 0);
	for (let board = 0; board < RESAMPLED_BOARDS; board++) {
		const random = seededRandom(`palette ${seed} board ${board}`);
		const drawn = photos.map(() => photos[Math.floor(random() * photos.length)]!);
		const found = paletteClusters(withoutHeld(poolOf(drawn), held).free, counts, photos.length);
		for (const [index, lab] of labs.entries())
			if (found.some((cluster) => distanceBetween(cluster.lab, lab) <= REACH)) returned[index]!++;
	}
	return returned.map((times) => times / RESAMPLED_BOARDS);
}

/** Ids for new colours: that of the nearest earlier unlocked colour within reach, one each, else a new one. */
function idsFor(labs: readonly Lab65[], earlier: readonly PaletteColour[], newId: () => string): string[] {
	const pairs = labs
		.flatMap((lab, index) =>
			earlier.map(({ id, lab: before }) => ({ index, id, distance: distanceBetween(lab, before) })),
		)
		.filter(({ distance }) => distance <= REACH)
		.sort((one, other) => one.distance - other.distance || one.index - other.index);
	const given = new Map<number, string>();
	for (const { index, id } of pairs) {
		if (!given.has(index) && ![...given.values()].includes(id)) given.set(index, id);
	}
	return labs.map((_, index) => given.get(index) ?? newId());
}

function countedIds(used: ReadonlySet<string>): () => string {
	let next = 0;
	return () => {
		do next++;
		while (used.has(`colour-${next}`));
		return `colour-${next}`;
	};
}

/**
 * Share of the palette that the locked colours keep: their own, but no more than the photos give them or an even share would. So a colour
 * that was alone in the palette when it was added does not leave nothing for the ones derived after it.
 */
function weightOfLocked(
	locked: readonly PaletteColour[],
	taken: readonly (readonly PoolPoint[])[],
	pool: readonly PoolPoint[],
	derivedCount: number,
): number {
	if (locked.length === 0) return 0;
	const sum = (points: readonly PoolPoint[]) => points.reduce((total, { weight }) => total + weight, 0);
	const fromPhotos = pool.length > 0 ? sum(taken.slice(0, locked.length).flat()) / sum(pool) : 0;
	const evenShare = locked.length / (locked.length + derivedCount);
	return Math.min(
		locked.reduce((total, { weight }) => total + weight, 0),
		Math.max(fromPhotos, evenShare),
	);
}

/**
 * The palette of a board: every photo weighs the same, neutrals and colours are clustered apart, and each colour says in how many photos it
 * occurs and how firm it is. The order of the photos changes nothing. Without photos only what is locked remains; from one photo every colour
 * is tentative (firmness 0). Without counts the board decides how many colours it holds; fewer than asked for come back where it holds fewer.
 */
export function derivePalette(sources: readonly PaletteSource[], options: DeriveOptions = {}): Palette {
	const { baseCount = null, colourCount = null, seed = 1, keep = EMPTY_PALETTE } = options;
	const locked = keep.colours.filter((colour) => colour.locked);
	const removed = keep.removed ?? [];
	const newId = options.newId ?? countedIds(new Set(keep.colours.map(({ id }) => id)));
	const photos = photosInOrder(sources);
	const pool = poolOf(photos);
	const held = [...locked.map(({ lab }) => lab), ...removed];
	const lockedBase = locked.filter(({ role }) => role === 'base').length;
	const counts: PaletteCounts = {
		base: baseCount === null ? null : Math.max(0, baseCount - lockedBase),
		coloured: colourCount === null ? null : Math.max(0, colourCount - (locked.length - lockedBase)),
	};
	const { free, taken } = withoutHeld(pool, held);
	const clusters = paletteClusters(free, counts, photos.length);
	const labs = clusters.map(({ lab }) => lab);
	const firmness = firmnessOf(labs, photos, held, counts, seed);
	const ids = idsFor(
		labs,
		keep.colours.filter((colour) => !colour.locked),
		newId,
	);
	const seenIn = labs.map((lab) => photosHolding(lab, pool));
	const roles = rolesOf(
		clusters.map(({ lab, neutral, weight }, index) => ({
			lab,
			neutral,
			share: weight / photos.length,
			photos: seenIn[index]!,
		})),
		photos.length,
	);
	const clusterWeight = weightOf(clusters);
	const lockedWeight = weightOfLocked(locked, taken, pool, clusters.length);
	const derived = clusters.map(
		({ lab, weight, spread }, index): PaletteColour => ({
			id: ids[index]!,
			lab,
			spread,
			weight: ((1 - lockedWeight) * weight) / clusterWeight,
			role: roles[index]!,
			name: colourName(lab),
			label: '',
			photos: seenIn[index]!,
			firmness: firmness[index]!,
			locked: false,
			origin: 'derived',
		}),
	);
	const lockedTotal = weightOf(locked);
	const kept = locked.map((colour) => ({
		...colour,
		weight: lockedTotal > 0 ? (lockedWeight * colour.weight) / lockedTotal : lockedWeight / locked.length,
		photos: photosHolding(colour.lab, pool),
	}));
	return { colours: inPaletteOrder([...kept, ...derived]), ...(removed.length > 0 ? { removed } : {}) };
}
