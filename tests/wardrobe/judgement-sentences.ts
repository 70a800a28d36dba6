import { enoughOf } from '../../src/wardrobe/days/enough.ts';
import { outOfSeason } from '../../src/wardrobe/days/in-season.ts';
import { daysOfSeason } from '../../src/wardrobe/days/usual-days.ts';
import { fitOf } from '../../src/wardrobe/fit/fit.ts';
import { surerLight } from '../../src/wardrobe/fit/surer-light.ts';
import { buildLineUp } from '../../src/wardrobe/line-up/line-up.ts';
import { whatIf } from '../../src/wardrobe/line-up/what-if.ts';
import { lonersOf } from '../../src/wardrobe/pairs/loners.ts';
import { supportOf } from '../../src/wardrobe/pairs/partners.ts';
import { paletteChange } from '../../src/wardrobe/palette/palette-change.ts';
import { paletteCover } from '../../src/wardrobe/palette/palette-cover.ts';
import { type Report, seasonReport } from '../../src/wardrobe/season/report.ts';
import { checkCandidate } from '../../src/wardrobe/wishes/candidate-check.ts';
import type { SeasonInput } from '../../src/wardrobe/words/season-input.ts';
import { aCandidate, aSeasonInput, aWish } from '../support/build-season.ts';
import {
	aGarment,
	aPalette,
	aPaletteColour,
	aReading,
	aSwatch,
	INK,
	OAT,
	RUST,
	TEAL,
} from '../support/build-wardrobe.ts';
import { piece } from './pictures/build-picture.ts';

const garments = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'ink boots', kind: 'boots', lab: INK }),
	aGarment({ id: 'grey skirt', kind: 'skirt', lab: [55, 0, 0] }),
	aGarment({ id: 'loud jumper', kind: 'jumper', lab: [55, 80, -20] }),
];
const [oatShirt, inkTrousers, inkBoots] = garments as [
	(typeof garments)[0],
	(typeof garments)[0],
	(typeof garments)[0],
];
const blurred = { error: 9, reasons: ['the lamp is unknown'], advice: null };
const shown = (id: string, pieces: Parameters<typeof aReading>[0], told: ReturnType<typeof piece>[]) => ({
	inspiration: { id, seasonId: 'spring', photoId: id, title: id, group: '', addedAt: '' },
	reading: aReading(pieces, { pieces: told }),
});
const plumCoat = shown(
	'a',
	[aSwatch([30, 25, -15], 1, 'outer')],
	[piece('shirt', OAT), piece('trousers', INK), piece('coat', [30, 25, -15])],
);

const aSeason = (changes: Partial<SeasonInput> = {}): SeasonInput =>
	aSeasonInput({ garments, wishes: [aWish()], wears: [{ garmentId: 'oat shirt', on: '2026-03-01' }], ...changes });
const report = (changes: Partial<SeasonInput> = {}): Report => seasonReport(aSeason(changes));
const sorting = (id: string, changes: Partial<SeasonInput> = {}) =>
	report(changes).garments.find(({ garmentId }) => garmentId === id)!.sorting.sentence;
const neverWorn = (id: string, changes: Partial<SeasonInput> = {}) =>
	report(changes).wornOutfits.neverWorn.find(({ garmentIds }) => garmentIds.includes(id))!.sentence;
const gap = (id: RegExp, changes: Partial<SeasonInput> = {}) =>
	report(changes).gaps.find((one) => id.test(one.id))!.sentence;
const candidate = (changes: Parameters<typeof aCandidate>[0] = {}, more: Partial<SeasonInput> = {}) =>
	checkCandidate(aCandidate(changes), aSeason(more)).sentence;
const coloured = (lab: readonly [number, number, number]) => aGarment({ id: 'x', kind: 'jumper', lab }).swatches;
const quotas = { top: 2, outer: 1, bottom: 1, full: 0, legwear: 0, shoes: 1, accessory: 0 };
const lineUp = { quotas, targetCount: 5, mustKeep: [], neverUse: [] };
const context = { palette: aPalette(), pairings: [], pairWords: [], wornTogether: [] };
const worn = (on: string, ...ids: string[]) => ids.map((garmentId) => ({ garmentId, on }));
const summer = aGarment({ id: 'linen shorts', kind: 'shorts', lab: INK, yearParts: ['summer'] });

