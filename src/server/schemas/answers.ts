// Written by `npm run schemas` from the types that answer-types.ts names: change those.
import { Type } from 'typebox';
import type { TwoGarments } from '../../app/decisions/garment-of-two.ts';
import type { PaletteAnswer } from '../../app/decisions/palette-answer.ts';
import type { Door } from '../../app/door.ts';
import type { Everything } from '../../app/exports.ts';
import type { GroundSet } from '../../app/grounds.ts';
import type { IntakeItem } from '../../app/intake-item.ts';
import type { QrPicture } from '../../app/qr-picture.ts';
import type { StaleEntry } from '../../app/refuse-stale.ts';
import type { RestoreAnswer } from '../../app/restore-home.ts';
import type { PairedDevice } from '../../app/sharing.ts';
import type { Status } from '../../app/status.ts';
import type { GarmentImportAnswer } from '../../app/tables/import-garments.ts';
import type { WearImportAnswer } from '../../app/tables/import-wears.ts';
import type { Problem } from '../../app/tables/read-table.ts';
import type { LightTrial } from '../../app/tried-light.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { PointColour } from '../../photo/read-photo.ts';
import type { BinEntry, Decision, PhotoRecord } from '../../store/store.ts';
import type { Enough, OccasionDays } from '../../wardrobe/days/enough.ts';
import type { Fit, SwatchFit } from '../../wardrobe/fit/fit-result.ts';
import type { AxisProfile, StyleProfile } from '../../wardrobe/fit/style.ts';
import type { AxisFit } from '../../wardrobe/fit/style-fit.ts';
import type { SurerLight } from '../../wardrobe/fit/surer-light.ts';
import type { TooClose, Twin } from '../../wardrobe/fit/twins.ts';
import type { AskedColour, Bands, HeldColour, Thread } from '../../wardrobe/gaps/bands.ts';
import type { Gap } from '../../wardrobe/gaps/gap.ts';
import type { MissingPiece } from '../../wardrobe/gaps/missing-piece.ts';
import type { LineUpProof, LineUpResult } from '../../wardrobe/line-up/line-up.ts';
import type { Swap } from '../../wardrobe/line-up/swaps.ts';
import type { WhatIf } from '../../wardrobe/line-up/what-if.ts';
import type { Loner } from '../../wardrobe/pairs/loner.ts';
import type { OutfitRange } from '../../wardrobe/pairs/outfit-range.ts';
import type { Pairing } from '../../wardrobe/pairs/pairings.ts';
import type { Partner } from '../../wardrobe/pairs/partners.ts';
import type { Support } from '../../wardrobe/pairs/support.ts';
import type { KeptColour, PaletteChange } from '../../wardrobe/palette/palette-change.ts';
import type { SeenPiece } from '../../wardrobe/pictures/picture.ts';
import type { PicturesReport, ToldPiece } from '../../wardrobe/pictures/pictures-report.ts';
import type { PieceAnswer } from '../../wardrobe/pictures/piece-answer.ts';
import type { GarmentReport } from '../../wardrobe/season/garment-report.ts';
import type { LookBack } from '../../wardrobe/season/look-back.ts';
import type { NeverWorn } from '../../wardrobe/season/never-worn.ts';
import type { Report } from '../../wardrobe/season/report.ts';
import type { SortingSuggestion } from '../../wardrobe/season/sorting.ts';
import type { Station } from '../../wardrobe/season/stations.ts';
import type { WornOutfits } from '../../wardrobe/season/worn-outfits.ts';
import type { CandidateCheck } from '../../wardrobe/wishes/candidate.ts';
import type { WishStanding } from '../../wardrobe/wishes/wishes.ts';
import type { Garment } from '../../wardrobe/words/garment.ts';
import type { GarmentWear } from '../../wardrobe/words/garment-wears.ts';
import type { Light, LightModel } from '../../wardrobe/words/light.ts';
import type { Palette, PaletteColour } from '../../wardrobe/words/palette-colour.ts';
import type {
	Correction,
	LikelyKind,
	NeutralJudgement,
	NeutralPoint,
	Pattern,
	PhotoQuality,
	PictureBox,
	Piece,
	Reading,
	SeenGround,
	SplitProposal,
	Swatch,
	Trust,
} from '../../wardrobe/words/reading.ts';
import type {
	Inspiration,
	LineUpChoice,
	LineUpWeights,
	Occasion,
	Season,
	SeasonDays,
} from '../../wardrobe/words/season.ts';
import type { PairWord, Wear } from '../../wardrobe/words/wear.ts';
import type { CandidateDetails, Maker, Wish } from '../../wardrobe/words/wish.ts';
import { exact, mapOf, oneOf, oneOfNumbers, told } from './basics.ts';

export const lab65 = Type.Unsafe<Lab65>({
	...Type.Array(Type.Number(), { minItems: 3, maxItems: 3 }),
	title: 'Lab65',
	description:
		'CIELAB for the CIE 1931 2 degree observer and illuminant D65 (ISO/CIE 11664-4): `[L, a, b]`. L in 0..100; a and b about -130..130. The one colour type that is stored, compared and sent.',
});

const slotWords = oneOf(['accessory', 'bottom', 'full', 'legwear', 'outer', 'shoes', 'top']);

export const swatch = Type.Unsafe<Swatch>({
	...exact({
		lab: told(lab65, "The cloth's colour after the light correction."),
		share: told(
			Type.Number(),
			"Share of the photo's clothing (of the frame for a scene), 0..1; a reading's shares sum to 1.",
		),
		slot: told(Type.Union([slotWords, Type.Null()]), 'Where it is worn; `null` for a scene.'),
		name: told(Type.String(), 'Systematic ISCC-NBS name.'),
	}),
	title: 'Swatch',
	description: 'One colour of a photo or garment.',
});

const patternTypeWords = oneOf(['checked', 'mottled', 'plain', 'printed', 'striped']);

export const pattern = Type.Unsafe<Pattern>({
	...exact({
		type: patternTypeWords,
		sure: told(Type.Number(), 'Probability that `type` is right, 0..1.'),
		directionDegrees: Type.Optional(
			told(
				Type.Number(),
				'Direction in which stripes run, degrees 0 (horizontal) .. <180, counter-clockwise; absent where not found.',
			),
		),
		periodPx: Type.Optional(
			told(Type.Number(), 'Distance of one repeat in pixels of the upright picture; absent where not found.'),
		),
	}),
	title: 'Pattern',
	description: 'Pattern of the cloth. `mottled` = melange, tweed, denim.',
});

export const trust = Type.Unsafe<Trust>({
	...exact({
		error: told(
			Type.Number(),
			'Expected error of a swatch, CIEDE2000 units; covers the true error about 80 % of the time.',
		),
		reasons: told(Type.Array(Type.String()), 'Why, in plain words, the weightiest first.'),
		advice: told(Type.Union([Type.Null(), Type.String()]), 'What would help most, or null when nothing needs doing.'),
		untold: Type.Optional(
			told(
				Type.Boolean(),
				'True where nothing tells the light: then lightness errs most by far, and counts less where two photos are compared.',
			),
		),
	}),
	title: 'Trust',
	description: 'How far a reading can be believed.',
});

const kindWords = oneOf([
	'bag',
	'belt',
	'blazer',
	'boots',
	'cardigan',
	'coat',
	'dress',
	'flats',
	'glasses',
	'gloves',
	'hat',
	'heels',
	'hoodie',
	'jacket',
	'jeans',
	'jewellery',
	'jumper',
	'leggings',
	'long-sleeve',
	'one-piece',
	'polo',
	'raincoat',
	'sandals',
	'scarf',
	'shirt',
	'shoes',
	'shorts',
	'skirt',
	'socks',
	't-shirt',
	'tights',
	'top',
	'trainers',
	'trousers',
	'waistcoat',
]);

const placeWords = oneOf(['gone', 'leaving', 'rail', 'stored']);

const yearPartWords = oneOf(['autumn', 'spring', 'summer', 'winter']);

const wayOutWords = oneOf(['give', 'mend', 'recycle', 'sell', 'swap']);

