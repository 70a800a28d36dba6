/** Why something was refused: what was expected, for what, what came. */
export const REFUSALS = {
	refusals: {
		bought: 'Expected a candidate that is not bought yet; "{{name}}" is a garment already.',
		joinOne: 'Expected two or more garments to join; received one.',
		wearLater: 'Expected a day up to today ({{today}}) for a wear; received {{day}}.',
		oneGround: 'Expected two or more photos that show one ground; received fewer.',
		partOne: 'Expected two or more photos of {{name}}, to give one to another garment; it has one.',
		pairTwice: 'Expected two different garments for a pairing; received the same one twice.',
		endsFirst: 'Expected the season to end after it starts ({{start}}); received {{end}} as its end.',
		emptyBox:
			'Expected a box with a width and a height round each garment; received one from {{left}}, {{top}} to {{right}}, {{bottom}}.',
		cutUnread: 'Expected a photo that was read, to cut it in two; this one waits to be read.',
		sameBoxes: 'Expected two different boxes, one round each garment; received the same twice.',
		nothingToUndo: 'Expected a decision to take back; there is none left.',
		nothingToRedo: 'Expected a decision that was taken back, to do it again; there is none.',
		noScenario:
			'Expected the demo scenario in {{folder}}; the file scenario.json is missing. Restore the folder demo-images.',
		notFound:
			'Expected the id of something that exists ({{what}}); "{{id}}" names none. It may have been deleted: look in the bin.',
		faultOfPhoto: 'A photo could not be read because of a fault in the program: {{error}}',
		faultOfDevice: 'A note on a paired device could not be written: {{error}}',
		changedOnDisk:
			'Expected "{{path}}" as it was added; its bytes have changed on the disk. The backup holds it as it is.',
		codeOver:
			'Expected a code that is still valid for pairing this device; the last one has expired or was tried too often. Ask for a new code on the computer that runs Dyelot.',
		codeWrong_one:
			'Expected the 8 digits shown on the computer for pairing this device; received others. {{count}} try is left.',
		codeWrong_other:
			'Expected the 8 digits shown on the computer for pairing this device; received others. {{count}} tries are left.',
		tooLongToJudge:
			'Expected a season that can be judged within {{seconds}} seconds; this home holds too much for that. Put what is no longer yours into the bin, then ask again.',
		tooManyPhotos:
			'Expected fewer photos on their way at once; others are still coming in. Send this one again in a moment.',
		noPng: 'Expected a PNG picture for the corrected outline; received something else.',
		readFault:
			'Expected to read this photo; the program itself failed on it. The photo is kept: try again, and if it fails once more, tell us.',
		readStopped: 'Reading was stopped before this photo. It is kept: read it whenever you like.',
		something: 'something',
		staleNamed: 'of the {{what}} "{{name}}": {{fields}}',
		staleEntry: 'of the {{what}}: {{fields}}',
		stale:
			'Expected the newest state for a change; meanwhile something else was changed in another window or program ({{told}}). Yours was not saved: look at what is there now, and change it again.',
	},
	nouns: {
		photoOf: 'photo of {{name}}',
		wearOn: 'garment worn on {{day}}',
		binned: 'thing in the bin',
		readPhoto: 'photo that was read',
		pictureOf: 'picture "{{name}}" of a photo that was read',
		garment: 'garment',
		wear: 'wear',
		'pair-word': 'word on two garments',
		photo: 'photo',
		season: 'season',
		inspiration: 'inspiration',
		wish: 'wish',
		candidate: 'candidate',
		maker: 'maker',
		'line-up': 'line-up',
		gap: 'gap',
		pairedDevice: 'paired device',
		it: 'it',
		palette: 'palette',
		paletteColour: 'palette colour',
	},
	devices: {
		androidPhone: 'Android phone',
		androidTablet: 'Android tablet',
		windows: 'Windows computer',
		linux: 'Linux computer',
		another: 'another device',
	},
} as const;
