import { useState } from 'react';
import { roundFromText } from './sort-order.ts';

/** Which garments were decided on in this round of the season, remembered on this device. */
export function useRound(seasonId: string) {
	const key = `dyelot-sorted-${seasonId}`;
	const [decided, setDecided] = useState<readonly string[]>(() => {
		try {
			return roundFromText(localStorage.getItem(key));
		} catch {
			return [];
		}
	});
	const save = (next: readonly string[]) => {
		setDecided(next);
		try {
			localStorage.setItem(key, JSON.stringify(next));
		} catch {
			// A browser that keeps nothing begins the round anew after a reload; the decisions themselves are stored.
		}
	};
	return { decided, save };
}