export const garment = Type.Unsafe<Garment>({
	...exact({
		version: Type.Optional(Type.Number()),
		id: Type.String(),
		name: told(
			Type.String(),
			'As the user gave it; of a garment that nobody named, what it was called when last looked at.',
		),
		nameFrom: Type.Optional(
			told(
				oneOf(['looks', 'user']),
				'Who named it: the user, or the program by its looks. Absent in homes older than this field.',
			),
		),
		kind: kindWords,
		kindFrom: told(
			oneOf(['none', 'photo', 'user']),
			"Who named the kind: the user, the photo's reading (a suggestion), or nobody yet (`kind` is then a placeholder).",
		),
		photoIds: told(
			Type.Array(Type.String()),
			'First is the one shown. Several photos of one garment (front, back) are read together.',
		),
		place: placeWords,
		price: told(Type.Union([Type.Null(), Type.Number()]), "In the user's own currency; null = not told."),
		boughtOn: told(Type.Union([Type.Null(), Type.String()]), 'ISO date or null.'),
		yearParts: told(Type.Array(yearPartWords), 'Parts of the year it serves; empty = not told, counts as all.'),
		basic: told(Type.Boolean(), 'Year-round basic: never suggested for storing.'),
		loved: told(
			Type.Union([oneOfNumbers([0, 3, 2, 1]), Type.Null()]),
			'How loved, 0 (not) .. 3 (dearly); null = not told.',
		),
		warmth: told(
			Type.Union([oneOfNumbers([0, 3, 2, 1]), Type.Null()]),
			"0 none .. 3 winter; null = the kind's usual warmth.",
		),
		occasions: Type.Optional(
			told(
				Type.Array(Type.String()),
				'Occasions it serves, by name, where the user said so; absent or empty = what its kind usually serves.',
			),
		),
		condition: oneOf(['good', 'worn', 'worn-out']),
		conditionSince: Type.Optional(
			told(
				Type.String(),
				'ISO date on which that was told; absent where nobody told it, or in a home older than this field.',
			),
		),
		wayOut: Type.Union([wayOutWords, Type.Null()]),
		sortedFor: Type.Optional(
			told(Type.Array(Type.String()), 'Ids of the seasons in whose round of sorting it was decided on; absent = none.'),
		),
		patternByUser: told(Type.Union([patternTypeWords, Type.Null()]), 'Set by the user where the reading is wrong.'),
		notes: Type.String(),
		care: told(Type.String(), 'Care instructions, free text.'),
		addedAt: told(Type.String(), 'ISO 8601 instants.'),
		changedAt: Type.String(),
		swatches: Type.Array(swatch),
		pattern: pattern,
		trust: trust,
	}),
	title: 'Garment',
	description: 'A garment with the colours its photos give; what every judgement takes.',
});

export const twoGarments = Type.Unsafe<TwoGarments>({
	...exact({ garments: Type.Array(garment, { minItems: 2, maxItems: 2 }) }),
	title: 'TwoGarments',
	description: 'What is answered when one entry became two.',
});

const paletteRoleWords = oneOf(['accent', 'base', 'hint', 'main']);

const colourStepWords = oneOf(['bluer', 'darker', 'greener', 'greyer', 'lighter', 'redder', 'stronger', 'yellower']);

export const paletteColour = Type.Unsafe<PaletteColour>({
	...exact({
		id: Type.String(),
		lab: lab65,
		spread: told(Type.Number(), 'Median CIEDE2000 of its members to the centre.'),
		weight: told(Type.Number(), "Share of the palette, 0..1; a palette's weights sum to 1."),
		role: paletteRoleWords,
		name: told(Type.String(), 'ISCC-NBS name.'),
		label: told(Type.String(), "The user's own word for it, or ''."),
		apart: Type.Optional(
			told(
				colourStepWords,
				"What it is beside the first of the palette's colours that share its word; told as the palette is read, never kept. Absent = its word is its own.",
			),
		),
		photos: told(Type.Number(), 'Inspirations that hold it (a colour within CIEDE2000 10).'),
		firmness: told(
			Type.Number(),
			'Share of resampled boards that bring it back, 0..1; under 0.5 = tentative. 1 for colours added by hand.',
		),
		locked: told(Type.Boolean(), 'A locked colour survives re-deriving.'),
		origin: oneOf(['by-hand', 'derived', 'merged', 'split']),
	}),
	title: 'PaletteColour',
	description: 'One colour that a season asks for.',
});

export const palette = Type.Unsafe<Palette>({
	...exact({
		version: Type.Optional(Type.Number()),
		colours: Type.Array(paletteColour),
		removed: Type.Optional(
			told(Type.Array(lab65), 'Colours that the user took out: deriving again leaves them out. Absent = none.'),
		),
	}),
	title: 'Palette',
	description: 'The colours of a direction, base first, hints last, heaviest first within a role.',
});

export const keptColour = Type.Unsafe<KeptColour>({
	...exact({
		before: paletteColour,
		now: paletteColour,
		distance: told(Type.Number(), 'CIEDE2000 between the two.'),
		weightChange: told(Type.Number(), 'Change of its share, -1..1.'),
	}),
	title: 'KeptColour',
	description: 'One palette colour of both years.',
});

export const paletteChange = Type.Unsafe<PaletteChange>({
	...exact({
		kept: Type.Array(keptColour),
		arrived: Type.Array(paletteColour),
		gone: Type.Array(paletteColour),
		keptShare: told(Type.Number(), "Share of this year's palette that last year's held too, 0..1."),
		sentence: Type.String(),
	}),
	title: 'PaletteChange',
	description: "What a season's palette has of last year's same season, what is new and what is gone.",
});

export const paletteAnswer = Type.Unsafe<PaletteAnswer>({
	...exact({ palette: palette, change: Type.Union([Type.Null(), paletteChange]) }),
	title: 'PaletteAnswer',
	description: "A season's palette, beside what it changes against last year's; `change` null where there is none.",
});

export const qrPicture = Type.Unsafe<QrPicture>({
	...exact({ sideModules: Type.Number(), path: Type.String() }),
	title: 'QrPicture',
	description: 'A QR picture as one path of unit squares, for a square drawing of this side.',
});

export const pairedDevice = Type.Unsafe<PairedDevice>({
	...exact({
		id: Type.String(),
		device: told(Type.String(), 'What kind of device it said it was, in plain words.'),
		pairedAt: told(Type.String(), 'ISO instants.'),
		seenAt: Type.String(),
	}),
	title: 'PairedDevice',
	description: 'A paired device as the owner sees it.',
});

export const door = Type.Unsafe<Door>({
	...Type.Union([
		exact({ shared: Type.Literal(false) }),
		exact({
			shared: Type.Literal(true),
			code: Type.String(),
			validForMs: Type.Number(),
			addresses: Type.Array(exact({ address: Type.String(), qr: qrPicture })),
			devices: told(Type.Array(pairedDevice), 'Oldest first.'),
		}),
	]),
	title: 'Door',
	description:
		'What the computer shows of its door: closed, or the code, the addresses to open on a phone, and who came in.',
});

const seasonQuotas = exact({
	top: Type.Number(),
	shoes: Type.Number(),
	accessory: Type.Number(),
	outer: Type.Number(),
	bottom: Type.Number(),
	full: Type.Number(),
	legwear: Type.Number(),
});

const offeredOccasionWords = oneOf(['dressed-up', 'everyday', 'outdoors', 'work']);

export const occasion = Type.Unsafe<Occasion>({
	...exact({
		name: told(Type.String(), "One of the offered names, or the user's own word."),
		like: told(offeredOccasionWords, 'Which of the offered ones it is like, so that kinds are known to serve it.'),
		daysAWeek: told(Type.Number(), 'Days a week, 0..7; those of all occasions sum to at most 7.'),
	}),
	title: 'Occasion',
	description: 'What some days ask of clothes.',
});

export const seasonDays = Type.Unsafe<SeasonDays>({
	...exact({
		coldDay: told(Type.Number(), 'Air temperature of a usual cold and a usual warm day, degrees Celsius.'),
		warmDay: Type.Number(),
		washEveryDays: told(Type.Number(), 'Days from one wash to the next, 1 or more.'),
		wearsPerWash: told(
			exact({
				top: Type.Optional(Type.Number()),
				dress: Type.Optional(Type.Number()),
				shoes: Type.Optional(Type.Number()),
				shirt: Type.Optional(Type.Number()),
				jumper: Type.Optional(Type.Number()),
				hoodie: Type.Optional(Type.Number()),
				cardigan: Type.Optional(Type.Number()),
				waistcoat: Type.Optional(Type.Number()),
				blazer: Type.Optional(Type.Number()),
				jacket: Type.Optional(Type.Number()),
				coat: Type.Optional(Type.Number()),
				raincoat: Type.Optional(Type.Number()),
				trousers: Type.Optional(Type.Number()),
				jeans: Type.Optional(Type.Number()),
				leggings: Type.Optional(Type.Number()),
				shorts: Type.Optional(Type.Number()),
				skirt: Type.Optional(Type.Number()),
				'one-piece': Type.Optional(Type.Number()),
				tights: Type.Optional(Type.Number()),
				socks: Type.Optional(Type.Number()),
				boots: Type.Optional(Type.Number()),
				heels: Type.Optional(Type.Number()),
				sandals: Type.Optional(Type.Number()),
				flats: Type.Optional(Type.Number()),
				trainers: Type.Optional(Type.Number()),
				hat: Type.Optional(Type.Number()),
				scarf: Type.Optional(Type.Number()),
				bag: Type.Optional(Type.Number()),
				belt: Type.Optional(Type.Number()),
				gloves: Type.Optional(Type.Number()),
				glasses: Type.Optional(Type.Number()),
				jewellery: Type.Optional(Type.Number()),
				't-shirt': Type.Optional(Type.Number()),
				polo: Type.Optional(Type.Number()),
				'long-sleeve': Type.Optional(Type.Number()),
			}),
			'Wears before a wash, by kind, where the user wants others than usual.',
		),
		occasions: Type.Array(occasion),
	}),
	title: 'SeasonDays',
	description: 'What the days of a season are like.',
});

