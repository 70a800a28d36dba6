import { type ComponentType, useEffect, useState } from 'react';
import type { Report } from '../../../src/wardrobe/season/report.ts';
import type { PlaceInSeason } from './addresses.ts';

/** What a page within a season gets. */
export type PageProps = { readonly seasonId: string; readonly report: Report };
/** What a page gets that shows its own before the season's judgement has come; `report` is null until then. */
export type EarlyPageProps = { readonly seasonId: string; readonly report: Report | null };

type Code<Props> = () => Promise<{ default: ComponentType<Props> }>;

/** Pages that show nothing before the judgement is there, and those that do. */
export type JudgedPlace = Exclude<PlaceInSeason, EarlyPlace>;
export type EarlyPlace = 'garments';
type PropsOf<Place extends PlaceInSeason> = Place extends EarlyPlace ? EarlyPageProps : PageProps;

/** Each station is its own piece of code, fetched when it is first entered. */
const CODE: { readonly [Place in PlaceInSeason]: Code<PropsOf<Place>> } = {
	'look-back': () => import('../pages/look-back/page.tsx'),
	direction: () => import('../pages/direction/page.tsx'),
	sort: () => import('../pages/sort/page.tsx'),
	'line-up': () => import('../pages/line-up/page.tsx'),
	'wish-list': () => import('../pages/wish-list/page.tsx'),
	shop: () => import('../pages/shop/page.tsx'),
	garments: () => import('../pages/garments/page.tsx'),
	season: () => import('../pages/seasons/season-settings.tsx'),
	sheet: () => import('../pages/sheet/page.tsx'),
};

const fetched: { [Place in PlaceInSeason]?: ComponentType<PropsOf<Place>> } = {};

/** Fetches a page's code; rejects where it does not come. */
export async function fetchCode<Place extends PlaceInSeason>(place: Place): Promise<void> {
	fetched[place] = (await CODE[place]()).default as (typeof fetched)[Place];
}

/**
 * The page, or null while its code is on its way; throws, where it is drawn, what kept it from coming. Drawn as soon as it is here: a lazy component
 * of React's would show its fallback for at least 300 ms.
 */
export function usePageCode<Place extends PlaceInSeason>(place: Place): ComponentType<PropsOf<Place>> | null {
	const [, drawAgain] = useState({});
	useEffect(() => {
		if (fetched[place]) return;
		let isWanted = true;
		fetchCode(place).then(
			() => isWanted && drawAgain({}),
			(error: unknown) =>
				isWanted &&
				drawAgain(() => {
					throw error;
				}),
		);
		return () => {
			isWanted = false;
		};
	}, [place]);
	return (fetched[place] as ComponentType<PropsOf<Place>> | undefined) ?? null;
}