/** One example of each judgement's sentence: what it judges, of what, and the judgement itself. */
export const JUDGEMENTS: readonly (readonly [judgement: string, data: string, told: () => string])[] = [
	['fit', 'a rust shirt', () => fitOf(aGarment({ id: 'a', lab: RUST }), aPalette()).sentence],
	['fit, off', 'a magenta shirt', () => fitOf(aGarment({ id: 'a', lab: [55, 80, -20] }), aPalette()).sentence],
	[
		'fit, in parts',
		'a shirt, rust with a third magenta',
		() => fitOf({ ...oatShirt, swatches: [aSwatch(RUST, 0.66), aSwatch([55, 80, -20], 0.34)] }, aPalette()).sentence,
	],
	[
		'fit, unsure',
		'a grey-oat shirt in bad light',
		() => fitOf(aGarment({ id: 'a', lab: [67.5, 1, 11], trust: blurred }), aPalette()).sentence,
	],
	['fit, no palette', 'a season without pictures', () => fitOf(oatShirt, { colours: [] }).sentence],
	[
		'light',
		'seven shirts farther and farther from oat, in bad light',
		() =>
			surerLight(
				[0, 4, 8, 12, 16, 20, 24].map((far) =>
					aGarment({ id: `${far}`, lab: [84, 1 + far, 11], trust: { ...blurred, error: 10 } }),
				),
				aPalette(),
			).sentence!,
	],
	[
		'palette cover',
		'one picture of two in its colours',
		() => paletteCover([{ swatches: [aSwatch(OAT)] }, { swatches: [aSwatch([60, 60, -60])] }], aPalette()).sentence,
	],
	[
		'palette change',
		'teal new, plum gone',
		() =>
			paletteChange({ colours: [...aPalette().colours.slice(0, 3), aPaletteColour('plum', [30, 25, -15])] }, aPalette())
				.sentence,
	],
	[
		'season',
		'shorts in a cold spring',
		() =>
			outOfSeason(aGarment({ id: 'a', kind: 'shorts' }), {
				...aSeason().season,
				days: { ...daysOfSeason(aSeason().season), warmDay: 12 },
			})!,
	],
	[
		'enough',
		'one shirt, one pair of trousers',
		() => enoughOf(garments.slice(0, 2), daysOfSeason(aSeason().season)).sentence,
	],
	['line-up', 'four pieces, two places open', () => buildLineUp(aSeason(), lineUp).sentence],
	[
		'line-up, what cannot be met',
		'shorts that must be kept in spring',
		() =>
			buildLineUp(aSeason({ garments: [...garments, summer] }), {
				...lineUp,
				mustKeep: ['linen shorts'],
			}).problems.join(' '),
	],
	[
		'what if',
		'the boots taken out',
		() => whatIf(aSeason(), { garmentIds: garments.map(({ id }) => id), remove: ['ink boots'], add: [] }).sentence,
	],
	['pair', 'an oat shirt with ink trousers', () => supportOf(oatShirt, inkTrousers, context).sentence],
	[
		'pair, nothing known',
		'a magenta jumper with a lime skirt',
		() => supportOf(garments[4]!, aGarment({ id: 'lime skirt', kind: 'skirt', lab: [85, -40, 75] }), context).sentence,
	],
	[
		'twins',
		'two shirts of one colour',
		() =>
			report({ garments: [oatShirt, aGarment({ id: 'other shirt', kind: 'shirt', lab: [83, 1, 11] })] }).twins[0]!
				.sentence,
	],
	['loner', 'a magenta jumper among greys', () => lonersOf(garments, context)[0]!.sentence],
	['picture', 'one that lacks a plum coat', () => report({ inspirations: [plumCoat] }).pictures.pictures[0]!.sentence],
	['pictures', 'one that lacks a plum coat', () => report({ inspirations: [plumCoat] }).pictures.sentence],
	['gap, a piece', 'a plum coat of one picture', () => gap(/^pieces/, { inspirations: [plumCoat] })],
	[
		'gap, perhaps',
		'a plum coat of two pictures, and a violet one owned',
		() =>
			gap(/^pieces.coat/, {
				inspirations: [plumCoat, { ...plumCoat, inspiration: { ...plumCoat.inspiration, id: 'b' } }],
				garments: [
					...garments,
					aGarment({ id: 'violet coat', kind: 'coat', lab: [47, 25, -15], trust: { ...blurred, error: 9 } }),
				],
			}),
	],
	['gap, a colour', 'rust, of which nothing is held', () => gap(/^colour rust/)],
	[
		'gap, stored',
		'rust, with a rust skirt in store',
		() =>
			gap(/^colour rust/, {
				garments: [...garments, aGarment({ id: 'rust skirt', kind: 'skirt', lab: RUST, place: 'stored' })],
			}),
	],
	['gap, a slot', 'one pair of shoes of four wanted', () => gap(/^slot shoes/)],
	['wish', 'a rust jumper wanted since January', () => report().wishes[0]!.sentence],
	[
		'wish, waiting',
		'a rust jumper wanted since last week, beside another wish',
		() =>
			report({
				wishes: [
					aWish({ wantedSince: '2026-03-03' }),
					aWish({ id: 'other', name: 'teal scarf', slot: 'accessory', target: TEAL, wantedSince: '2026-03-01' }),
				],
			}).wishes.find(({ wishId }) => wishId === 'wish')!.sentence,
	],
	['candidate, take', 'a rust jumper for 60', () => candidate()],
	['candidate, think', 'a rust jumper over the limit', () => candidate({ price: 95 })],
	['candidate, leave', 'a lime jumper', () => candidate({ swatches: coloured([85, -40, 75]) })],
	[
		'candidate, ask',
		'a jumper whose colour the photo cannot tell',
		() => candidate({ swatches: coloured([53, 34, 34]), trust: { ...blurred, error: 12 } }),
	],
	[
		'candidate, own',
		'the very photo of an owned jumper',
		() =>
			candidate(
				{},
				{ garments: [...garments, aGarment({ id: 'mine', kind: 'jumper', lab: RUST, photoIds: ['photo'] })] },
			),
	],
	['sorting, keep', 'an oat shirt worn last week', () => sorting('oat shirt')],
	['sorting, store', 'a magenta jumper, wears noted for nine days', () => sorting('loud jumper')],
	[
		'sorting, let go',
		'a magenta jumper last worn three years ago',
		() => sorting('loud jumper', { wears: [...worn('2023-03-01', 'loud jumper'), ...worn('2026-03-01', 'oat shirt')] }),
	],
	['sorting, another season', 'shorts in spring', () => sorting('linen shorts', { garments: [...garments, summer] })],
	[
		'sorting, up to you',
		'a grey skirt not worn for half a year',
		() =>
			sorting('grey skirt', {
				garments: garments.map((one) => ({ ...one, addedAt: '2025-01-01T00:00:00Z' })),
				wears: [...worn('2025-08-01', 'oat shirt'), ...worn('2026-03-01', 'oat shirt')],
				palette: { colours: [aPaletteColour('grey', [63, 0, 0], { spread: 4 })] },
			}),
	],
	[
		'look-back, worn again',
		'a shirt with trousers on two days',
		() =>
			report({
				wears: [...worn('2026-02-01', 'oat shirt', 'ink trousers'), ...worn('2026-02-08', 'oat shirt', 'ink trousers')],
			}).wornOutfits.wornAgain[0]!.sentence,
	],
	[
		'look-back, never combined',
		'a loved shirt and loved boots',
		() =>
			report({
				garments: garments.map((one) => (one === oatShirt || one === inkBoots ? { ...one, loved: 3 as const } : one)),
			}).wornOutfits.neverCombined[0]!.sentence,
	],
	['look-back, never worn', 'trousers that were not worn', () => neverWorn('ink trousers')],
	['look-back, never worn', 'the jumper that goes with nothing', () => neverWorn('loud jumper')],
	[
		'look-back, never worn',
		'shorts, wears noted since last week',
		() => neverWorn('linen shorts', { garments: [...garments, summer] }),
	],
	['look-back', 'one wear noted', () => report().lookBack.sentence],
	['what is held', 'five pieces on the rail', () => report().held.sentence],
];
