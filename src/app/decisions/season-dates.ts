import type { Season } from '../../wardrobe/words/season.ts';
import { UserError } from '../errors.ts';

/** What starting a season asks. */
export type SeasonDates = Pick<Season, 'name' | 'startsOn' | 'endsOn'>;

/** A season ends after it starts. */
export function refuseWrongDates(season: Pick<Season, 'startsOn' | 'endsOn'>): void {
	if (season.endsOn > season.startsOn) return;
	throw new UserError(
		'bad-request',
		`Expected the season to end after it starts (${season.startsOn}); received ${season.endsOn} as its end.`,
	);
}
