import { askedOccasions, daysOf, servesOccasion } from '../../src/wardrobe/days/enough.ts';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import { slotOfKind } from '../../src/wardrobe/words/kind.ts';
import type { Occasion, SeasonDays } from '../../src/wardrobe/words/season.ts';

type Clean = { readonly garment: Garment; left: number };

/** What each day between two washes is for: the occasions as evenly spread as whole days allow. */
function occasionsOfCycle(days: SeasonDays): (Occasion | null)[] {
	const owed = askedOccasions(days).map((occasion) => ({ occasion, days: 0 }));
	return Array.from({ length: days.washEveryDays }, () => {
		for (const one of owed) one.days += one.occasion.daysAWeek / 7;
		const next = [...owed].sort((a, b) => b.days - a.days)[0];
		if (!next || next.days < 0.5) return null;
		next.days -= 1;
		return next.occasion;
	});
}

/** Lives through `dayCount` days, dressing each from what is clean, the least useful elsewhere first, and washing all on every wash day. Returns the days on which nothing was left to wear. */
export function daysWithoutClothes(garments: readonly Garment[], days: SeasonDays, dayCount: number): number {
	const cycle = occasionsOfCycle(days);
	const useful = ({ garment }: Clean) => askedOccasions(days).filter((one) => servesOccasion(garment, one)).length;
	let clean: Clean[] = [];
	let without = 0;
	for (let day = 0; day < dayCount; day++) {
		if (day % days.washEveryDays === 0)
			clean = garments.map((garment) => ({ garment, left: daysOf(garment.kind, days) }));
		const occasion = cycle[day % cycle.length];
		if (!occasion) continue;
		const take = (slot: 'top' | 'bottom' | 'full') =>
			clean
				.filter(
					({ garment, left }) => left > 0 && slotOfKind(garment.kind) === slot && servesOccasion(garment, occasion),
				)
				.filter(({ garment }) => garment.kind !== 'cardigan' && garment.kind !== 'waistcoat')
				.sort((a, b) => useful(a) - useful(b))[0];
		const [top, bottom, full] = [take('top'), take('bottom'), take('full')];
		const isFullBetter = full && top && bottom && useful(full) < Math.max(useful(top), useful(bottom));
		if (full && (isFullBetter || !top || !bottom)) full.left--;
		else if (top && bottom) {
			top.left--;
			bottom.left--;
		} else without++;
	}
	return without;
}