export const lineUpWeights = Type.Unsafe<LineUpWeights>({
	...exact({
		pictures: told(Type.Number(), 'Pictures that it makes wearable.'),
		enough: told(Type.Number(), 'Days that it dresses between two washes.'),
		palette: told(Type.Number(), 'Palette that it covers.'),
		fit: Type.Number(),
		loved: Type.Number(),
		outfits: told(Type.Number(), 'Pairs of its pieces that go together, which is what outfits are made of.'),
	}),
	title: 'LineUpWeights',
	description: 'Weights of what a set is worth, each 0..1, shown to the user.',
});

export const season = Type.Unsafe<Season>({
	...exact({
		version: Type.Optional(Type.Number()),
		id: Type.String(),
		name: Type.String(),
		yearPart: told(yearPartWords, 'Recurs every year: notes and palettes of the same part are compared.'),
		startsOn: told(Type.String(), 'ISO dates.'),
		endsOn: Type.String(),
		targetCount: told(Type.Number(), 'Garments wanted in the line-up.'),
		quotas: seasonQuotas,
		days: Type.Optional(
			told(seasonDays, 'What its days are like; absent = as offered for its months, see `daysOfSeason`.'),
		),
		weights: lineUpWeights,
		baseCount: told(
			Type.Union([Type.Null(), Type.Number()]),
			'Palette size asked for; `null` = as many colours as the board holds.',
		),
		colourCount: Type.Union([Type.Null(), Type.Number()]),
		waitingDays: told(Type.Number(), 'Days a wish waits before "new, from makers the user trusts" opens.'),
		notes: told(Type.String(), 'Notes for the same season next year.'),
		feltGaps: told(Type.Array(Type.String()), 'What was missed while wearing, free sentences.'),
		archived: Type.Boolean(),
		addedAt: Type.String(),
	}),
	title: 'Season',
	description: 'One planning period.',
});

export const lineUpChoice = Type.Unsafe<LineUpChoice>({
	...exact({
		version: Type.Optional(Type.Number()),
		seasonId: Type.String(),
		garmentIds: Type.Array(Type.String()),
		mustKeep: Type.Array(Type.String()),
		neverUse: Type.Array(Type.String()),
		gapIds: Type.Optional(
			told(
				Type.Array(Type.String()),
				'The gaps as they stood in the list when the set was chosen or photos were last read: they keep that order until one is worth clearly more. Absent where none were noted yet.',
			),
		),
	}),
	title: 'LineUpChoice',
	description: 'The set chosen for a season, and what the user fixed about it.',
});

export const inspiration = Type.Unsafe<Inspiration>({
	...exact({
		version: Type.Optional(Type.Number()),
		id: Type.String(),
		seasonId: Type.String(),
		photoId: Type.String(),
		title: told(
			Type.String(),
			"As the user gave it; of a picture that nobody named, '' in the store and what it shows where it is read.",
		),
		titleFrom: Type.Optional(told(oneOf(['looks', 'user']), 'Who named it. Absent in homes older than this field.')),
		group: told(Type.String(), "Free name that gathers pictures on the board; '' = none."),
		pieceKinds: Type.Optional(
			told(
				Type.Array(exact({ piece: Type.Number(), kind: kindWords })),
				"What the user said of pieces that the picture shows: `piece` counts the reading's pieces from 0. Absent = nothing.",
			),
		),
		addedAt: Type.String(),
	}),
	title: 'Inspiration',
	description: "A picture in a season's board.",
});

export const wish = Type.Unsafe<Wish>({
	...exact({
		version: Type.Optional(Type.Number()),
		id: Type.String(),
		seasonId: Type.String(),
		name: Type.String(),
		slot: slotWords,
		kind: told(Type.Union([kindWords, Type.Null()]), 'null = any kind of the slot.'),
		target: told(Type.Union([Type.Null(), lab65]), 'Colour looked for; null = any colour of the palette.'),
		tolerance: told(Type.Number(), 'CIEDE2000 around the target that still answers the wish.'),
		yearParts: Type.Array(yearPartWords),
		priceLimit: Type.Union([Type.Null(), Type.Number()]),
		expectedWearsPerYear: told(
			Type.Union([Type.Null(), Type.Number()]),
			'Wears expected in a year, for cost per wear; null = from similar garments.',
		),
		wantedSince: told(Type.String(), 'ISO date since when it is wanted.'),
		state: oneOf(['answered', 'dropped', 'open']),
		paletteColourId: told(Type.Union([Type.Null(), Type.String()]), 'Palette colour of the gap it came from, or null.'),
		seenIn: Type.Optional(
			told(Type.String(), 'Inspiration whose piece it was made from; absent where it was made otherwise.'),
		),
		notes: Type.String(),
	}),
	title: 'Wish',
	description: 'An entry of the wish list.',
});

export const candidateDetails = Type.Unsafe<CandidateDetails>({
	...exact({
		version: Type.Optional(Type.Number()),
		id: Type.String(),
		seasonId: Type.String(),
		photoId: Type.String(),
		name: Type.String(),
		nameFrom: Type.Optional(told(oneOf(['looks', 'user']), 'As in GarmentDetails.nameFrom.')),
		kind: kindWords,
		kindFrom: told(oneOf(['none', 'photo', 'user']), 'As in GarmentDetails.kindFrom.'),
		price: Type.Union([Type.Null(), Type.Number()]),
		used: Type.Boolean(),
		source: Type.String(),
		state: oneOf(['bought', 'open', 'passed']),
		addedAt: Type.String(),
	}),
	title: 'CandidateDetails',
	description: 'A piece found for sale.',
});

export const maker = Type.Unsafe<Maker>({
	...exact({ version: Type.Optional(Type.Number()), id: Type.String(), name: Type.String(), notes: Type.String() }),
	title: 'Maker',
	description: 'A maker the user trusts, for when new is allowed.',
});

export const wear = Type.Unsafe<Wear>({
	...exact({ garmentId: Type.String(), on: told(Type.String(), 'ISO date.') }),
	title: 'Wear',
	description: 'One day a garment was worn.',
});

export const pairWord = Type.Unsafe<PairWord>({
	...exact({ garmentA: Type.String(), garmentB: Type.String(), word: oneOf(['approved', 'refused']) }),
	title: 'PairWord',
	description: 'What the user said of two garments together; wins over every computed support.',
});

export const neutralPoint = Type.Unsafe<NeutralPoint>({
	...exact({
		x: Type.Number(),
		y: Type.Number(),
		lightness: Type.Optional(
			told(
				Type.Number(),
				'CIELAB lightness it has in truth (95 = white paper); without it, decided by how bright it is in the picture.',
			),
		),
		sure: Type.Optional(told(Type.Boolean(), 'The user was asked about it, saw before and after, and said yes.')),
	}),
	title: 'NeutralPoint',
	description: 'A point that the user calls neutral: pixels of the upright picture.',
});

export const correction = Type.Unsafe<Correction>({
	...exact({
		neutrals: Type.Optional(
			told(
				Type.Array(neutralPoint),
				'Points that are neutral in truth: white paper, a grey card, or best one of each.',
			),
		),
		neutral: Type.Optional(
			told(neutralPoint, 'The one neutral of a correction made before there could be two; read as a list of one.'),
		),
		camera: Type.Optional(
			told(
				oneOf(['camera', 'phone']),
				'What took the picture, where the file itself does not say it or says it wrongly.',
			),
		),
		byHand: Type.Optional(
			told(
				exact({ warmer: Type.Number(), lighter: Type.Number() }),
				'Steps by hand: warmer (+) / cooler (-) and lighter (+) / darker (-), each -10..10.',
			),
		),
		lightGroup: Type.Optional(
			told(
				Type.String(),
				'Name of the "same light" group this photo was put in; photos of one group share one correction.',
			),
		),
		ground: Type.Optional(
			told(
				Type.Union([Type.Null(), Type.String()]),
				'Word that all photos of one ground share, null for a ground that no other photo shows; without it, by how it looks.',
			),
		),
		mask: Type.Optional(
			told(Type.Boolean(), "True where a corrected mask is kept with the photo; it wins over the parser's outline."),
		),
	}),
	title: 'Correction',
	description: 'What the user told the program about one photo. All optional; removing an entry undoes it.',
});

export const likelyKind = Type.Unsafe<LikelyKind>({
	...exact({ kind: kindWords, probability: Type.Number() }),
	title: 'LikelyKind',
	description: 'A kind that a piece may be, with its probability, 0..1.',
});

