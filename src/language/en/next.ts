/** What comes after a page of the season, and why. */
export const NEXT = {
	next: {
		label: 'What comes next',
		goTo: 'Next: {{place}}',
		lookedBack: 'You know what you wore. Now collect how the coming season should look.',
		withoutPalette:
			'Drop a few pictures here and the palette comes from them. Your garments can be photographed before or after.',
		photograph: 'Now your garments, a photo each: each is then held against this season’s colours.',
		sort_one: '{{count}} garment can be held against the season now: decide whether it stays on the rail.',
		sort_other: '{{count}} garments can be held against the season now: decide which stay on the rail.',
		meanwhile: 'No photos at hand yet? Begin with pictures of how the season should look.',
		kindsFirst_one: 'Confirm the one kind that is only suggested, then sort: a wrong kind gives wrong outfits.',
		kindsFirst_other:
			'Confirm the {{count}} kinds that are only suggested, then sort: a wrong kind gives wrong outfits.',
		paletteFirst:
			'Your garments are here. What they should fit is still missing: pictures of how the season should look.',
		allSorted: 'Everything has its place. Now choose the small set from what is on the rail.',
		partSorted:
			'Not everything is decided yet, but a line-up can be tried at any time: it takes from what is on the rail.',
		notChosen: 'Without a line-up, what is missing is counted from the whole rail; you can look at that already.',
		chosen_one: 'The set is chosen. {{count}} gap is left: see whether it is worth a wish.',
		chosen_other: 'The set is chosen. {{count}} gaps are left: see which are worth a wish.',
		wished: 'Found a piece for one of these? Check it before you buy.',
		bought: 'The season can begin. Note what you wear: two taps a day tell what to choose next time.',
		printed: 'The season can begin. Note what you wear: two taps a day tell what to choose next time.',
		daysTold: 'What the days ask is told. Now collect how the season should look.',
	},
} as const;
