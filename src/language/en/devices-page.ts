/** The page that lets devices in. */
export const DEVICES_PAGE = {
	devicesPage: {
		title: 'Devices',
		purpose: 'The same wardrobe on your phone, at home: photograph a piece there, or look at the season on the sofa.',
		loading: 'who may come in',
		notShared: 'Not shared',
		closed: 'Dyelot is open to this computer alone. Nobody else on the network can reach it.',
		toShare: 'To use it from your phone at home, stop it and start it again with:',
		thenShared: 'Then a code and an address stand here, and only devices that gave the code come in.',
		elsewhere:
			'This device is let in. Who else comes in is decided on the computer that runs Dyelot, in the same place.',
		letIn: 'Let a device in',
		notEncrypted:
			'What passes between phone and computer is not encrypted: share on your own network at home, not in a café.',
		who: 'Who may come in',
		qr: 'QR picture of the address {{address}}',
		onPhone:
			'On the phone, in the same network as this computer, point the camera at the picture, or type the address into its browser.',
		noNetwork: 'This computer is on no network now: join one, then load this page again.',
		thenCode_one:
			'Then type this code there. It is good for one device, and for {{count}} minute more; after that a new one stands here.',
		thenCode_other:
			'Then type this code there. It is good for one device, and for {{count}} minutes more; after that a new one stands here.',
		none: 'None yet.',
		device: 'Device',
		since: 'Let in',
		seen: 'Last seen',
		sendAway: 'Send away',
		sendAwayNamed: 'Send away the {{device}} let in {{moment}}',
		unused: 'A device that is not used for 30 days is sent away by itself.',
		sendAllAway: 'Send all away',
	},
} as const;