const pieceFields = {
	slot: told(slotWords, 'The slot it is worn in: a cardigan over a shirt lies in `outer`.'),
	kind: told(
		Type.Union([kindWords, Type.Null()]),
		'What it is, where that is sure enough to be said or the user told it; null = one of `kinds`.',
	),
	kinds: told(Type.Array(likelyKind), 'What it may be, likeliest first; empty where only its slot is known.'),
	share: told(Type.Number(), 'Share of the frame, 0..1.'),
	pattern: pattern,
	swatches: told(
		Type.Array(
			exact({
				name: told(Type.String(), 'Systematic ISCC-NBS name.'),
				share: told(
					Type.Number(),
					"Share of the photo's clothing (of the frame for a scene), 0..1; a reading's shares sum to 1.",
				),
				lab: told(lab65, "The cloth's colour after the light correction."),
			}),
		),
		'Its colours, heaviest first; shares sum to 1 over the piece. At least one.',
	),
};

export const piece = Type.Unsafe<Piece>({
	...exact(pieceFields),
	title: 'Piece',
	description: 'One worn thing that a picture shows.',
});

export const pictureBox = Type.Unsafe<PictureBox>({
	...exact({ left: Type.Number(), top: Type.Number(), right: Type.Number(), bottom: Type.Number() }),
	title: 'PictureBox',
	description: 'A part of a picture: its edges as shares of width and height from the left and from the top, 0..1.',
});

export const splitProposal = Type.Unsafe<SplitProposal>({
	...exact({
		pieces: told(Type.Number(), 'Separate pieces seen, 2 or more: a pair of shoes is one.'),
		boxes: told(
			Type.Array(pictureBox, { minItems: 2, maxItems: 2 }),
			'A box round each part; where more than two pieces are seen, one part holds the others.',
		),
	}),
	title: 'SplitProposal',
	description: 'What a photo without a person may be cut into, each part a photo of its own.',
});

const lightSourceWords = oneOf(['by-hand', 'estimate', 'ground', 'group', 'neutral-found', 'neutral-pointed', 'none']);

export const lightModel = Type.Unsafe<LightModel>({
	...exact({
		white: told(
			Type.Array(Type.Number(), { minItems: 3, maxItems: 3 }),
			'What a neutral surface looks like in the photo: CIE XYZ with Y = 1. Bradford takes it to D65.',
		),
		full: told(Type.Number(), 'Luminance in the photo, 0..1, at which the curve stands at 1.'),
		steepness: told(Type.Number(), 'Steepness of the curve, 1 = none.'),
		press: told(Type.Number(), 'How much the lights were pressed together, 0 = not at all.'),
		gain: told(Type.Number(), 'True luminance of a surface that stands at `full`.'),
		chroma: told(
			Type.Number(),
			'What a* and b* are multiplied with in the end: under 1 takes out the saturation that phones add.',
		),
		tintGain: Type.Optional(
			told(
				Type.Number(),
				'Plain gain of light that moves a* and b*, where the curve moves lightness alone; absent where they go along with it, the ratios of the channels kept.',
			),
		),
	}),
	title: 'LightModel',
	description:
		"How a photo's colours are brought back to daylight; a plain record, so that it can be stored and applied to stored colours.",
});

export const light = Type.Unsafe<Light>({
	...exact({
		source: lightSourceWords,
		cast: told(
			Type.Union([Type.Null(), lab65]),
			'Colour that a neutral surface has in the uncorrected photo, or null if unknown.',
		),
		strength: told(Type.Number(), '1 where the light is known and taken out, 0 where it is not.'),
		reason: told(Type.String(), 'One sentence in plain words.'),
		model: Type.Optional(
			told(
				Type.Union([Type.Null(), lightModel]),
				'What the colours went through; null for as they are. Absent in readings made before it was kept.',
			),
		),
		error: Type.Optional(
			told(
				Type.Number(),
				'Error of a good photo whose light is known this way, CIEDE2000, that four photos in five stay below; absent as above.',
			),
		),
	}),
	title: 'Light',
	description: 'The light the photo was taken in, and what was done about it.',
});

export const photoQuality = Type.Unsafe<PhotoQuality>({
	...exact({
		clothesShare: told(Type.Number(), 'Clothes as a share of the frame, 0..1.'),
		clippedShare: told(
			Type.Number(),
			"Share of the clothes' pixels clipped in at least one channel: burnt out, or a colour beyond what the file can hold.",
		),
		brightest: told(
			Type.Number(),
			'Encoded luminance 0..1 that the brightest hundredth of the frame reaches: low = underexposed.',
		),
		sharpness: told(
			Type.Number(),
			'Step between neighbours that one pixel in two hundred exceeds, as a share of the range: low for a blurred picture.',
		),
	}),
	title: 'PhotoQuality',
	description: 'What of a photo, besides its lamp, can spoil the colour of the clothes in it.',
});

export const neutralJudgement = Type.Unsafe<NeutralJudgement>({
	...exact({
		answer: told(oneOf(['asked', 'refused', 'taken']), 'Taken; taken for now, with a question; or not taken.'),
		kind: told(oneOf(['grey', 'white']), 'What it was taken for, or would be.'),
		sentence: told(Type.String(), 'Why, in plain words, and what to do where it was not simply taken.'),
		model: told(
			lightModel,
			"What the photo's colours would go through by this neutral alone, also where it was refused: to be looked at, before and after.",
		),
	}),
	title: 'NeutralJudgement',
	description: 'What is made of a point that the user calls neutral.',
});

export const seenGround = Type.Unsafe<SeenGround>({
	...exact({
		lab: told(lab65, 'Its colour where it is lit, uncorrected.'),
		share: told(Type.Number(), 'Share of the frame, 0..1.'),
		texture: told(
			Type.Array(Type.Number()),
			'How it changes from place to place: numbers that lamp and exposure hardly touch (`textureOf`).',
		),
	}),
	title: 'SeenGround',
	description: 'The bed, floor or wall that clothes lie on or hang before, as one photo sees it.',
});

export const reading = Type.Unsafe<Reading>({
	...exact({
		photoKind: oneOf(['scene', 'single', 'worn']),
		swatches: told(Type.Array(swatch), 'Corrected swatches, heaviest first.'),
		uncorrected: told(Type.Array(lab65), 'The same swatches before the light correction, index by index.'),
		kindGuesses: told(
			Type.Array(likelyKind),
			'Suggested kinds for a single garment, likeliest first; empty unless `photoKind` is `single`.',
		),
		pattern: pattern,
		patternBySlot: told(
			exact({
				top: Type.Optional(pattern),
				shoes: Type.Optional(pattern),
				accessory: Type.Optional(pattern),
				outer: Type.Optional(pattern),
				bottom: Type.Optional(pattern),
				full: Type.Optional(pattern),
				legwear: Type.Optional(pattern),
			}),
			"Pattern of each slot seen (for style profiles); the whole clothing's when only one slot is seen.",
		),
		pieces: Type.Optional(
			told(
				Type.Array(piece),
				'What is worn or laid out in the picture, thing by thing, the largest first; absent in older readings and for one garment.',
			),
		),
		proposal: Type.Optional(
			told(
				splitProposal,
				'How the photo may be split, where it shows several garments and nobody who wears them; absent in older readings and for one garment.',
			),
		),
		light: light,
		ownLight: Type.Optional(
			told(
				light,
				'What the photo by itself says of its light, before a group, a ground or the hand; absent in older readings.',
			),
		),
		trust: trust,
		quality: Type.Optional(
			told(photoQuality, 'What of the photo, besides its light, can spoil the colours; absent in older readings.'),
		),
		neutrals: Type.Optional(
			told(
				Type.Array(neutralJudgement),
				'What was made of each neutral the user pointed at, in their order; absent where none was.',
			),
		),
		background: told(
			Type.Union([Type.Null(), lab65]),
			'Median colour of what is neither clothes nor person, uncorrected: the bed or floor; null for a scene or where nothing of it is seen.',
		),
		ground: Type.Optional(
			told(
				Type.Union([Type.Null(), seenGround]),
				'The ground that one garment lies on or hangs before; null where little is seen of it, absent in older readings and for anything else.',
			),
		),
		widthPx: told(Type.Number(), 'Upright picture size in pixels.'),
		heightPx: Type.Number(),
		takenAt: told(Type.Union([Type.Null(), Type.String()]), 'EXIF date, ISO 8601 local without zone, or null.'),
	}),
	title: 'Reading',
	description: 'What the photo pipeline says of one photo. Deterministic: same bytes and correction, same reading.',
});

export const photoRecord = Type.Unsafe<PhotoRecord>({
	...exact({
		id: told(Type.String(), "SHA-256 of the original's bytes, hex: the same photo twice is one record."),
		originalName: told(Type.String(), "The user's file name, shown as text only."),
		mediaType: Type.String(),
		sizeBytes: Type.Number(),
		addedAt: Type.String(),
		status: oneOf(['failed', 'read', 'waiting']),
		failure: Type.Union([Type.Null(), exact({ reason: Type.String(), message: Type.String() })]),
		correction: correction,
		version: told(Type.Number(), 'Raised by every correction; part of the addresses of derived pictures.'),
		reading: Type.Union([Type.Null(), reading]),
	}),
	title: 'PhotoRecord',
	description: 'A photo as kept: the untouched original by content hash, and what was read of it.',
});

