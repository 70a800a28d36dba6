/** What the report says of what is held, and how far photos can be believed. */
export const REPORTS = {
	unmet: {
		tooFew: '{{slot}}: {{wanted}} wanted, {{can}} can be chosen, {{missing}} too few.',
		tooMany: '{{slot}}: {{wanted}} wanted, {{kept}} must be kept, {{over}} too many. All are kept.',
		sum: 'The numbers of each sort add up to {{total}} garments, the season asks for {{target}}; those of each sort decide.',
		noneWarm: 'Wanted a coat or jacket for cold days of {{degrees}} degrees; none that can be chosen is that warm.',
		keptNotWarm:
			'Wanted a coat or jacket for cold days of {{degrees}} degrees; those that must be kept take all places, and none of them is that warm.',
		lastCoat:
			'{{name}} is off the palette, but nothing else is warm enough for cold days of {{degrees}} degrees: it stays until you find a coat that fits. Make that a wish.',
		gone: 'A garment that must be kept is no longer in the wardrobe.',
		notHere: '{{name}} must be kept, but is {{place}}: it is not in the set. Put it back on the rail.',
		both: '{{name}} is both to be kept and never to be used; it is kept, since you can still take it out.',
		though: '{{name}} must be kept, but {{out}}.',
	},
	paletteChange: {
		neither: 'Neither year has a palette yet.',
		noneBefore: "Last year's same season had no palette, so there is nothing to compare.",
		noneNow: "This season has no palette yet; last year's held {{colours}}.",
		share: "{{percent}} % of this palette was in last year's",
		moved: 'moved: {{colours}}',
		new: 'new: {{colours}}',
		gone: 'gone: {{colours}}',
	},
	aids: {
		paper: 'white paper',
		card: 'a grey card',
		both: 'white paper and a grey card',
		errs: 'with {{aid}} by {{error}}',
		measured:
			'Measured on 8 phone photos of a chart of known colours, 5 of them of one make, by formulas fitted without the make that is judged: with nothing pointed at they err by {{nothing}} on average, {{aids}}.',
	},
	surerLight: {
		alone_one: 'with {{aid}} alone about {{count}}',
		alone_other: 'with {{aid}} alone about {{count}}',
		sentence_one:
			'{{count}} piece is unsure because of the light. Photographed with {{aid}} beside it, about {{clear}} would be clear{{others}}.',
		sentence_other:
			'{{count}} pieces are unsure because of the light. Photographed with {{aid}} beside them, about {{clear}} would be clear{{others}}.',
	},
	reports: {
		sharedLight: 'Corrected by a neutral in another picture taken in the same light.',
		joinedLights_one: 'joined from {{count}} photo in {{lights}} lights, whose errors partly cancel out',
		joinedLights_other: 'joined from {{count}} photos in {{lights}} lights, whose errors partly cancel out',
		joinedOneLight_one: 'joined from {{count}} photo in one light, which err alike',
		joinedOneLight_other: 'joined from {{count}} photos in one light, which err alike',
		nothingRead: 'none of its photos has been read yet',
		addPhoto: 'Add a photo of it.',
		noPalette: 'The season has no palette yet, so there is nothing to compare it with.',
		noColours: 'Its photos have given no colours yet, so it cannot be compared with the palette.',
		caution:
			'A colour on a screen is not the cloth, and a printed swatch is not either: look at a piece in daylight before you decide.',
	},
} as const;
