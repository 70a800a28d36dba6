import { dayText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { UserError } from '../errors.ts';

/** What starting a season asks. */
export type SeasonDates = Pick<Season, 'name' | 'startsOn' | 'endsOn'>;

/** A season ends after it starts. */
export function refuseWrongDates(season: Pick<Season, 'startsOn' | 'endsOn'>): void {
	if (season.endsOn > season.startsOn) return;
	throw new UserError(
		'bad-request',
		say('refusals.endsFirst', { start: dayText(season.startsOn), end: dayText(season.endsOn) }),
	);
}