export const everything = Type.Unsafe<Everything>({
	...exact({
		seasons: Type.Array(season),
		palettes: told(mapOf(Type.Union([Type.Null(), palette])), 'By season; null where it has none.'),
		lineUps: mapOf(Type.Union([Type.Null(), lineUpChoice])),
		garments: Type.Array(garment),
		inspirations: Type.Array(inspiration),
		wishes: Type.Array(wish),
		candidates: Type.Array(candidateDetails),
		makers: Type.Array(maker),
		wears: Type.Array(wear),
		pairWords: Type.Array(pairWord),
		photos: Type.Array(photoRecord),
	}),
	title: 'Everything',
	description: 'What everything holds.',
});

export const groundSet = Type.Unsafe<GroundSet>({
	...exact({
		lab: told(lab65, 'Its colour, as agreed by the photos, or as measured where some have a white or grey in them.'),
		measuredBy: told(Type.Array(Type.String()), 'Photos whose own white or grey measured it.'),
		measuredError: told(
			Type.Union([Type.Null(), Type.Number()]),
			'Error of the surest of these, CIEDE2000, or null where there is none.',
		),
		unused: told(
			Type.Union([oneOf(['dark', 'few', 'vivid']), Type.Null()]),
			'Why it is not used, or null where it is.',
		),
		photoIds: told(Type.Array(Type.String()), 'In the order of their ids.'),
		told: told(Type.Boolean(), 'Whether the user said that some of them share it.'),
	}),
	title: 'GroundSet',
	description: 'Photos that show one bed, floor or wall, and what is made of it.',
});

export const intakeItem = Type.Unsafe<IntakeItem>({
	...Type.Union([
		exact({
			name: Type.String(),
			ok: Type.Literal(true),
			photoId: Type.String(),
			entryId: Type.String(),
			keptBefore: told(Type.Boolean(), 'Whether the home had the photo already.'),
		}),
		exact({ name: Type.String(), ok: Type.Literal(false), reason: Type.String(), message: Type.String() }),
	]),
	title: 'IntakeItem',
	description: 'What became of one uploaded file.',
});

export const staleEntry = Type.Unsafe<StaleEntry>({
	...exact({
		kind: oneOf(['candidate', 'garment', 'inspiration', 'line-up', 'maker', 'palette', 'photo', 'season', 'wish']),
		id: Type.String(),
		fields: Type.Array(Type.String()),
		now: Type.Object({}),
	}),
	title: 'StaleEntry',
	description: 'An entry that was changed by somebody else since it was seen: which fields, and what it is now.',
});

export const restoreAnswer = Type.Unsafe<RestoreAnswer>({
	...exact({
		files: told(Type.Number(), 'Files of the archive, all of them checked.'),
		findings: told(Type.Array(Type.String()), 'What was put right in it.'),
		setAside: told(Type.String(), 'Folder beside the home that keeps the home as it was.'),
	}),
	title: 'RestoreAnswer',
	description: 'What a restore is about to do: the files that were checked, and where the home as it was is kept.',
});

export const status = Type.Unsafe<Status>({
	...exact({
		photos: exact({ read: Type.Number(), failed: Type.Number(), waiting: Type.Number() }),
		garments: Type.Number(),
		seasons: Type.Number(),
		sharing: told(Type.Boolean(), 'Whether devices of the local network can be let in.'),
		findings: told(Type.Array(Type.String()), 'What start-up found and mended, one sentence each.'),
	}),
	title: 'Status',
	description: 'What statusOf tells.',
});

export const problem = Type.Unsafe<Problem>({
	...exact({ line: Type.Number(), message: Type.String() }),
	title: 'Problem',
	description: 'A line of a table that cannot be taken, and why; line 1 is the first of the file.',
});

export const garmentImportAnswer = Type.Unsafe<GarmentImportAnswer>({
	...exact({
		encoding: oneOf(['UTF-16', 'UTF-8', 'Windows-1252']),
		separator: oneOf(['comma', 'semicolon', 'tab']),
		added: Type.Number(),
		addedNames: Type.Array(Type.String()),
		likeOthers: told(
			Type.Number(),
			'Of the added ones: how many have the name and kind of a garment that is there already.',
		),
		changed: Type.Number(),
		changedNames: Type.Array(exact({ name: Type.String(), columns: Type.Array(Type.String()) })),
		unchanged: Type.Number(),
		problems: told(Type.Array(problem), 'The first hundred; `problemCount` says how many there are.'),
		problemCount: Type.Number(),
	}),
	title: 'GarmentImportAnswer',
	description: 'What an import of garments does, as told to the user: how many of each, and the first of them by name.',
});

export const wearImportAnswer = Type.Unsafe<WearImportAnswer>({
	...exact({
		encoding: oneOf(['UTF-16', 'UTF-8', 'Windows-1252']),
		separator: oneOf(['comma', 'semicolon', 'tab']),
		added: Type.Number(),
		notedBefore: told(Type.Number(), 'Lines of wears that are noted already.'),
		problems: told(Type.Array(problem), 'The first hundred; `problemCount` says how many there are.'),
		problemCount: Type.Number(),
	}),
	title: 'WearImportAnswer',
	description: 'What an import of wears does, as told to the user.',
});

export const lightTrial = Type.Unsafe<LightTrial>({
	...exact({ neutrals: Type.Array(neutralJudgement), light: light, trust: trust, swatches: Type.Array(swatch) }),
	title: 'LightTrial',
	description: 'What a correction by neutrals would do, before anything is kept.',
});

export const pointColour = Type.Unsafe<PointColour>({
	...exact({ x: Type.Number(), y: Type.Number(), lab: lab65, uncorrected: lab65, name: Type.String() }),
	title: 'PointColour',
});

export const binEntry = Type.Unsafe<BinEntry>({
	...exact({
		id: Type.String(),
		what: oneOf(['candidate', 'garment', 'inspiration', 'season', 'wish']),
		name: Type.String(),
		deletedAt: Type.String(),
	}),
	title: 'BinEntry',
	description: 'A deleted entry in the bin, kept 90 days.',
});

export const decision = Type.Unsafe<Decision>({
	...exact({ id: Type.Number(), at: Type.String(), sentence: Type.String(), undone: Type.Boolean() }),
	title: 'Decision',
	description: 'One undoable decision.',
});

export const outfitRange = Type.Unsafe<OutfitRange>({
	...exact({ likely: Type.Number(), from: Type.Number(), to: Type.Number() }),
	title: 'OutfitRange',
	description:
		'A number with what other photos of the same clothes would make of it in eight cases of ten; `from` and `to` in steps that a person can tell apart.',
});

export const lineUpProof = Type.Unsafe<LineUpProof>({
	...Type.Union([
		exact({ kind: oneOf(['best-possible']) }),
		exact({ kind: oneOf(['within']), percent: Type.Number() }),
		exact({ kind: oneOf(['best-found']) }),
	]),
	title: 'LineUpProof',
	description: 'How good the set is known to be.',
});

const lineUpResultOwn = {
	garmentIds: told(Type.Array(Type.String()), 'By slot, then those to prefer on a tie first.'),
	countBySlot: seasonQuotas,
	openBySlot: told(seasonQuotas, 'Places that stay open: nothing left is worth one. Each may become a wish.'),
	outfits: told(outfitRange, "Outfits for the season's days."),
	parts: told(
		exact({
			pictures: Type.Number(),
			palette: Type.Number(),
			fit: Type.Number(),
			outfits: Type.Number(),
			enough: Type.Number(),
			loved: Type.Number(),
		}),
		'The parts of what it is worth, 0..1 each, before their weights.',
	),
	objective: Type.Number(),
	proof: lineUpProof,
	sentence: Type.String(),
	problems: told(Type.Array(Type.String()), 'What of the wishes cannot be met, and by how much; empty when all is.'),
};

export const lineUpResult = Type.Unsafe<LineUpResult>({
	...exact({
		...lineUpResultOwn,
		better: told(
			Type.Union([
				Type.Null(),
				exact({
					...lineUpResultOwn,
					better: told(
						Type.Null(),
						'A set that is worth more than the one that was to be proven; null where there is none, or none was to be proven.',
					),
				}),
			]),
			'A set that is worth more than the one that was to be proven; null where there is none, or none was to be proven.',
		),
	}),
	title: 'LineUpResult',
});

export const swap = Type.Unsafe<Swap>({
	...exact({
		garmentId: Type.String(),
		outfits: told(outfitRange, "Outfits for the season's days, and how many more or fewer that is."),
		outfitsChange: outfitRange,
		coveredShare: told(
			Type.Number(),
			'How much of what the palette asks is covered, 0..1, and by how much that changes.',
		),
		coveredChange: Type.Number(),
		sentence: Type.String(),
	}),
	title: 'Swap',
	description: "What the set would be with another garment in one garment's place.",
});

