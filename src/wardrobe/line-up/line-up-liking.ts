import type { Garment } from '../words/garment.ts';
import { garmentWears, WORN_OFTEN } from '../words/garment-wears.ts';
import type { SeasonInput } from '../words/season-input.ts';

/** How much each garment is liked, 0..1: what the user said, or how often it was worn in twelve months beside the most worn one, whichever is more, but 0 where the user said so; and which ones rule over arithmetic. */
export function likingOf(
	garments: readonly Garment[],
	{ wears, today }: Pick<SeasonInput, 'wears' | 'today'>,
): { readonly loved: readonly number[]; readonly settled: readonly boolean[] } {
	const worn = garmentWears(garments, wears, today).map(({ wearsThisYear }) => wearsThisYear);
	const most = Math.max(1, ...worn);
	return {
		loved: garments.map(({ loved }, index) => (loved === 0 ? 0 : Math.max((loved ?? 0) / 3, worn[index]! / most))),
		settled: garments.map(
			({ loved, basic, condition }, index) =>
				condition !== 'worn-out' && (basic || loved === 3 || (worn[index]! >= WORN_OFTEN && loved !== 0)),
		),
	};
}
