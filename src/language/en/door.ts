/** Devices of the network: how they are let in, and the line that names the program's version. */
export const DOOR = {
	door: {
		title: 'Devices',
		purpose: 'The same wardrobe on your phone, at home: photograph a piece there, or look at the season on the sofa.',
		what: 'the door',
		beside: 'Beside this page',
		allSeasons: 'All seasons',
		notShared: 'Not shared',
		closed: 'Dyelot is open to this computer alone. Nobody else on the network can reach it.',
		howToShare:
			'To use it from your phone at home, stop it and start it again with this line. Then a code and an address stand here, and only devices that gave the code come in.',
		letIn: 'Let a device in',
		notEncrypted:
			'What passes between phone and computer is not encrypted: share on your own network at home, not in a café.',
		who: 'Who may come in',
		onThePhone: 'On the phone',
		onThePhoneHow:
			'In the same network as this computer, point its camera at the picture, or type the address into its browser.',
		noNetwork: 'This computer is on no network now: join one, then load this page again.',
		qr: 'QR picture of the address {{address}}',
		typeCode: 'Then type this code there',
		codeGood_one: 'It is good for one device, and for {{count}} minute more; after that a new one stands here.',
		codeGood_other: 'It is good for one device, and for {{count}} minutes more; after that a new one stands here.',
		none: 'None yet.',
		device: 'Device',
		since: 'Let in',
		seen: 'Last seen',
		actions: 'Actions',
		sendAway: 'Send away',
		sendAwayOne: 'Send away the {{device}} let in {{when}}',
		sendAllAway: 'Send all away',
		unused: 'A device that is not used for 30 days is sent away by itself.',
		thisDevice: 'Let this device in',
		whereCode:
			'This wardrobe is kept on another computer of your network. There, open “All seasons”, then “Devices”: the code of 8 digits stands beside the picture.',
		code: 'Code',
		letItIn: 'Let it in',
		fromPhone: 'Photograph from your phone',
		fromPhoneHow:
			'Your clothes hang elsewhere? Take the pictures with your phone, in the same network: they come straight into this wardrobe.',
		fromPhoneGo: 'Let your phone in',
		version: 'Dyelot {{version}}',
	},
} as const;
