/** What comes after a page of the season, and why. */
export const DOOR = {
	door: {
		title: 'Geräte',
		purpose:
			'Derselbe Schrank auf dem Handy, zu Hause: dort ein Stück fotografieren oder die Saison auf dem Sofa ansehen.',
		what: 'die Tür',
		beside: 'Neben dieser Seite',
		allSeasons: 'Alle Saisons',
		notShared: 'Nicht geteilt',
		closed: 'Dyelot ist nur für diesen Rechner offen. Niemand sonst im Netz erreicht es.',
		howToShare:
			'Um es zu Hause vom Handy aus zu benutzen, das Programm beenden und mit dieser Zeile neu starten. Dann stehen hier ein Code und eine Adresse, und nur Geräte, die den Code eingegeben haben, kommen herein.',
		letIn: 'Ein Gerät hereinlassen',
		notEncrypted:
			'Was zwischen Handy und Rechner hin- und hergeht, ist nicht verschlüsselt: nur im eigenen Netz zu Hause teilen, nicht im Café.',
		who: 'Wer hereindarf',
		onThePhone: 'Auf dem Handy',
		onThePhoneHow:
			'Im selben Netz wie dieser Rechner die Kamera auf das Bild richten oder die Adresse in den Browser tippen.',
		noNetwork: 'Dieser Rechner ist gerade in keinem Netz: eines wählen, dann diese Seite neu laden.',
		qr: 'QR-Bild der Adresse {{address}}',
		typeCode: 'Dann dort diesen Code eintippen',
		codeGood_one: 'Er gilt für ein Gerät und noch {{count}} Minute; danach steht hier ein neuer.',
		codeGood_other: 'Er gilt für ein Gerät und noch {{count}} Minuten; danach steht hier ein neuer.',
		none: 'Noch keine.',
		device: 'Gerät',
		since: 'Hereingelassen',
		seen: 'Zuletzt gesehen',
		actions: 'Was zu tun ist',
		sendAway: 'Wegschicken',
		sendAwayOne: '{{device}}, hereingelassen {{when}}, wegschicken',
		sendAllAway: 'Alle wegschicken',
		unused: 'Ein Gerät, das 30 Tage nicht benutzt wird, wird von selbst weggeschickt.',
		thisDevice: 'Dieses Gerät hereinlassen',
		whereCode:
			'Dieser Schrank liegt auf einem anderen Rechner Ihres Netzes. Dort „Alle Saisons“ öffnen, dann „Geräte“: der Code aus 8 Ziffern steht neben dem Bild.',
		code: 'Code',
		letItIn: 'Hereinlassen',
		fromPhone: 'Mit dem Handy fotografieren',
		fromPhoneHow:
			'Die Kleider hängen woanders? Die Bilder im selben Netz mit dem Handy machen: sie kommen gleich in diesen Schrank.',
		fromPhoneGo: 'Das Handy hereinlassen',
		version: 'Dyelot {{version}}',
	},
} as const;
