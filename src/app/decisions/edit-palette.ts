import { inLanguage } from '../../language/speak.ts';
import type { Asked } from '../../store/store.ts';
import { editPalette, type PaletteEdit } from '../../wardrobe/palette/palette-edit.ts';
import { decide } from '../decide.ts';
import { UserError } from '../errors.ts';
import { foundIn } from '../found-in.ts';
import { loadPaletteReadings } from '../load-season.ts';
import { noteGaps } from '../note-gaps.ts';
import type { Services } from '../services.ts';
import { type PaletteAnswer, paletteAnswer, paletteAsSeen } from './palette-answer.ts';

/** Locks, merges, splits, names, adds or takes out a colour. Works on the palette as it was seen, one colour at a time; `seen` undefined = as it is. */
export async function editSeasonPalette(
	services: Services,
	asked: Asked,
	seasonId: string,
	edit: PaletteEdit,
	seen?: number,
): Promise<PaletteAnswer> {
	const answer = await decide(services, asked, async (home) => {
		const season = await foundIn(home.seasons, 'season')(seasonId);
		const palette = await paletteAsSeen(home, seasonId, seen);
		const pictures = await loadPaletteReadings(home, season, 'inspirations');
		const board = pictures.length > 0 ? pictures : await loadPaletteReadings(home, season, 'garments');
		const edited = inLanguage('kept', () => editPalette(palette, edit, services.newId, board));
		if (!edited.ok) throw new UserError('bad-request', edited.message);
		return {
			does: { palettes: [{ seasonId, palette: edited.palette }] },
			sentence: edited.sentence,
			answer: (after) => paletteAnswer(after, season),
		};
	});
	await noteGaps(services);
	return answer;
}
