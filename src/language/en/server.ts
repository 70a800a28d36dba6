/** What the server says of a request, and as it starts. */
export const SERVER = {
	serverWords: {
		diskFull:
			'Expected room on the disk to store this; the disk is full. Nothing was changed: free some space and try again.',
		failed: 'The program failed on this request. Nothing stored was lost.',
		badKey: 'Expected 8 to 200 visible characters for the header Idempotency-Key; received "{{received}}".',
		otherHost: 'Expected this computer\'s own name for the host; received "{{host}}".',
		untoldPage: 'a page that does not say which',
		otherPage: 'Expected a request from Dyelot\'s own page; received one from "{{page}}".',
		ready: 'Dyelot is ready: open {{address}} in a browser. Your wardrobe is kept in {{home}}.',
		shared:
			'Shared on the local network: open {{addresses}} on a phone. The code for it is shown at {{address}}devices.',
		noNetwork: 'Expected a local network to share on; this computer is on none.',
		code: 'Code for a phone, valid for ten minutes: {{code}}',
		unclean: 'Stopping did not go cleanly: {{error}}',
		notBuilt: 'The page is not built yet. Start Dyelot with "npm start", which builds it.',
		noAddress: 'Expected an address of Dyelot; {{method}} {{url}} is none.',
		notPaired:
			'Expected a device that was paired with this wardrobe; this one was not. Enter the code shown on the computer that runs Dyelot.',
		otherDevice:
			'Expected this request on the computer that runs Dyelot, where devices are let in and sent away; it came from another device.',
		noBackupHere: 'Expected a home on this computer for a backup; this one is kept elsewhere.',
		oneBackup: 'Expected one backup at a time; another is being taken. Wait until it has ended, then ask again.',
		noTable: 'Expected a table as text/csv for an import; received something else.',
		brokenForm:
			'Expected a whole form with photos for an upload; it breaks off or is none. Nothing of its last photo was stored: send that again.',
		noPurpose: 'Expected the field "purpose" ({{purposes}}) before the photos of an upload; it is missing.',
		tooLarge: 'Expected at most {{most}} for one photo; "{{name}}" is larger.',
		noForm: 'Expected a form with photos for an upload; received something else.',
		noRestoreHere:
			'Expected a home on this computer to restore into; this one is kept elsewhere. Use "dyelot restore" there.',
		noArchive: 'Expected an archive as application/x-tar to restore; received something else.',
		oneRestore: 'Expected one restore at a time; another is being checked. Wait until it has ended.',
		restored: 'The archive has taken the place of your wardrobe. What was there before is kept in {{aside}}.',
		notRestored: 'The archive could not be opened, so your wardrobe is as it was: {{error}}',
	},
	ports: {
		another: 'Choose another with --port',
		offer: 'Port {{free}} is free: start again with --port {{free}}',
		taken: 'Expected to show the page at port {{port}}; {{reason}}. {{offer}}.',
		EADDRINUSE: 'another program uses it',
		EACCES: 'only programs of the system may use it',
	},
	validation: {
		noField: 'no field "{{field}}"',
		oneOf: 'one of {{values}}',
		day: 'a day of the calendar like 2026-03-14',
		text: 'some text that is not only blanks',
		sentence: 'Expected {{expected}} for {{where}}; received {{received}}.',
		itTo: 'it to ',
		other: 'something else',
	},
} as const;
