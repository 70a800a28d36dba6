/** The page that lets devices in. */
export const DEVICES_PAGE = {
	devicesPage: {
		title: 'Geräte',
		purpose:
			'Dieselbe Kleidung auf deinem Handy, zu Hause: Fotografiere dort ein Stück oder sieh dir die Saison auf dem Sofa an.',
		loading: 'wer hereindarf',
		notShared: 'Nicht geteilt',
		closed: 'Dyelot ist nur an diesem Rechner offen. Niemand sonst im Netz kommt heran.',
		toShare: 'Um es zu Hause am Handy zu benutzen, beende es und starte es wieder mit:',
		thenShared: 'Dann stehen hier ein Code und eine Adresse, und nur Geräte, die den Code eingeben, kommen herein.',
		elsewhere:
			'Dieses Gerät darf herein. Wer sonst hereindarf, entscheidest du an dem Rechner, auf dem Dyelot läuft, an derselben Stelle.',
		letIn: 'Ein Gerät hereinlassen',
		notEncrypted:
			'Was zwischen Handy und Rechner läuft, ist nicht verschlüsselt: Teile es in deinem eigenen Netz zu Hause, nicht im Café.',
		who: 'Wer hereindarf',
		qr: 'QR-Bild der Adresse {{address}}',
		onPhone:
			'Halte die Kamera des Handys auf das Bild oder tipp die Adresse in seinen Browser. Das Handy muss im selben Netz sein wie dieser Rechner.',
		noNetwork: 'Dieser Rechner ist gerade in keinem Netz: Verbinde ihn und lade diese Seite noch einmal.',
		thenCode_one:
			'Tipp dann dort diesen Code ein. Er gilt für ein Gerät und noch {{count}} Minute; danach steht hier ein neuer.',
		thenCode_other:
			'Tipp dann dort diesen Code ein. Er gilt für ein Gerät und noch {{count}} Minuten; danach steht hier ein neuer.',
		none: 'Noch keins.',
		device: 'Gerät',
		since: 'Hereingelassen',
		seen: 'Zuletzt gesehen',
		sendAway: 'Wegschicken',
		sendAwayNamed: '{{device}}, hereingelassen {{moment}}, wegschicken',
		unused: 'Ein Gerät, das 30 Tage nicht benutzt wird, wird von selbst weggeschickt.',
		sendAllAway: 'Alle wegschicken',
	},
};
