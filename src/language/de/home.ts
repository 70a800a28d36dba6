/** The home on disk: its folder, its archives, what was amiss. */
export const HOME = {
	homeChecks: {
		unreadRows_one:
			'{{count}} Eintrag ließ sich nicht lesen ({{what}} „{{id}}“). Er liegt beiseite, nicht gelöscht. Eine frühere Sicherung hat ihn vielleicht noch ganz.',
		unreadRows_other:
			'{{count}} Einträge ließen sich nicht lesen, zum Beispiel {{what}} „{{id}}“. Sie liegen beiseite, nicht gelöscht. Eine frühere Sicherung hat sie vielleicht noch ganz.',
		lostDecisions_one: '{{count}} Entscheidung lässt sich nicht mehr zurücknehmen: Was sie änderte, war nicht lesbar.',
		lostDecisions_other:
			'{{count}} Entscheidungen lassen sich nicht mehr zurücknehmen: Was sie änderten, war nicht lesbar.',
		damagedReadings_one: 'Was von {{count}} Foto gelesen war, war beschädigt: Es wird noch einmal gelesen.',
		damagedReadings_other: 'Was von {{count}} Fotos gelesen war, war beschädigt: Sie werden noch einmal gelesen.',
		otherForm_one:
			'Diese Fassung von Dyelot kann {{count}} Eintrag nicht verwenden ({{what}} „{{id}}“: {{fault}}). Er liegt beiseite, nicht gelöscht, und alles andere ist da. Eine neuere Fassung kennt ihn vielleicht, oder eine frühere Sicherung hat ihn noch ganz.',
		otherForm_other:
			'Diese Fassung von Dyelot kann {{count}} Einträge nicht verwenden, zum Beispiel {{what}} „{{id}}“ ({{fault}}). Sie liegen beiseite, nicht gelöscht, und alles andere ist da. Eine neuere Fassung kennt sie vielleicht, oder eine frühere Sicherung hat sie noch ganz.',
	},
	home: {
		keyReused:
			'Erwartet wurde ein neuer Schlüssel für eine neue Anfrage; der Schlüssel „{{key}}“ kam schon mit einer anderen. Nichts wurde geändert.',
		keptBeforeUpdate:
			'Deine Kleidung lag in einer früheren Fassung von Dyelot und wird auf den neuen Stand gebracht. Wie sie war, bleibt sie in der Datei {{place}}; Fotos ändern sich nicht. Um zurückzugehen, beende das Programm und setz diese Datei an die Stelle von {{database}}.',
		damagedDecision:
			'Erwartet wurde, zu lesen, was die letzte Entscheidung änderte; es hat nicht die Form, die dieses Programm schreibt. Sie lässt sich nicht zurücknehmen.',
		noFolder:
			'Erwartet wurde ein Ordner für deine Kleidung in „{{path}}“; {{what}}. Wähle einen anderen mit --home oder bring dies erst in Ordnung.',
		isFile: 'dort ist eine Datei dieses Namens',
		isDeadLink: 'dort ist eine Verknüpfung, die ins Leere führt',
		mayNotMake: 'das System lässt dort keinen Ordner anlegen',
		noneThere:
			'Erwartet wurde deine Kleidung in „{{path}}“; dort ist keine. Nenne ihren Ordner mit --home oder beginne mit „dyelot serve“.',
		notWritable: 'die Datenbank lässt sich nicht zum Schreiben öffnen (ist die Platte schreibgeschützt?)',
		locked:
			'Erwartet wurde ein Ordner, den kein anderes Programm benutzt; {{path}} benutzt ein anderes Dyelot, das läuft. Schließe erst jenes oder wähle einen anderen Ordner mit --home.',
		storeAnswered:
			'Erwartet wurde, dass der Objektspeicher auf {{method}} {{key}} antwortet; er antwortete {{status}} {{text}}',
		storeSilent: 'Erwartet wurde eine Antwort des Objektspeichers auf {{method}} von {{key}}; keine kam ({{cause}}).',
		originalMissing: 'Erwartet wurde das Original von Foto {{id}} im Objektspeicher; es fehlt.',
		damaged:
			'Erwartet wurde eine heile Datenbank in {{path}}; sie ist beschädigt ({{what}}). Nichts wurde geändert. Spiele deine letzte Sicherung mit „dyelot restore“ in einen neuen Ordner zurück.',
		notPrivate:
			'Erwartet wurde ein Ordner, den nur du lesen darfst; die Platte oder der Besitzer von {{path}} lässt das nicht zu. Andere an diesem Rechner können deine Kleidung sehen: Wähle mit --home einen eigenen Ordner.',
		unknownKind: 'diese Fassung weiß nicht, was „{{kind}}“ ist',
		anotherForm: 'anders geschrieben',
		fieldOfAnotherForm: '„{{field}}“ fehlt oder ist anders geschrieben',
		later:
			'Erwartet wurde ein Ordner dieser oder einer früheren Fassung von Dyelot; dieser ist von einer späteren. Nichts wurde geändert: Starte das neuere Programm.',
	},
	archives: {
		noEnd: 'Erwartet wurde eine Liste von Prüfsummen in {{archive}}; die Liste hat kein Ende.',
		notOurs: 'Erwartet wurde ein Archiv von „dyelot backup“; {{archive}} beginnt mit etwas anderem.',
		otherForm:
			'Erwartet wurde ein Archiv der Form {{known}}; {{archive}} hat Form {{form}}. Spiele es mit dem Programm zurück, das es machte.',
		otherInside:
			'Erwartet wurde in {{archive}} die Datenbank eines Kleiderordners, wie dieses Programm sie schreibt; sie enthält anderes ({{what}}).',
		otherFiles: 'Erwartet wurden in {{archive}} nur Dateien eines Kleiderordners; es enthält „{{name}}“.',
		later:
			'Erwartet wurde ein Archiv dieser oder einer früheren Fassung von Dyelot; {{archive}} ist von einer späteren. Nichts wurde geändert: Spiele es mit dem neueren Programm zurück.',
		cut: 'Erwartet wurde ein ganzes Archiv in {{archive}}; es lässt sich nicht bis zum Ende lesen ({{error}}).',
		noSums: 'Erwartet wurde ein Archiv mit Prüfsummen am Ende; {{archive}} hat keine: Es wurde abgeschnitten.',
		notAsSaved: 'Erwartet wurde „{{path}}“ in {{archive}}, wie es gesichert wurde; es ist {{what}}.',
		tooFew:
			'Erwartet wurden die {{stated}} Dateien, die {{archive}} nennt, darunter die Datenbank; es enthält {{found}}.',
		expected: 'Erwartet wurde ein Archiv von „dyelot backup“ in „{{archive}}“',
		isFolder: '{{expected}}; es ist ein Ordner.',
		notEmpty_one:
			'Erwartet wurde ein leerer Ordner zum Zurückspielen; {{home}} enthält schon {{count}} Ding. Nichts wurde geändert.',
		notEmpty_other:
			'Erwartet wurde ein leerer Ordner zum Zurückspielen; {{home}} enthält schon {{count}} Dinge. Nichts wurde geändert.',
		thisFile: 'dieser Datei',
	},
	lostPhotos: {
		missing:
			'Erwartet wurde das Original dieses Fotos, wie es hinzukam; seine Datei fehlt. Was davon gelesen wurde, bleibt. Hole es aus einer Sicherung oder gib das Foto noch einmal.',
		changed:
			'Erwartet wurde das Original dieses Fotos, wie es hinzukam; seine Datei hat eine andere Länge. Was davon gelesen wurde, bleibt. Hole es aus einer Sicherung oder gib das Foto noch einmal.',
	},
	photoChecks: {
		missing_one:
			'{{count}} Foto hat seine Datei verloren: „{{name}}“. Seine Farben bleiben. Füge es noch einmal hinzu oder spiele eine Sicherung zurück, dann ist es wieder zu sehen.',
		missing_other:
			'{{count}} Fotos haben ihre Dateien verloren, zum Beispiel „{{name}}“. Ihre Farben bleiben. Füge sie noch einmal hinzu oder spiele eine Sicherung zurück, dann sind sie wieder zu sehen.',
		changed_one:
			'{{count}} Fotodatei ist nicht mehr, wie sie hinzukam: „{{name}}“. Die Farben bleiben. Füge das Foto noch einmal hinzu oder spiele eine Sicherung zurück.',
		changed_other:
			'{{count}} Fotodateien sind nicht mehr, wie sie hinzukamen, zum Beispiel „{{name}}“. Die Farben bleiben. Füge die Fotos noch einmal hinzu oder spiele eine Sicherung zurück.',
		unmasked_one:
			'{{count}} gezeichneter Umriss ist verloren: „{{name}}“. Das Foto wird ohne ihn noch einmal gelesen. Zeichne ihn neu, wenn die Farben nicht stimmen.',
		unmasked_other:
			'{{count}} gezeichnete Umrisse sind verloren, zum Beispiel „{{name}}“. Die Fotos werden ohne sie noch einmal gelesen. Zeichne sie neu, wo die Farben nicht stimmen.',
		unshown_one: '{{count}} Foto hatte seine kleinen Bilder verloren und wird noch einmal gelesen: „{{name}}“.',
		unshown_other:
			'{{count}} Fotos hatten ihre kleinen Bilder verloren und werden noch einmal gelesen, zum Beispiel „{{name}}“.',
		orphans_one:
			'{{count}} Fotodatei gehörte zu keinem Foto, wohl weil das Programm beim Hinzufügen anhielt. Sie liegt im Ordner „{{folder}}“: Füge sie noch einmal hinzu, wenn sie dir fehlt.',
		orphans_other:
			'{{count}} Fotodateien gehörten zu keinem Foto, wohl weil das Programm beim Hinzufügen anhielt. Sie liegen im Ordner „{{folder}}“: Füge noch einmal hinzu, was dir fehlt.',
	},
	systemErrors: {
		EACCES: 'du darfst es nicht lesen oder ändern',
		EBUSY: 'ein anderes Programm benutzt es',
		EDQUOT: 'dein Anteil der Platte ist voll',
		EEXIST: 'es ist schon da',
		EIO: 'die Platte meldet einen Fehler',
		EISDIR: 'es ist ein Ordner',
		ELOOP: 'es ist eine Verknüpfung, die zu sich selbst führt',
		EMFILE: 'zu viele Dateien sind offen',
		ENAMETOOLONG: 'der Name ist zu lang',
		ENOENT: 'es gibt keine solche Datei und keinen solchen Ordner',
		ENOSPC: 'die Platte ist voll',
		ENOTDIR: 'ein Teil des Pfads ist eine Datei, kein Ordner',
		ENOTEMPTY: 'es ist ein Ordner, der nicht leer ist',
		EPERM: 'das System erlaubt es nicht',
		EROFS: 'die Platte lässt sich nur lesen',
		EXDEV: 'es liegt auf einer anderen Platte',
		other: 'das System weigert sich ({{code}})',
		use: 'Erwartet wurde, „{{path}}“ zu benutzen; {{meaning}}.',
		useDisk: 'Erwartet wurde, die Platte zu benutzen; {{meaning}}.',
	},
};
