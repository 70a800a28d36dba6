/** Colours on the page: their details, and adding one. */
export const COLOURS = {
	colours: {
		details: 'details',
		add: 'Add a colour',
		addHow: 'Name it, choose it from the grid, type its number, or point at it in a picture.',
		colour: 'Colour',
		placeholder: 'dark green',
		hint: 'a word, hex (#a1b2c3), or CIELAB numbers (62 4.5 -12)',
		ownWord: 'Your own word for it',
		meant: 'Colours of that name',
		none: 'No colour is called so here. Try another word, a hex colour such as #a1b2c3, or three CIELAB numbers such as 62 4.5 -12.',
		grid: 'Choose from a grid',
		picture: 'Take it from a picture',
		chooseFile: 'A picture on this device',
		stays:
			'The picture stays in the browser and is not kept. Its light is not corrected: for a true colour, put it on the board and use its eyedropper.',
		pointAt: 'The picture, to take a colour from',
		noPicture: 'Expected a picture that this browser can open; it could not open this file.',
		addIt: 'Add it to the palette',
		screen: 'A colour on a screen is not the cloth.',
		printed: 'A colour on a screen is not the cloth, and a printed one is not either.',
		seenFrom: 'From about 3 on, most people see a difference.',
		underOne: 'under 1 %',
	},
} as const;