export const gap = Type.Unsafe<Gap>({
	...exact({
		id: told(Type.String(), 'Stays the same while board, palette and quotas do.'),
		kind: told(
			oneOf(['colour', 'piece', 'slot']),
			'A piece that pictures wear, a palette colour of which too little is held, or a slot with too few pieces.',
		),
		slot: slotWords,
		name: told(Type.Union([Type.Null(), Type.String()]), 'Of a piece: what it is called; null for the others.'),
		pieceKind: told(Type.Union([kindWords, Type.Null()]), 'The kind that the pictures wear; null where none is known.'),
		lab: told(
			Type.Union([Type.Null(), lab65]),
			"Its colour: the piece's own, else that of the palette; null for a slot without a palette.",
		),
		spread: told(Type.Number(), 'CIEDE2000 from that colour to the farthest one that it stands for.'),
		paletteColourId: told(
			Type.Union([Type.Null(), Type.String()]),
			'The palette colour that it belongs to; for a slot gap the one that would add most outfits; null where there is none.',
		),
		missing: told(
			Type.Number(),
			'Piece: pictures in which nothing owned answers it. Colour: the part of it that is not covered, 0..1. Slot: pieces missing.',
		),
		pictures: told(
			Type.Array(Type.String()),
			'The pictures that show it and that nothing owned answers, by inspiration; none for the others.',
		),
		completes: told(Type.Number(), 'Pictures that one such piece would make wearable.'),
		completesLikely: told(
			Type.Number(),
			"The same as a number that reckons with the photos' errors: what the order is by.",
		),
		shownIn: told(Type.Number(), 'Pictures that show such a piece, owned or not; 0 for the others.'),
		weight: told(
			Type.Number(),
			"What the board alone gives it: share of the board's cloth, of the palette; 0 for a slot.",
		),
		paletteShare: told(Type.Number(), 'Share of the whole palette that is not covered in its colour, 0..1.'),
		outfitsAdded: told(outfitRange, "Outfits for the season's days that one such piece would add."),
		tentative: told(Type.Boolean(), 'Whether other pictures might not bring its colour back: such gaps come last.'),
		storedFirst: told(
			Type.Union([Type.Null(), Type.String()]),
			'A stored garment, in season, that would fill it at no cost; null where there is none.',
		),
		sentence: Type.String(),
	}),
	title: 'Gap',
	description: 'What the season asks for and the wardrobe does not hold.',
});

const whatIfBefore = exact({
	garmentIds: Type.Array(Type.String()),
	outfits: told(outfitRange, "Outfits for the season's days."),
	coveredShare: told(Type.Number(), 'How much of what the palette asks is covered, 0..1.'),
	gaps: Type.Array(gap),
});

export const whatIf = Type.Unsafe<WhatIf>({
	...exact({
		before: whatIfBefore,
		after: whatIfBefore,
		outfitsChange: outfitRange,
		coveredChange: Type.Number(),
		filled: told(Type.Array(gap), 'Gaps that the change fills, and gaps that it opens.'),
		opened: Type.Array(gap),
		sentence: Type.String(),
	}),
	title: 'WhatIf',
	description: 'A change to a set, without searching.',
});

const supportKindWords = oneOf(['approved', 'base', 'echo', 'inspired', 'no', 'palette', 'unproven', 'worn']);

export const support = Type.Unsafe<Support>({
	...exact({ kind: supportKindWords, sentence: Type.String() }),
	title: 'Support',
	description: 'Why two garments go together, or that nothing says so.',
});

export const partner = Type.Unsafe<Partner>({
	...exact({
		garmentId: Type.String(),
		name: Type.String(),
		slot: slotWords,
		support: support,
		distance: told(Type.Number(), 'CIEDE2000 of the nearest of their colours, greys taken as exact greys.'),
	}),
	title: 'Partner',
	description: 'A garment of a complementary slot and what speaks for wearing the two together.',
});

const styleAxisWords = oneOf(['lightness', 'pattern', 'vividness', 'warmth']);

export const axisProfile = Type.Unsafe<AxisProfile>({
	...exact({
		axis: styleAxisWords,
		mean: told(
			Type.Union([Type.Null(), Type.Number()]),
			'Mean over the pictures, and the range that holds the middle 80 % of them. `null` where no picture tells.',
		),
		low: Type.Union([Type.Null(), Type.Number()]),
		high: Type.Union([Type.Null(), Type.Number()]),
		photos: told(Type.Number(), 'Pictures that tell.'),
	}),
	title: 'AxisProfile',
	description: 'Where the inspirations lie on one axis.',
});

const kindFamilyWords = oneOf([
	'bag',
	'belt',
	'boots',
	'coat',
	'dress',
	'glasses',
	'gloves',
	'hat',
	'heels',
	'jacket',
	'jewellery',
	'knit',
	'legwear',
	'low shoes',
	'one-piece',
	'sandals',
	'scarf',
	'shirt',
	'shorts',
	'skirt',
	'tee',
	'trousers',
	'waistcoat',
]);

export const styleProfile = Type.Unsafe<StyleProfile>({
	...exact({
		photos: Type.Number(),
		slots: told(seasonQuotas, 'Share of the pictures with people that show the slot, 0..1, for every slot.'),
		wornPhotos: told(Type.Number(), 'Pictures of people behind `slots`.'),
		kinds: told(
			Type.Array(exact({ kind: kindWords, share: Type.Number() })),
			'Share of the pictures of single garments for each kind seen, likeliest kind taken.',
		),
		axes: Type.Array(axisProfile),
		families: told(
			Type.Array(exact({ family: kindFamilyWords, axes: Type.Array(axisProfile) })),
			'The same of the pieces of one family of kinds, so that coats are compared with coats; families that pictures show.',
		),
		contrast: told(
			Type.Union([Type.Null(), exact({ mean: Type.Number(), low: Type.Number(), high: Type.Number() })]),
			'CIEDE2000 between the main colours of the parts of an outfit: mean over the pictures of people; `null` without such pictures.',
		),
	}),
	title: 'StyleProfile',
	description: "What a season's inspirations have in common besides their palette.",
});

export const pairing = Type.Unsafe<Pairing>({
	...exact({
		slotA: slotWords,
		labA: lab65,
		slotB: slotWords,
		labB: lab65,
		kindA: told(
			Type.Union([kindWords, Type.Null()]),
			'The kinds that most of its pictures wear; null where none is sure.',
		),
		kindB: Type.Union([kindWords, Type.Null()]),
		photos: told(Type.Number(), 'Pictures that show it.'),
	}),
	title: 'Pairing',
	description:
		'Two colours that the inspirations wear together, each in its slot. Slot A comes before slot B in the order of `SLOTS`.',
});

const verdictWords = oneOf(['fits', 'near', 'off', 'unsure']);

export const swatchFit = Type.Unsafe<SwatchFit>({
	...exact({
		swatch: swatch,
		paletteColourId: told(
			Type.Union([Type.Null(), Type.String()]),
			'The palette colour that it counts most for; `null` for an empty palette.',
		),
		distance: told(Type.Number(), "CIEDE2000 to that colour's centre."),
		within: told(Type.Boolean(), "Whether it counts as that colour: no further than the colour's reach."),
		score: told(Type.Number(), '0..1, see `fitScore`.'),
		sentence: Type.String(),
	}),
	title: 'SwatchFit',
	description: 'One swatch against the palette.',
});

export const fit = Type.Unsafe<Fit>({
	...exact({
		percent: told(
			Type.Number(),
			"0..100: area-weighted mean of the swatches' scores; 0 where there is nothing to compare.",
		),
		low: told(
			Type.Number(),
			"What it could be within the photo's expected error, towards or away from the palette: holds about 80 % of the time, as the error does.",
		),
		high: Type.Number(),
		verdict: verdictWords,
		likely: told(
			oneOf(['fits', 'near', 'off']),
			'The verdict that `percent` alone would give: the best guess behind an `unsure`.',
		),
		sentence: Type.String(),
		swatches: Type.Array(swatchFit),
	}),
	title: 'Fit',
	description: 'How far a garment, wish or candidate lies within the palette.',
});

export const axisFit = Type.Unsafe<AxisFit>({
	...exact({
		axis: oneOf(['lightness', 'pattern', 'slot', 'vividness', 'warmth']),
		position: told(
			oneOf(['beside', 'far', 'unknown', 'within']),
			'`within` the middle 80 % of the pictures, `beside` up to half that range outside it, `far` beyond; `unknown` where either side does not tell.',
		),
		value: Type.Union([Type.Null(), Type.Number()]),
		sentence: Type.String(),
	}),
	title: 'AxisFit',
	description: 'How one garment lies on one axis of the inspirations.',
});

export const loner = Type.Unsafe<Loner>({
	...exact({
		garmentId: Type.String(),
		rank: told(Type.Number(), '1 = the most alone.'),
		flagged: told(
			Type.Boolean(),
			'True for at most three, the most alone of those for which it holds in 70 % of re-reads.',
		),
		aloneness: told(Type.Number(), 'How alone, see `alonenessOf`.'),
		nearestDistance: told(Type.Number(), 'CIEDE2000 to the nearest main colour of a possible partner.'),
		carrierId: told(Type.String(), 'The possible partner that could carry it.'),
		possiblePartners: Type.Number(),
		held: told(
			Type.Number(),
			"Share of re-reads within the photos' trust in which it holds, 0..1; 0 where it does not hold even as read.",
		),
		sureness: told(oneOf(['surer', 'unsure']), '`surer` where it holds in nearly all re-reads.'),
		sentence: told(Type.String(), 'A question, never a verdict.'),
	}),
	title: 'Loner',
	description: 'How alone a coloured garment outside the palette stands.',
});

