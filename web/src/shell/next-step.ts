import { say } from '../../../src/language/speak.ts';
import type { Report } from '../../../src/wardrobe/season/report.ts';
import type { PlaceInSeason } from './addresses.ts';

/** Where a page leads next, and why there. */
export type NextStep = { readonly to: PlaceInSeason; readonly why: string };

const ofDirection = ({ garments, palette }: Report): NextStep => {
	if (palette.colours.length === 0) return { to: 'garments', why: say('next.withoutPalette') };
	if (garments.length === 0) return { to: 'garments', why: say('next.photograph') };
	return { to: 'sort', why: say('next.sort', { count: garments.length }) };
};

const ofGarments = ({ garments, palette }: Report, kindsOpen: number): NextStep => {
	if (garments.length === 0) return { to: 'direction', why: say('next.meanwhile') };
	if (kindsOpen > 0) return { to: 'sort', why: say('next.kindsFirst', { count: kindsOpen }) };
	if (palette.colours.length === 0) return { to: 'direction', why: say('next.paletteFirst') };
	return { to: 'sort', why: say('next.sort', { count: garments.length }) };
};

const ofSort = (report: Report): NextStep => {
	if (report.garments.length === 0) return { to: 'garments', why: say('next.photograph') };
	const isDone = report.stations.find(({ station }) => station === 'sort')?.state === 'done';
	return { to: 'line-up', why: say(isDone ? 'next.allSorted' : 'next.partSorted') };
};

const ofLineUp = ({ gaps, held }: Report): NextStep => {
	if (!held.isLineUp) return { to: 'wish-list', why: say('next.notChosen') };
	return { to: 'wish-list', why: say('next.chosen', { count: gaps.length }) };
};

/** What comes after a page of the season, from where the season stands; `kindsOpen` = garments whose kind nobody has confirmed. */
export function nextStepOf(place: PlaceInSeason, report: Report, kindsOpen = 0): NextStep {
	switch (place) {
		case 'look-back':
			return { to: 'direction', why: say('next.lookedBack') };
		case 'direction':
			return ofDirection(report);
		case 'garments':
			return ofGarments(report, kindsOpen);
		case 'sort':
			return ofSort(report);
		case 'line-up':
			return ofLineUp(report);
		case 'wish-list':
			return { to: 'shop', why: say('next.wished') };
		case 'shop':
			return { to: 'look-back', why: say('next.bought') };
		case 'sheet':
			return { to: 'look-back', why: say('next.printed') };
		case 'season':
			return { to: 'direction', why: say('next.daysTold') };
	}
}
