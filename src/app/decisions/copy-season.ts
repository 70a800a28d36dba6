import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked } from '../../store/store.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import type { Services } from '../services.ts';
import { refuseWrongDates, type SeasonDates } from './season-dates.ts';

/** Starts a season from another: its numbers, its board and its palette. */
export function copySeason(services: Services, asked: Asked, fromId: string, told: SeasonDates): Promise<Season> {
	refuseWrongDates(told);
	const { newId, now } = services;
	return decide(services, asked, async (home) => {
		const from = await foundIn(home.seasons, 'season')(fromId);
		const addedAt = now().toISOString();
		const season = { ...from, ...told, id: newId(), notes: '', feltGaps: [], archived: false, addedAt };
		const board = (await home.inspirations.list()).filter((one) => one.seasonId === from.id);
		const palette = await home.palette(from.id);
		return {
			does: {
				seasons: { put: [season] },
				inspirations: { put: board.map((one) => ({ ...one, id: newId(), seasonId: season.id })) },
				palettes: palette ? [{ seasonId: season.id, palette }] : [],
			},
			sentence: keptWords('decisions.startedFrom', { name: season.name, from: from.name }),
			answer: async (after) => (await after.seasons.get(season.id))!,
		};
	});
}