export const twin = Type.Unsafe<Twin>({
	...exact({
		garmentA: Type.String(),
		garmentB: Type.String(),
		distance: told(
			Type.Number(),
			'CIEDE2000 of their main colours; lightness counts less where the light of one photo is not told.',
		),
		chance: told(Type.Number(), 'How likely they are one colour, 0..1, see `twinChances`.'),
		sureness: told(
			oneOf(['alike', 'maybe']),
			'`alike` up to SAME_SIDE_BY_SIDE where the photos can tell that; else `maybe`.',
		),
		sentence: Type.String(),
	}),
	title: 'Twin',
	description: 'Two pieces of one kind that are likely the same colour.',
});

export const garmentWear = Type.Unsafe<GarmentWear>({
	...exact({
		garmentId: Type.String(),
		wears: Type.Number(),
		wearsThisYear: told(Type.Number(), 'Wears in the twelve months up to today.'),
		lastWorn: told(Type.Union([Type.Null(), Type.String()]), 'ISO date; null = never noted.'),
		unwornDays: told(Type.Union([Type.Null(), Type.Number()]), 'Days since; null = never noted.'),
		costPerWear: told(Type.Union([Type.Null(), Type.Number()]), 'Price by wears; null where either is not known.'),
		sentence: Type.String(),
	}),
	title: 'GarmentWear',
	description: 'What the wears say of one garment, over the whole time noted.',
});

export const sortingSuggestion = Type.Unsafe<SortingSuggestion>({
	...exact({
		garmentId: Type.String(),
		suggestion: oneOf(['keep', 'let-go', 'store', 'undecided']),
		reasons: told(Type.Array(Type.String()), 'The weightiest first.'),
		wayOut: told(
			Type.Union([wayOutWords, Type.Null()]),
			"Way out for a garment that is let go, the user's own where chosen; else null.",
		),
		sentence: Type.String(),
	}),
	title: 'SortingSuggestion',
	description: 'What the program would do with a garment; the user decides.',
});

export const garmentReport = Type.Unsafe<GarmentReport>({
	...exact({
		garmentId: Type.String(),
		name: Type.String(),
		slot: slotWords,
		place: placeWords,
		fit: fit,
		style: Type.Array(axisFit),
		partnerCount: Type.Number(),
		partners: told(Type.Array(partner), 'The best few.'),
		loner: Type.Union([Type.Null(), loner]),
		twins: Type.Array(twin),
		wear: garmentWear,
		sorting: sortingSuggestion,
	}),
	title: 'GarmentReport',
	description: 'Everything said of one garment.',
});

export const surerLight = Type.Unsafe<SurerLight>({
	...exact({
		unsure: told(Type.Number(), 'Pieces that are unsure because of what their photos err by.'),
		clearWith: Type.Array(exact({ aid: oneOf(['both', 'card', 'paper']), pieces: Type.Number() })),
		sentence: told(Type.Union([Type.Null(), Type.String()]), 'Null where nothing would be gained.'),
	}),
	title: 'SurerLight',
	description: 'What a sheet of paper and a grey card would buy: how many pieces that are unsure now would be clear.',
});

export const tooClose = Type.Unsafe<TooClose>({
	...exact({ garmentIds: Type.Array(Type.String()), sentence: Type.String() }),
	title: 'TooClose',
	description:
		'Pieces of one kind that their photos do not tell apart, and of which nobody can say whether they are twins.',
});

export const askedColour = Type.Unsafe<AskedColour>({
	...exact({ paletteColourId: Type.String(), amount: Type.Number(), covered: Type.Number(), missing: Type.Number() }),
	title: 'AskedColour',
	description: 'A palette colour as the season asks for it. Amounts are shares of all that is asked.',
});

export const heldColour = Type.Unsafe<HeldColour>({
	...exact({
		id: Type.String(),
		lab: lab65,
		name: Type.String(),
		amount: Type.Number(),
		surplus: told(Type.Number(), 'What of it answers nothing that is asked.'),
		garmentIds: told(Type.Array(Type.String()), 'Garments that hold it, most of it first.'),
	}),
	title: 'HeldColour',
	description: 'A colour that the garments hold. Amounts are shares of all that is held.',
});

export const thread = Type.Unsafe<Thread>({
	...exact({ heldId: Type.String(), paletteColourId: Type.String(), amount: Type.Number() }),
	title: 'Thread',
	description: 'Held colour that covers an asked one.',
});

export const bands = Type.Unsafe<Bands>({
	...exact({ asked: Type.Array(askedColour), held: Type.Array(heldColour), threads: Type.Array(thread) }),
	title: 'Bands',
	description:
		'What is asked for above, what is held below, and what covers what: both bands have length 1 (0 where there is nothing).',
});

export const occasionDays = Type.Unsafe<OccasionDays>({
	...exact({ name: Type.String(), asked: Type.Number(), dressed: Type.Number() }),
	title: 'OccasionDays',
	description: 'How an occasion stands between two washes.',
});

export const enough = Type.Unsafe<Enough>({
	...exact({
		askedDays: told(
			Type.Number(),
			'Days between two washes that are asked for and that the clothes dress, all occasions together.',
		),
		dressedDays: Type.Number(),
		topDays: told(Type.Number(), 'Days that the tops, bottoms and full pieces last, whatever the occasion.'),
		bottomDays: Type.Number(),
		fullDays: Type.Number(),
		occasions: told(Type.Array(occasionDays), 'Each occasion by itself, as if the others could wait.'),
		sentence: Type.String(),
	}),
	title: 'Enough',
	description: 'How long clothes last between two washes.',
});

export const missingPiece = Type.Unsafe<MissingPiece>({
	...exact({
		slot: slotWords,
		paletteColourId: Type.String(),
		outfitsAdded: told(outfitRange, "Outfits for the season's days that it would add."),
		shareOfBest: told(
			Type.Number(),
			'The same as a share of what a piece that goes with everything would add, 0..1; 0 where even that adds nothing.',
		),
	}),
	title: 'MissingPiece',
	description: 'What one more piece of a slot in a palette colour would add.',
});

export const seenPiece = Type.Unsafe<SeenPiece>({
	...exact({ ...pieceFields, place: Type.Number(), told: Type.Boolean() }),
	title: 'SeenPiece',
	description: "A piece of a picture with its place among the reading's pieces, and whether somebody told its kind.",
});

export const pieceAnswer = Type.Unsafe<PieceAnswer>({
	...exact({
		degree: oneOf(['has it', 'missing', 'near it']),
		distance: told(
			Type.Union([Type.Null(), Type.Number()]),
			'CIEDE2000 between their colours, weighed by area; lightness counts less where the light of a photo is not told. Null without colours.',
		),
		because: told(
			Type.Union([oneOf(['colour', 'kind', 'pattern']), Type.Null()]),
			'What keeps it from being `has it`, the weightiest; null where nothing does.',
		),
	}),
	title: 'PieceAnswer',
	description: 'How far one garment answers one piece.',
});

export const toldPiece = Type.Unsafe<ToldPiece>({
	...exact({
		piece: seenPiece,
		garmentId: told(
			Type.Union([Type.Null(), Type.String()]),
			'The garment that answers it, or the nearest one where it is `missing`; null where nothing of its slot is owned.',
		),
		answer: pieceAnswer,
		name: Type.String(),
		sentence: Type.String(),
	}),
	title: 'ToldPiece',
	description: 'A piece with its name and what is said of it.',
});

