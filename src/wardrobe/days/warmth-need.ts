import type { SeasonDays } from '../words/season.ts';

/** One clo in m2 K/W, one met in W/m2 (ISO 7730). */
const CLO = 0.155;
const MET = 58.15;
/** Mean skin temperature of somebody comfortable, and the share of the heat that leaves through the clothes (Gagge, Burton and Bazett 1941, who defined the clo). */
const SKIN_CELSIUS = 33;
const THROUGH_CLOTHES = 0.76;
/** Insulation of the moving air around somebody outdoors, clo. Burton and Edholm 1955, from memory. */
const MOVING_AIR_CLO = 0.5;
/** Walking about, met (ISO 8996: 2 km/h 1.9). */
const WALKING_MET = 2;

/** Clothing that keeps somebody comfortable at an air temperature, clo, 0 or more: heat made through clothes and air (Burton's balance). */
export const comfortableClo = (celsius: number, met: number, airClo: number): number =>
	Math.max(0, (SKIN_CELSIUS - celsius) / (CLO * THROUGH_CLOTHES * MET * met) - airClo);

/** What people wear in buildings when it is so warm outside, clo: ASHRAE 55-2020 section 5.2.2.2 (Schiavon and Lee 2013). */
export function wornIndoorsClo(outdoorCelsius: number): number {
	if (outdoorCelsius < -5) return 1;
	if (outdoorCelsius < 5) return 0.818 - 0.0364 * outdoorCelsius;
	if (outdoorCelsius < 26) return 10 ** (-0.1635 - 0.0066 * outdoorCelsius);
	return 0.46;
}

/** Most people dress within this of what is usual, clo (the scatter in Schiavon and Lee 2013, from memory). */
const SCATTER = 0.25;

/** Insulation, without coat or jacket, that a season's days ask for: from what is usual on its warm day to what is usual on its cold one, scatter included. */
export const indoorRange = ({ coldDay, warmDay }: Pick<SeasonDays, 'coldDay' | 'warmDay'>) => ({
	least: wornIndoorsClo(warmDay) - SCATTER,
	most: wornIndoorsClo(coldDay) + SCATTER,
});

/** A body of shirt, jumper, trousers, socks and shoes, with scarf, hat and gloves, clo: what a coat goes over on a cold day. */
const UNDER_A_COAT_CLO = 1.01;
/** A usual winter coat: no season asks for more of one piece (ISO 7730 table C.2, as the kinds). */
const WINTER_COAT_CLO = 0.6;
/** Somebody who walks faster or waits shorter needs so much less. */
const ALLOWED_CLO = 0.3;

/** Insulation that the warmest coat or jacket of a set should have for the season's cold day, clo; 0 = none is needed. */
export const outerNeed = ({ coldDay }: Pick<SeasonDays, 'coldDay'>): number =>
	Math.min(
		WINTER_COAT_CLO,
		Math.max(0, comfortableClo(coldDay, WALKING_MET, MOVING_AIR_CLO) - ALLOWED_CLO - UNDER_A_COAT_CLO),
	);
