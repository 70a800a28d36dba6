import { describe, expect, it } from 'vitest';
import { enoughOf } from '../../src/wardrobe/days/enough.ts';
import { outOfSeason } from '../../src/wardrobe/days/in-season.ts';
import { daysOfSeason } from '../../src/wardrobe/days/usual-days.ts';
import { fitOf } from '../../src/wardrobe/fit/fit.ts';
import { buildLineUp } from '../../src/wardrobe/line-up/line-up.ts';
import { lonersOf } from '../../src/wardrobe/pairs/loners.ts';
import { paletteCover } from '../../src/wardrobe/palette/palette-cover.ts';
import { seasonReport } from '../../src/wardrobe/season/report.ts';
import { checkCandidate } from '../../src/wardrobe/wishes/candidate-check.ts';
import { aCandidate, aSeasonInput, aWish } from '../support/build-season.ts';
import { aGarment, aPalette, aSwatch, INK, OAT, RUST } from '../support/build-wardrobe.ts';

const garments = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'ink boots', kind: 'boots', lab: INK }),
	aGarment({ id: 'grey skirt', kind: 'skirt', lab: [55, 0, 0] }),
	aGarment({ id: 'loud jumper', kind: 'jumper', lab: [55, 80, -20] }),
];
const input = aSeasonInput({
	garments,
	wishes: [aWish()],
	wears: [{ garmentId: 'oat shirt', on: '2026-03-01' }],
});
const report = seasonReport(input);
const sortingOf = (id: string) => report.garments.find(({ garmentId }) => garmentId === id)!.sorting.sentence;
const blurred = { error: 9, reasons: ['the lamp is unknown'], advice: null };

// One sentence of each judgement with the data behind it, to be read aloud: true of that case, short, and saying what to do where there is something to do.
const TOLD: readonly (readonly [judgement: string, data: string, sentence: string, told: () => string])[] = [
	[
		'fit',
		'a rust shirt',
		'100 % of it matches rust. It fits.',
		() => fitOf(aGarment({ id: 'a', lab: RUST }), aPalette()).sentence,
	],
	[
		'fit, unsure',
		'a grey-oat shirt in bad light',
		'100 % of it is some way from oat. Unsure, likely near: the photo leaves room for anything from off to fitting (the lamp is unknown). Look at it in daylight.',
		() => fitOf(aGarment({ id: 'a', lab: [67.5, 1, 11], trust: blurred }), aPalette()).sentence,
	],
	[
		'palette cover',
		'one picture of two in its colours',
		'The palette holds 50 % of the cloth in your pictures. 1 picture is mostly left out: ask for more colours, add one by hand, or take the picture off the board.',
		() => paletteCover([{ swatches: [aSwatch(OAT)] }, { swatches: [aSwatch([60, 60, -60])] }], aPalette()).sentence,
	],
	[
		'season',
		'shorts in spring',
		'it is for days of 18 degrees or more, and a warm day of the season has 12',
		() =>
			outOfSeason(aGarment({ id: 'a', kind: 'shorts' }), {
				...input.season,
				days: { ...daysOfSeason(input.season), warmDay: 12 },
			})!,
	],
	[
		'enough',
		'one shirt, one pair of trousers',
		'Between two washes, 7 days apart, the tops last 1 day, the bottoms 4 days, dresses and one-pieces 0 days: 6 days short. Wash sooner, or add another top.',
		() => enoughOf(garments.slice(0, 2), daysOfSeason(input.season)).sentence,
	],
	[
		'line-up',
		'four pieces, two places open',
		'3 garments dress 1 of 7 days between washes, cover 49 % of the palette. Another choice could gain 2 % at most. 2 places stay open: nothing else you own is worth one. Make each a wish, or ask for fewer.',
		() =>
			buildLineUp(input, {
				quotas: { top: 2, outer: 1, bottom: 1, full: 0, legwear: 0, shoes: 1, accessory: 0 },
				targetCount: 5,
				mustKeep: [],
				neverUse: [],
			}).sentence,
	],
	[
		'loner',
		'a magenta jumper among greys',
		'Does loud jumper go with anything? It lies outside the palette, and far from most of what you own. grey skirt could carry it: wear the two together, and that settles it. New photos would most likely say the same.',
		() => lonersOf(garments, { palette: aPalette(), pairings: [], pairWords: [], wornTogether: [] })[0]!.sentence,
	],
	[
		'wish',
		'a rust jumper wanted since January',
		'It would add 1 outfit. It answers a colour of which 100 % is missing. Priority 23 of 100: 10 for the palette, 7 for waiting, 5 for outfits, 1 for the seasons it serves. Wanted for 68 days, longer than your waiting time, it is a real wish: used first, then new from makers you trust.',
		() => report.wishes[0]!.sentence,
	],
	[
		'candidate',
		'a rust jumper for 60',
		'Take it: It answers the wish “rust jumper”.',
		() => checkCandidate(aCandidate(), input).sentence,
	],
	[
		'sorting',
		'an oat shirt worn last week',
		'Keep it on the rail: its colour fits the season.',
		() => sortingOf('oat shirt'),
	],
	[
		'sorting',
		'a magenta jumper, wears noted for nine days',
		'Store it: its colour is off the season’s palette; it may go with nothing else you have.',
		() => sortingOf('loud jumper'),
	],
	[
		'look-back',
		'trousers that were not worn',
		'ink trousers was not worn, though it goes with what is on the rail: wear it once, or let it go.',
		() => report.wornOutfits.neverWorn.find(({ garmentId }) => garmentId === 'ink trousers')!.sentence,
	],
	[
		'what is held',
		'five pieces on the rail',
		'5 garments on the rail make 4 outfits for the days of this season. They cover 52 % of the palette.',
		() => report.held.sentence,
	],
];

describe('the sentences of the judgements', () => {
	it.each(TOLD)('%s: of %s it says "%s"', (_, __, sentence, told) => {
		expect(told()).toBe(sentence);
	});
});