export const picturesReport = Type.Unsafe<PicturesReport>({
	...exact({
		sentence: Type.String(),
		pictures: told(
			Type.Array(
				exact({
					near: told(Type.Number(), 'Of those answered, how many only come near.'),
					fromStore: told(Type.Boolean(), 'True where a garment that answers is stored.'),
					storedForLater: told(
						Type.Boolean(),
						'True where a stored garment would answer a missing piece, but is for another part of the year.',
					),
					away: told(Type.Number(), 'Pieces, accessories apart, that nothing answers. 0 = it can be worn now.'),
					inspirationId: Type.String(),
					title: Type.String(),
					answers: Type.Array(toldPiece),
					sentence: Type.String(),
				}),
			),
			"Every picture that shows pieces: the wearable ones first, then by pieces missing, then in the board's order.",
		),
		wishedPieces: told(
			Type.Array(
				exact({
					id: told(Type.String(), 'Stays the same while the board and its readings do.'),
					slot: slotWords,
					family: Type.Union([kindFamilyWords, Type.Null()]),
					kind: told(
						Type.Union([kindWords, Type.Null()]),
						'The kind that most of its pictures show; null where no kind is known.',
					),
					kindSure: told(
						Type.Number(),
						'How sure that kind is: the mean probability over its pictures, 0..1; 1 where the user told it.',
					),
					lab: told(lab65, 'The colour of the member nearest to all others.'),
					spread: told(Type.Number(), 'CIEDE2000 from it to the farthest member.'),
					example: told(
						piece,
						'The piece in that colour, as its picture shows it, and how far the picture can be believed.',
					),
					exampleTrust: trust,
					perhaps: told(
						Type.Boolean(),
						'True where something owned answers it today, in every picture, but so barely that other photos may say otherwise.',
					),
					exampleIn: told(Type.String(), 'The inspiration that shows the example.'),
					pictures: told(
						Type.Array(Type.String()),
						'Pictures that lack it, or perhaps lack it, and those that it alone would make wearable, both by inspiration.',
					),
					completes: Type.Array(Type.String()),
					completesLikely: told(
						Type.Number(),
						"The same as a number that reckons with the photos' errors, see `pieceChances`: what the order is by.",
					),
					lacksLikely: told(Type.Number(), 'Pictures that likely lack it, reckoned in the same way.'),
					shownIn: told(Type.Number(), 'Pictures that show such a piece, owned or not.'),
					share: told(Type.Number(), "Share of the board's worn cloth, 0..1."),
					nearestGarmentId: told(
						Type.Union([Type.Null(), Type.String()]),
						'The owned garment that comes nearest, whatever its kind in the slot; null where nothing of the slot is owned.',
					),
					nearestDistance: Type.Union([Type.Null(), Type.Number()]),
					name: Type.String(),
					sentence: Type.String(),
				}),
			),
			'Pieces to look for, see `wishedPieces`.',
		),
	}),
	title: 'PicturesReport',
	description: "What is said of a season's pictures.",
});

export const wishStanding = Type.Unsafe<WishStanding>({
	...exact({
		wishId: Type.String(),
		priority: told(Type.Number(), '0..100, the sum of its parts; higher = sooner.'),
		place: told(Type.Number(), 'Its place among the open wishes, 1 = look for it first.'),
		parts: told(
			exact({
				pictures: Type.Number(),
				price: Type.Number(),
				palette: Type.Number(),
				outfits: Type.Number(),
				waiting: Type.Number(),
				seasons: Type.Number(),
			}),
			'Points of each part of the priority.',
		),
		completes: told(Type.Number(), 'Pictures that such a piece would make wearable.'),
		outfitsAdded: told(outfitRange, "Outfits for the season's days."),
		wantedDays: Type.Number(),
		newInDays: told(Type.Number(), 'Days until new is allowed; 0 = now.'),
		makers: told(Type.Array(maker), 'Makers the user trusts, once new is allowed.'),
		storedFirst: told(
			Type.Union([Type.Null(), Type.String()]),
			'A stored garment that could fill it at no cost; null where there is none.',
		),
		sentence: Type.String(),
	}),
	title: 'WishStanding',
	description: 'A wish with its place in the list and whether new is allowed.',
});

export const lookBack = Type.Unsafe<LookBack>({
	...exact({
		garments: Type.Array(garmentWear),
		byColour: told(
			Type.Array(
				exact({ owned: Type.Number(), worn: Type.Number(), paletteColourId: Type.Union([Type.Null(), Type.String()]) }),
			),
			'By palette colour: area of cloth owned and worn; `null` = near none of them.',
		),
		bySlot: told(
			Type.Array(exact({ owned: Type.Number(), worn: Type.Number(), slot: slotWords })),
			'By slot: pieces owned and wears.',
		),
		neverWorn: Type.Array(Type.String()),
		wearsThisYear: told(Type.Number(), 'Wears in the twelve months up to today.'),
		sentence: Type.String(),
	}),
	title: 'LookBack',
});

export const neverWorn = Type.Unsafe<NeverWorn>({
	...exact({
		garmentIds: Type.Array(Type.String()),
		why: Type.Union([oneOf(['loner', 'no-partner', 'season', 'season-passed']), Type.Null()]),
		sentence: Type.String(),
	}),
	title: 'NeverWorn',
	description: 'What was not worn in twelve months, for one reason; null where nothing speaks for one.',
});

export const wornOutfits = Type.Unsafe<WornOutfits>({
	...exact({
		wornAgain: told(
			Type.Array(exact({ garmentIds: Type.Array(Type.String()), days: Type.Number(), sentence: Type.String() })),
			'Sets worn on two days or more, the most worn first.',
		),
		neverCombined: told(
			Type.Array(
				exact({ garmentIds: Type.Array(Type.String(), { minItems: 2, maxItems: 2 }), sentence: Type.String() }),
			),
			'Favourites, loved dearly or worn often, that go together and were never worn on one day; each of them once.',
		),
		neverWorn: told(
			Type.Array(neverWorn),
			'What was never worn in twelve months, and why that may be; what has one reason and one advice together.',
		),
	}),
	title: 'WornOutfits',
	description: 'What the wears say beyond single garments.',
});

export const station = Type.Unsafe<Station>({
	...exact({
		station: oneOf(['direction', 'line-up', 'look-back', 'shop', 'sort', 'wish-list']),
		state: oneOf(['done', 'empty', 'open']),
		sentence: Type.String(),
	}),
	title: 'Station',
	description: 'One of the six stations of a season: what is done there and what is open.',
});

export const report = Type.Unsafe<Report>({
	...exact({
		season: season,
		madeOn: told(Type.String(), 'ISO date.'),
		caution: Type.String(),
		palette: palette,
		paletteChange: told(
			Type.Union([Type.Null(), paletteChange]),
			'Against the same part of last year; null where there was none.',
		),
		paletteCover: told(
			Type.Union([
				Type.Null(),
				exact({
					share: told(Type.Number(), 'Share of the cloth, every picture weighing the same, 0..1; 0 without pictures.'),
					sentence: Type.String(),
					leftOut: Type.Array(exact({ inspirationId: Type.String(), title: Type.String(), share: Type.Number() })),
				}),
			]),
			"How much of the board's cloth the palette holds, and the pictures that it leaves out; null without pictures.",
		),
		style: styleProfile,
		pairings: Type.Array(pairing),
		garments: told(Type.Array(garmentReport), 'Best fit first.'),
		surerLight: told(surerLight, 'What paper and a grey card beside the pieces would buy.'),
		loners: Type.Array(loner),
		twins: Type.Array(twin),
		tooClose: told(Type.Array(tooClose), 'Pieces of one kind that their photos do not tell apart.'),
		bands: bands,
		needs: Type.Array(exact({ slot: slotWords, wanted: Type.Number(), held: Type.Number() })),
		enough: told(enough, 'How long what is held lasts between two washes.'),
		neededPieces: told(seasonQuotas, "Pieces that the season's days need, by slot: where the quotas start from."),
		gaps: Type.Array(gap),
		missingPieces: Type.Array(missingPiece),
		pictures: told(picturesReport, "What the board's pictures wear, and which of them the wardrobe can wear."),
		held: exact({
			garments: Type.Number(),
			outfits: told(outfitRange, "Outfits for the season's days."),
			coveredShare: Type.Number(),
			isLineUp: Type.Boolean(),
			sentence: Type.String(),
		}),
		wishes: Type.Array(wishStanding),
		lookBack: lookBack,
		wornOutfits: wornOutfits,
		lastYearNotes: Type.Union([
			Type.Null(),
			exact({ seasonName: Type.String(), notes: Type.String(), feltGaps: Type.Array(Type.String()) }),
		]),
		stations: Type.Array(station),
	}),
	title: 'Report',
	description: 'The whole season as one structure: what the page, the command line and the printed sheet show.',
});

const recommendationWords = oneOf(['ask', 'leave', 'own', 'take', 'think']);

export const candidateCheck = Type.Unsafe<CandidateCheck>({
	...exact({
		candidateId: Type.String(),
		fit: fit,
		wishId: told(Type.Union([Type.Null(), Type.String()]), 'The open wish it answers best; null where none.'),
		ownedName: told(
			Type.Union([Type.Null(), Type.String()]),
			'The name of the owned garment that it is, by its very photo or its looks; null where none is.',
		),
		fills: told(
			Type.Union([Type.Null(), Type.String()]),
			'What of the season it would fill though no wish says so, in a sentence; null where nothing.',
		),
		twins: Type.Array(twin),
		partnerCount: Type.Number(),
		partners: Type.Array(partner),
		outfitsAdded: told(
			outfitRange,
			"Outfits for the season's days it would add to what the season holds, and as a share of a piece that goes with everything.",
		),
		shareOfBest: Type.Number(),
		expectedCostPerWear: told(
			Type.Union([Type.Null(), Type.Number()]),
			'Price by the wears expected in two years; null where a price is not told.',
		),
		usualCostPerWear: told(
			Type.Union([Type.Null(), Type.Number()]),
			'Median cost per wear of what is owned in that slot; null where nothing is known.',
		),
		recommendation: recommendationWords,
		reasons: told(Type.Array(Type.String()), 'Everything that was weighed, in sentences.'),
		sentence: Type.String(),
	}),
	title: 'CandidateCheck',
	description: 'Everything said of a piece found for sale.',
});
