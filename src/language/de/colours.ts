/** Colours on the page: their details, and adding one. */
export const COLOURS = {
	colours: {
		details: 'Einzelheiten',
		add: 'Farbe hinzufügen',
		addHow: 'Nenne sie, wähle sie im Raster, tippe ihre Zahl oder zeige in einem Bild auf sie.',
		colour: 'Farbe',
		placeholder: 'dunkelgrün',
		hint: 'ein Wort, hex (#a1b2c3) oder CIELAB-Zahlen (62 4.5 -12)',
		ownWord: 'Dein eigenes Wort dafür',
		meant: 'Farben dieses Namens',
		none: 'So heißt hier keine Farbe. Versuch ein anderes Wort, eine hex-Farbe wie #a1b2c3 oder drei CIELAB-Zahlen wie 62 4.5 -12.',
		grid: 'Aus einem Raster wählen',
		picture: 'Aus einem Bild nehmen',
		chooseFile: 'Ein Bild auf diesem Gerät',
		stays:
			'Das Bild bleibt im Browser und wird nicht aufbewahrt. Sein Licht ist nicht korrigiert: Für die wahre Farbe häng es an die Bilderwand und nimm dort die Pipette.',
		pointAt: 'Das Bild, aus dem eine Farbe genommen wird',
		noPicture: 'Erwartet wurde ein Bild, das dieser Browser öffnen kann; diese Datei ließ sich nicht öffnen.',
		addIt: 'Zur Palette hinzufügen',
		screen: 'Eine Farbe auf dem Bildschirm ist nicht der Stoff.',
		printed: 'Eine Farbe am Bildschirm ist nicht der Stoff, eine gedruckte auch nicht.',
		seenFrom: 'Ab etwa 3 sehen die meisten einen Unterschied.',
		underOne: 'unter 1 %',
	},
};
