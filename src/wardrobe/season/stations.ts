import { say } from '../../language/speak.ts';
import type { Gap } from '../gaps/gap.ts';
import type { Garment } from '../words/garment.ts';
import type { SeasonInput } from '../words/season-input.ts';
import type { LookBack } from './look-back.ts';

export const STATIONS = ['look-back', 'direction', 'sort', 'line-up', 'wish-list', 'shop'] as const;

/** One of the six stations of a season: what is done there and what is open. */
export type Station = {
	readonly station: (typeof STATIONS)[number];
	readonly state: 'empty' | 'open' | 'done';
	readonly sentence: string;
};

/** Whether a round of sorting asks about it: year-round basics stay where they are, and what is gone is decided. */
export const isSorted = ({ basic, place }: Pick<Garment, 'basic' | 'place'>): boolean => !basic && place !== 'gone';

/** Where the season stands, station by station, in their order. */
export function stationsOf(input: SeasonInput, gaps: readonly Gap[], back: LookBack): Station[] {
	const asked = input.garments.filter(isSorted);
	const decided = asked.filter(({ sortedFor = [] }) => sortedFor.includes(input.season.id)).length;
	// Of an empty wardrobe everything is missing, which tells nothing.
	const isEmpty = input.garments.length === 0;
	const chosen = input.lineUp?.garmentIds.length ?? 0;
	const wishes = input.wishes.filter(({ state }) => state === 'open').length;
	const candidates = input.candidates.filter(({ state }) => state === 'open').length;
	const colours = input.palette.colours.length;
	const pictures = say('counts.pictures', { count: input.inspirations.length });
	return [
		{
			station: 'look-back',
			state: back.wearsThisYear > 0 ? 'done' : 'empty',
			sentence: back.wearsThisYear > 0 ? say('counts.wears', { count: back.wearsThisYear }) : say('stations.noWears'),
		},
		{
			station: 'direction',
			state: colours > 0 ? 'done' : input.inspirations.length > 0 ? 'open' : 'empty',
			sentence:
				colours > 0
					? say('stations.colours', { colours: say('counts.colours', { count: colours }), pictures })
					: pictures,
		},
		{
			station: 'sort',
			state: asked.length === 0 ? 'empty' : decided === asked.length ? 'done' : 'open',
			sentence:
				asked.length === 0 ? say('stations.nothingToSort') : say('stations.sorted', { decided, count: asked.length }),
		},
		{
			station: 'line-up',
			state: chosen === 0 ? 'empty' : chosen >= input.season.targetCount ? 'done' : 'open',
			sentence: say('stations.chosen', { chosen, wanted: input.season.targetCount }),
		},
		{
			station: 'wish-list',
			state: wishes > 0 ? 'done' : isEmpty || gaps.length === 0 ? 'empty' : 'open',
			sentence: isEmpty
				? say('counts.wishes', { count: wishes })
				: say('stations.wishesGaps', {
						wishes: say('counts.wishes', { count: wishes }),
						gaps: say('counts.gaps', { count: gaps.length }),
					}),
		},
		{
			station: 'shop',
			state: candidates > 0 ? 'open' : 'empty',
			sentence: say('counts.candidates', { count: candidates }),
		},
	];
}
