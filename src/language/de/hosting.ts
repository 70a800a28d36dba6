/** Where many homes are kept: signing in, letting people in, homes and sessions. */
export const HOSTING = {
	hosting: {
		notSignedIn: 'Erwartet wurde, dass du angemeldet bist; du bist es nicht oder nicht mehr. Melde dich neu an.',
		wrongSignIn:
			'Erwartet wurden ein Name und sein Passwort; sie gehören nicht zusammen. Versuch es noch einmal oder nimm einen Passkey.',
		wrongPasskey:
			'Erwartet wurde ein Passkey, der hier bekannt ist; der gezeigte ist es nicht oder kam zu spät. Versuch es noch einmal.',
		takenPasskey:
			'Erwartet wurde ein Passkey, der hier neu ist, um dich künftig damit anzumelden; dieser ist schon bekannt. Melde dich damit an oder nimm einen anderen.',
		tooManyTries:
			'Erwartet wurden weniger Versuche; es waren zu viele in kurzer Zeit. Warte eine Viertelstunde oder nimm einen Passkey.',
		tooMuchAtOnce:
			'Erwartet wurde weniger Arbeit auf einmal; was du oder viele andere vorhin verlangt haben, läuft noch. Versuch es gleich noch einmal.',
		tooShort:
			'Erwartet wurden mindestens {{least}} Zeichen für ein Passwort; {{came}} kamen. Ein Satz aus mehreren Wörtern ist leicht zu merken.',
		tooPlain:
			'Erwartet wurde ein Passwort, das schwer zu erraten ist; dieses wiederholt sich oder enthält deinen Namen. Nimm einen Satz aus mehreren Wörtern.',
		tooCommon:
			'Erwartet wurde ein Passwort, das kaum jemand benutzt; dieses gehört zu den häufigsten, und die werden zuerst probiert. Nimm einen Satz aus mehreren Wörtern.',
		noSecret: 'Erwartet wurde ein Passkey oder ein Passwort; keins von beiden kam.',
		takenName: 'Erwartet wurde ein Name, den hier niemand hat; „{{name}}“ ist vergeben. Wähl einen anderen.',
		usedLink:
			'Erwartet wurde ein Link, der noch gilt; er ist schon benutzt oder älter als ein Tag. Lass dir einen neuen geben.',
		linkForNewcomers: 'Erwartet wurde jemand Neues für diesen Link; du bist schon hier. Gib ihn einer anderen Person.',
		firstHome: 'Meine Garderobe',
		onlyLooking:
			'Erwartet wurde jemand, der hier ändern darf; du darfst nur ansehen. Frag, wem das Zuhause gehört, ob du mitplanen darfst.',
		onlyOwners: 'Erwartet wurde dafür jemand, dem dieses Zuhause gehört; du bist dort zu Gast. Frag, wem es gehört.',
		mostHomes: 'Erwartet wurden höchstens {{most}} Zuhause einer Person; du hast so viele. Entferne zuerst eins.',
		lastOwner:
			'Erwartet wurde jemand anderes, dem es auch gehört, oder ein Gast; eine Person muss bleiben, der es gehört. Entferne stattdessen das Zuhause.',
		lastPasskey:
			'Erwartet wurde ein anderer Weg, dich anzumelden; dieser Passkey ist dein einziger. Setz zuerst ein Passwort oder füg einen hinzu.',
		signInAgain:
			'Erwartet wurde eine Anmeldung in der letzten Stunde; deine ist älter. Melde dich ab und wieder an und ändere dann, womit du dich anmeldest.',
		noText: 'Erwartet wurden Zeichen, die sich speichern lassen; eines lässt sich nicht speichern. Lass es weg.',
		wrongOldPassword: 'Erwartet wurde dein jetziges Passwort; ein anderes kam. Nichts wurde geändert.',
		hostStays: 'Erwartet wurde jemand anderes; wer dies hier betreibt, bleibt.',
		stopping:
			'Erwartet wurde, dass Dyelot arbeitet; hier hält es gerade an. Versuch es gleich noch einmal: Dann antwortet ein anderer Teil.',
		elsewhere:
			'Erwartet wurde eine Antwort des Ortes, an dem alles liegt; gerade kommt keine. Nichts, was du gespeichert hast, ist verloren: Versuch es gleich noch einmal.',
	},
	doorway: {
		signIn: 'Anmelden',
		signInPurpose: 'Deine Garderobe liegt hier neben anderen. Nur wen du hereinlässt, sieht sie.',
		withPasskey: 'Mit Passkey anmelden',
		passkeyHint: 'Der Schlüssel, den dein Telefon oder Rechner aufbewahrt; Finger, Gesicht oder PIN öffnet ihn.',
		orPassword: 'Oder mit Name und Passwort',
		name: 'Name',
		password: 'Passwort',
		passwordHint: 'Mindestens {{least}} Zeichen. Ein Satz aus mehreren Wörtern ist leicht zu merken.',
		noPasskey:
			'Erwartet wurde ein Passkey; von diesem Gerät kam keiner. Versuch es noch einmal oder nimm ein Passwort.',
		join: 'Hereinkommen',
		joinHost: 'Du betreibst dies hier: Wähl einen Namen und wie du dich anmeldest.',
		joinNew: 'Jemand lässt dich herein. Wähl einen Namen und wie du dich anmeldest; ein eigenes Zuhause wartet.',
		joinPlan: 'Du darfst in „{{home}}“ mitplanen.',
		joinLook: 'Du darfst dir „{{home}}“ ansehen.',
		joinAs: 'Als {{name}} hereinkommen',
		joinPasskey: 'Mit Passkey hereinkommen',
		joinPassword: 'Mit diesem Passwort hereinkommen',
		noLink:
			'Erwartet wurde ein Link mit seinem Geheimnis; in dieser Adresse steht keins. Öffne den ganzen Link, den du bekommen hast.',
		homes: 'Zuhause',
		homesPurpose: 'Jedes Zuhause ist eine Garderobe für sich, mit eigenen Saisons.',
		own: 'deins',
		plan: 'zum Planen',
		look: 'zum Ansehen',
		newHome: 'Ein neues Zuhause',
		nameOfHome: 'Name des Zuhauses',
		makeHome: 'Anlegen',
		bringHome: 'Ein Zuhause mitbringen',
		bringPurpose:
			'Das Archiv, das „Alles als ein Archiv“ gibt, von deinem eigenen Rechner oder von einem anderen Ort wie diesem.',
		archive: 'Archiv (.tar)',
		bring: 'Mitbringen',
		bringing: 'Unterwegs …',
		manage: 'Wer hereindarf',
		manageNamed: 'Wer in {{home}} hereindarf',
		member: 'Person',
		may: 'Darf',
		since: 'Seit',
		putOut: 'Entfernen',
		putOutNamed: '{{name}} aus diesem Zuhause entfernen',
		leave: 'Verlassen',
		leaveNamed: '{{home}} verlassen',
		letPlan: 'Ein Link, der jemanden mitplanen lässt',
		letLook: 'Ein Link, der jemanden ansehen lässt',
		linkOnce: 'Gib diesen Link einer Person. Er gilt einmal, einen Tag lang. Er steht nur jetzt hier: Kopier ihn.',
		link: 'Link',
		copy: 'Kopieren',
		copied: 'Kopiert',
		rename: 'Name dieses Zuhauses',
		takeAlong: 'Mitnehmen',
		takeAlongHow: 'Alles als ein Archiv, für deinen eigenen Rechner oder einen anderen Ort wie diesen',
		removeHome: 'Dieses Zuhause entfernen',
		removeHomeHow:
			'Mit allen Fotos, Kleidern und Saisons, für immer. Nimm es vorher mit. Tipp zur Sicherheit seinen Namen.',
		removeForGood: 'Für immer entfernen',
		people: 'Personen',
		peoplePurpose: 'Wer hier hereinkommt. Du lässt Leute über einen Link herein; was ihnen gehört, siehst du nicht.',
		letIn: 'Ein Link, der jemanden hereinlässt',
		keeper: 'betreibt dies hier',
		removePerson: 'Entfernen',
		removePersonNamed: '{{name}} entfernen',
		removePersonHow:
			'{{name}} geht, mit jedem Zuhause, das sonst niemandem gehört, für immer. Tipp zur Sicherheit den Namen.',
		account: 'Du',
		accountPurpose: 'Angemeldet als {{name}}. Hier siehst du, wo du angemeldet bist und womit.',
		sessions: 'Wo du angemeldet bist',
		device: 'Gerät',
		signedIn: 'Angemeldet',
		seen: 'Zuletzt gesehen',
		thisOne: 'dieses',
		end: 'Abmelden',
		endNamed: '{{device}}, angemeldet {{at}}, abmelden',
		endOthers: 'Überall sonst abmelden',
		endsAlone: 'Nach 14 Tagen ohne Gebrauch wirst du abgemeldet, spätestens 90 Tage nach der Anmeldung.',
		passkeys: 'Passkeys',
		noPasskeys: 'Noch keiner.',
		addPasskey: 'Einen Passkey hinzufügen',
		remove: 'Entfernen',
		removePasskeyNamed: 'Den Passkey von {{device}}, hinzugefügt {{at}}, entfernen',
		oldPassword: 'Jetziges Passwort',
		newPassword: 'Neues Passwort',
		setPassword: 'Neues Passwort setzen',
		passwordSet: 'Das neue Passwort gilt. Überall sonst bist du abgemeldet.',
		signOut: 'Abmelden',
		lookingOnly: 'Du darfst dir „{{home}}“ ansehen, nicht ändern: Frag, wem es gehört, ob du mitplanen darfst.',
		where: 'Zuhause',
	},
	hostCommands: {
		host: 'Die Seite für viele Personen, jede mit eigenem Zuhause, in PostgreSQL und einem Ordner oder Objektspeicher. Starte so viele, wie du willst, und mindestens ein „dyelot work“ daneben.',
		port: 'die Nummer in der Adresse, sonst 4810; DYELOT_PORT',
		address:
			'die Adresse, die Leute eintippen, wie https://garderobe.example.net; DYELOT_ADDRESS; sonst http://localhost und die Nummer',
		proxy: 'die Adresse eines Proxys, dem geglaubt wird, wer fragt; mehrmals möglich; DYELOT_BEHIND_PROXY, mit Kommas',
		hostExample: 'der erste Start schreibt einen Link, der dich hereinlässt',
		work: 'Liest die Fotos aller Zuhause. Starte so viele, wie du willst, auf so vielen Rechnern.',
		health: 'antworte auf /health und /ready unter dieser Nummer; sonst gar nicht',
		atOnce: 'Fotos, die nebeneinander gelesen werden, 1 bis 16; sonst eins je Kern, höchstens 4',
		workExample: 'liest, was Leute bringen, bis es angehalten wird',
		database:
			'Adresse der PostgreSQL-Datenbank, ohne Passwort; eine mit Passwort kommt in DYELOT_DATABASE oder einer Datei',
		databaseFile: 'eine Datei mit der Adresse der Datenbank; DYELOT_DATABASE_FILE',
		photos: 'wo Fotos liegen: ein Ordner, den alle teilen, oder s3://BUCKET; DYELOT_PHOTOS',
		endpoint:
			'Adresse des Objektspeichers; DYELOT_PHOTOS_ENDPOINT. Sein Schlüssel kommt in DYELOT_PHOTOS_KEY und DYELOT_PHOTOS_SECRET',
		region: 'Region des Objektspeichers, sonst us-east-1; DYELOT_PHOTOS_REGION',
		secretFile: 'eine Datei mit dem Geheimnis des Objektspeichers; DYELOT_PHOTOS_SECRET_FILE',
		workFolder:
			'ein Ordner dieses Rechners für Dateien unterwegs; DYELOT_WORK_FOLDER; sonst am Platz des Systems dafür',
		listen: 'die Adresse dieses Rechners, sonst 127.0.0.1; DYELOT_LISTEN',
		unreadableFile: 'Erwartet wurde eine lesbare Datei für --{{flag}}; „{{file}}“ ist es nicht ({{code}}).',
		noDatabase:
			'Erwartet wurde die Adresse einer PostgreSQL-Datenbank in --database, --database-file oder DYELOT_DATABASE; keine kam.',
		otherDatabase:
			'Erwartet wurde eine Adresse wie postgres://dyelot@localhost/dyelot für die Datenbank; eine andere kam.',
		secretOnLine:
			'Erwartet wurde kein Passwort auf der Befehlszeile, wo es jedes Programm dieses Rechners lesen kann; eins kam in --database. Schreib die Adresse in DYELOT_DATABASE oder in eine Datei, die --database-file nennt.',
		noBucket: 'Erwartet wurden s3:// und der Name eines Buckets für --photos; „{{place}}“ kam.',
		noKey:
			'Erwartet wurden --photos-endpoint mit der Adresse des Objektspeichers und sein Schlüssel in DYELOT_PHOTOS_KEY und DYELOT_PHOTOS_SECRET (oder --photos-secret-file) für Fotos in s3://; nicht alle kamen.',
		noPhotos: 'Erwartet wurde ein Ordner oder s3://BUCKET für die Fotos in --photos oder DYELOT_PHOTOS; keins kam.',
		otherAddress:
			'Erwartet wurde eine Adresse wie https://garderobe.example.net, ohne Pfad, für --address; „{{address}}“ kam.',
		noPort: 'Erwartet wurde eine eigene Nummer, da die Adresse daraus wird; 0 kam.',
		badAtOnce: 'Erwartet wurde eine ganze Zahl von 1 bis {{most}} für --at-once; „{{received}}“ kam.',
	},
} as const;
