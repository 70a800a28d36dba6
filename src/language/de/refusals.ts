/** Why something was refused: what was expected, for what, what came. */
export const REFUSALS = {
	refusals: {
		bought: 'Erwartet wurde ein Angebot, das noch nicht gekauft ist; „{{name}}“ ist schon ein Kleidungsstück.',
		joinOne: 'Erwartet wurden zwei oder mehr Kleidungsstücke zum Zusammenlegen; gegeben wurde eines.',
		wearLater: 'Erwartet wurde ein Tag bis heute ({{today}}), an dem etwas getragen wurde; gegeben wurde {{day}}.',
		oneGround: 'Erwartet wurden zwei oder mehr Fotos, die denselben Untergrund zeigen; gegeben wurden weniger.',
		partOne:
			'Erwartet wurden zwei oder mehr Fotos von {{name}}, um eines einem anderen Kleidungsstück zu geben; es hat eines.',
		pairTwice: 'Erwartet wurden zwei verschiedene Kleidungsstücke für ein Paar; gegeben wurde zweimal dasselbe.',
		endsFirst: 'Erwartet wurde, dass die Saison nach ihrem Anfang endet ({{start}}); als Ende wurde {{end}} gegeben.',
		emptyBox:
			'Erwartet wurde ein Rahmen mit Breite und Höhe um jedes Kleidungsstück; gegeben wurde einer von {{left}}, {{top}} bis {{right}}, {{bottom}}.',
		cutUnread: 'Erwartet wurde ein gelesenes Foto, um es in zwei zu schneiden; dieses wartet noch.',
		sameBoxes:
			'Erwartet wurden zwei verschiedene Rahmen, einer um jedes Kleidungsstück; gegeben wurde zweimal derselbe.',
		nothingToUndo: 'Erwartet wurde eine Entscheidung zum Zurücknehmen; es gibt keine mehr.',
		nothingToRedo: 'Erwartet wurde eine zurückgenommene Entscheidung, um sie wieder zu tun; es gibt keine.',
		noScenario:
			'Erwartet wurde die Demo in {{folder}}; die Datei scenario.json fehlt. Stelle den Ordner demo-images wieder her.',
		notFound:
			'Erwartet wurde die Kennung von etwas, das es gibt ({{what}}); „{{id}}“ gehört zu nichts. Es kann gelöscht sein: Sieh im Papierkorb nach.',
		faultOfPhoto: 'Ein Foto ließ sich wegen eines Fehlers im Programm nicht lesen: {{error}}',
		faultOfDevice: 'Ein Vermerk zu einem gekoppelten Gerät ließ sich nicht schreiben: {{error}}',
		changedOnDisk:
			'Erwartet wurde „{{path}}“, wie es hinzukam; seine Bytes haben sich auf der Platte geändert. Die Sicherung enthält es, wie es ist.',
		codeOver:
			'Erwartet wurde ein noch gültiger Code zum Koppeln dieses Geräts; der letzte ist abgelaufen oder wurde zu oft versucht. Lass dir am Rechner, auf dem Dyelot läuft, einen neuen zeigen.',
		codeWrong_one:
			'Erwartet wurden die 8 Ziffern, die der Rechner zum Koppeln dieses Geräts zeigt; gegeben wurden andere. {{count}} Versuch bleibt.',
		codeWrong_other:
			'Erwartet wurden die 8 Ziffern, die der Rechner zum Koppeln dieses Geräts zeigt; gegeben wurden andere. {{count}} Versuche bleiben.',
		tooLongToJudge:
			'Erwartet wurde eine Saison, die sich in {{seconds}} Sekunden beurteilen lässt; dafür ist hier zu viel. Leg in den Papierkorb, was dir nicht mehr gehört, und frag noch einmal.',
		tooManyPhotos: 'Erwartet wurden weniger Fotos zugleich; andere kommen noch an. Schicke dieses gleich noch einmal.',
		noPng: 'Erwartet wurde ein PNG-Bild für den berichtigten Umriss; gegeben wurde etwas anderes.',
		readFault:
			'Erwartet wurde, dieses Foto zu lesen; das Programm selbst ist daran gescheitert. Das Foto bleibt: Versuche es noch einmal, und wenn es wieder scheitert, sage es uns.',
		readStopped: 'Das Lesen wurde vor diesem Foto angehalten. Es bleibt: Lies es, wann du magst.',
		something: 'etwas',
		staleNamed: '{{what}} „{{name}}“: {{fields}}',
		staleEntry: '{{what}}: {{fields}}',
		stale:
			'Erwartet wurde der neueste Stand für eine Änderung; inzwischen wurde in einem anderen Fenster oder Programm etwas geändert ({{told}}). Deine wurde nicht gespeichert: Sieh nach, was jetzt dasteht, und ändere es noch einmal.',
	},
	nouns: {
		photoOf: 'Foto von {{name}}',
		wearOn: 'Kleidungsstück, getragen am {{day}}',
		binned: 'etwas im Papierkorb',
		readPhoto: 'gelesenes Foto',
		pictureOf: 'Bild „{{name}}“ eines gelesenen Fotos',
		garment: 'Kleidungsstück',
		wear: 'Tragetag',
		'pair-word': 'Wort zu zwei Stücken',
		photo: 'Foto',
		season: 'Saison',
		inspiration: 'Bild der Wand',
		wish: 'Wunsch',
		candidate: 'Angebot',
		maker: 'Hersteller',
		'line-up': 'Auswahl',
		gap: 'Lücke',
		pairedDevice: 'gekoppeltes Gerät',
		it: 'es',
		palette: 'Palette',
		paletteColour: 'Farbe der Palette',
	},
	devices: {
		androidPhone: 'Android-Telefon',
		androidTablet: 'Android-Tablet',
		windows: 'Windows-Rechner',
		linux: 'Linux-Rechner',
		another: 'ein anderes Gerät',
	},
};
