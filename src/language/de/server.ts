/** What the server says of a request, and as it starts. */
export const SERVER = {
	serverWords: {
		diskFull:
			'Erwartet wurde Platz auf der Platte, um dies zu speichern; die Platte ist voll. Nichts wurde geändert: Schaffe Platz und versuche es noch einmal.',
		failed: 'Das Programm ist an dieser Anfrage gescheitert. Nichts Gespeichertes ging verloren.',
		badKey: 'Erwartet wurden 8 bis 200 sichtbare Zeichen für Idempotency-Key; gegeben wurde „{{received}}“.',
		otherHost: 'Erwartet wurde der eigene Name dieses Rechners; gegeben wurde „{{host}}“.',
		untoldPage: 'einer Seite, die sich nicht nennt',
		otherPage: 'Erwartet wurde eine Anfrage von Dyelots eigener Seite; sie kam von „{{page}}“.',
		ready: 'Dyelot ist bereit: Öffne {{address}} in einem Browser. Deine Kleidung liegt in {{home}}.',
		shared: 'Im lokalen Netz geteilt: Öffne {{addresses}} auf einem Telefon. Den Code dafür zeigt {{address}}devices.',
		noNetwork: 'Erwartet wurde ein lokales Netz zum Teilen; dieser Rechner ist in keinem.',
		code: 'Code für ein Telefon, zehn Minuten gültig: {{code}}',
		unclean: 'Das Anhalten gelang nicht sauber: {{error}}',
		notBuilt: 'Die Seite ist noch nicht gebaut. Starte Dyelot mit „npm start“, das baut sie.',
		noAddress: 'Erwartet wurde eine Adresse von Dyelot; {{method}} {{url}} ist keine.',
		notPaired:
			'Erwartet wurde ein Gerät, das mit dieser Kleidung gekoppelt ist; dieses ist es nicht. Gib den Code ein, den der Rechner zeigt, auf dem Dyelot läuft.',
		otherDevice:
			'Erwartet wurde diese Anfrage auf dem Rechner, auf dem Dyelot läuft, wo Geräte eingelassen und weggeschickt werden; sie kam von einem anderen Gerät.',
		noBackupHere: 'Erwartet wurde Kleidung auf diesem Rechner für eine Sicherung; diese liegt anderswo.',
		oneBackup:
			'Erwartet wurde eine Sicherung zur Zeit; eine andere läuft. Warte, bis sie fertig ist, und frage noch einmal.',
		noTable: 'Erwartet wurde eine Tabelle als text/csv zum Übernehmen; gegeben wurde etwas anderes.',
		brokenForm:
			'Erwartet wurde ein ganzes Formular mit Fotos; es bricht ab oder ist keines. Vom letzten Foto wurde nichts gespeichert: Schicke es noch einmal.',
		noPurpose: 'Erwartet wurde das Feld „purpose“ ({{purposes}}) vor den Fotos; es fehlt.',
		tooLarge: 'Erwartet wurden höchstens {{most}} für ein Foto; „{{name}}“ ist größer.',
		noForm: 'Erwartet wurde ein Formular mit Fotos; gegeben wurde etwas anderes.',
		noRestoreHere:
			'Erwartet wurde Kleidung auf diesem Rechner zum Zurückspielen; diese liegt anderswo. Benutze dort „dyelot restore“.',
		noArchive: 'Erwartet wurde ein Archiv als application/x-tar zum Zurückspielen; gegeben wurde etwas anderes.',
		oneRestore: 'Erwartet wurde ein Zurückspielen zur Zeit; ein anderes wird geprüft. Warte, bis es fertig ist.',
		restored: 'Das Archiv ist an die Stelle deiner Kleidung getreten. Was vorher da war, liegt in {{aside}}.',
		notRestored: 'Das Archiv ließ sich nicht öffnen; deine Kleidung ist, wie sie war: {{error}}',
	},
	ports: {
		another: 'Wähle eine andere mit --port',
		offer: 'Port {{free}} ist frei: Starte noch einmal mit --port {{free}}',
		taken: 'Erwartet wurde, die Seite an Port {{port}} zu zeigen; {{reason}}. {{offer}}.',
		EADDRINUSE: 'ein anderes Programm benutzt ihn',
		EACCES: 'nur Programme des Systems dürfen ihn benutzen',
	},
	validation: {
		noField: 'kein Feld „{{field}}“',
		oneOf: 'eins von {{values}}',
		day: 'ein Tag des Kalenders wie 2026-03-14',
		text: 'Text, der nicht nur aus Leerzeichen besteht',
		sentence: 'Erwartet wurde {{expected}} für {{where}}; gegeben wurde {{received}}.',
		itTo: 'dass gilt: ',
		other: 'etwas anderes',
	},
};
