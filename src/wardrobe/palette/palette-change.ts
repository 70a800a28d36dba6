import { distanceBetween } from '../../colour/delta-e-many.ts';
import { say } from '../../language/speak.ts';
import { colourWord, type Palette, type PaletteColour } from '../words/palette-colour.ts';
import { REACH } from './palette-reach.ts';

/** One palette colour of both years. */
export type KeptColour = {
	readonly before: PaletteColour;
	readonly now: PaletteColour;
	/** CIEDE2000 between the two. */
	readonly distance: number;
	/** Change of its share, -1..1. */
	readonly weightChange: number;
};

/** What a season's palette has of last year's same season, what is new and what is gone. */
export type PaletteChange = {
	readonly kept: readonly KeptColour[];
	readonly arrived: readonly PaletteColour[];
	readonly gone: readonly PaletteColour[];
	/** Share of this year's palette that last year's held too, 0..1. */
	readonly keptShare: number;
	readonly sentence: string;
};

const listed = (colours: readonly PaletteColour[]): string => colours.map(colourWord).join(', ');

function changeSentence({ kept, arrived, gone, keptShare }: Omit<PaletteChange, 'sentence'>): string {
	if (kept.length + arrived.length + gone.length === 0) return say('paletteChange.neither');
	if (kept.length + gone.length === 0) return say('paletteChange.noneBefore');
	if (kept.length + arrived.length === 0) return say('paletteChange.noneNow', { colours: listed(gone) });
	const moved = kept.filter(({ distance }) => distance > REACH / 2).map(({ now }) => now);
	const parts = [
		say('paletteChange.share', { percent: Math.round(keptShare * 100) }),
		...(moved.length > 0 ? [say('paletteChange.moved', { colours: listed(moved) })] : []),
		...(arrived.length > 0 ? [say('paletteChange.new', { colours: listed(arrived) })] : []),
		...(gone.length > 0 ? [say('paletteChange.gone', { colours: listed(gone) })] : []),
	];
	return `${parts.join('; ')}.`;
}

/**
 * What changed from one palette to another: colours within CIEDE2000 10 of each other are the same one, matched one to one, the nearest pair
 * first. Either palette may be empty.
 */
export function paletteChange(before: Palette, now: Palette): PaletteChange {
	const pairs = now.colours
		.flatMap((colour) =>
			before.colours.map((earlier) => ({
				now: colour,
				before: earlier,
				distance: distanceBetween(colour.lab, earlier.lab),
			})),
		)
		.filter(({ distance }) => distance <= REACH)
		.sort((one, other) => one.distance - other.distance);
	const kept: KeptColour[] = [];
	for (const pair of pairs) {
		if (kept.some((one) => one.now === pair.now || one.before === pair.before)) continue;
		kept.push({ ...pair, weightChange: pair.now.weight - pair.before.weight });
	}
	const change = {
		kept: now.colours.flatMap((colour) => kept.find((one) => one.now === colour) ?? []),
		arrived: now.colours.filter((colour) => !kept.some((one) => one.now === colour)),
		gone: before.colours.filter((colour) => !kept.some((one) => one.before === colour)),
		keptShare: kept.reduce((sum, one) => sum + one.now.weight, 0),
	};
	return { ...change, sentence: changeSentence(change) };
}
