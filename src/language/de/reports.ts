/** What the report says of what is held, and how far photos can be believed. */
export const REPORTS = {
	unmet: {
		tooFew: '{{slot}}: {{wanted}} gewünscht, {{can}} wählbar, {{missing}} zu wenig.',
		tooMany: '{{slot}}: {{wanted}} gewünscht, {{kept}} müssen bleiben, {{over}} zu viel. Alle bleiben.',
		sum: 'Die Zahlen je Sorte ergeben {{total}} Kleidungsstücke, die Saison will {{target}}; die je Sorte entscheiden.',
		noneWarm:
			'Gewünscht war ein Mantel oder eine Jacke für kalte Tage mit {{degrees}} Grad; nichts Wählbares ist so warm.',
		keptNotWarm:
			'Gewünscht war ein Mantel oder eine Jacke für kalte Tage mit {{degrees}} Grad; was bleiben muss, nimmt alle Plätze ein, und nichts davon ist so warm.',
		lastCoat:
			'„{{name}}“ passt nicht zur Palette, aber nichts anderes ist warm genug für kalte Tage mit {{degrees}} Grad: Es bleibt, bis du einen passenden Mantel findest. Mach daraus einen Wunsch.',
		gone: 'Ein Kleidungsstück, das bleiben muss, ist nicht mehr da.',
		notHere: '„{{name}}“ muss bleiben, ist aber {{place}}: Es ist nicht dabei. Hänge es zurück auf die Stange.',
		both: '„{{name}}“ soll bleiben und nie dabei sein; es bleibt, denn du kannst es noch herausnehmen.',
		though: '„{{name}}“ muss bleiben, aber {{out}}.',
	},
	paletteChange: {
		neither: 'Keines der beiden Jahre hat schon eine Palette.',
		noneBefore: 'Dieselbe Saison des letzten Jahres hatte keine Palette; es gibt nichts zu vergleichen.',
		noneNow: 'Diese Saison hat noch keine Palette; die vom letzten Jahr enthielt {{colours}}.',
		share: '{{percent}} % dieser Palette waren in der vom letzten Jahr',
		moved: 'verschoben: {{colours}}',
		new: 'neu: {{colours}}',
		gone: 'weg: {{colours}}',
	},
	aids: {
		paper: 'weißem Papier',
		card: 'einer Graukarte',
		both: 'weißem Papier und einer Graukarte',
		errs: 'mit {{aid}} um {{error}}',
		measured:
			'Gemessen an 8 Telefonfotos einer Tafel bekannter Farben, 5 davon von einer Marke, mit Formeln, die ohne die beurteilte Marke angepasst wurden: Ohne gezeigtes Weiß oder Grau irren sie im Mittel um {{nothing}}, {{aids}}.',
	},
	surerLight: {
		alone_one: 'mit {{aid}} allein etwa {{count}}',
		alone_other: 'mit {{aid}} allein etwa {{count}}',
		sentence_one:
			'{{count}} Stück ist wegen des Lichts unsicher. Mit {{aid}} daneben fotografiert, wäre etwa {{clear}} klar{{others}}.',
		sentence_other:
			'{{count}} Stücke sind wegen des Lichts unsicher. Mit {{aid}} daneben fotografiert, wären etwa {{clear}} klar{{others}}.',
	},
	reports: {
		sharedLight: 'Berichtigt durch ein Weiß oder Grau in einem anderen Bild, das im selben Licht aufgenommen wurde.',
		joinedLights_one: 'aus {{count}} Foto in {{lights}} Lichtern verbunden, deren Fehler sich zum Teil aufheben',
		joinedLights_other: 'aus {{count}} Fotos in {{lights}} Lichtern verbunden, deren Fehler sich zum Teil aufheben',
		joinedOneLight_one: 'aus {{count}} Foto in einem Licht verbunden, das gleich irrt',
		joinedOneLight_other: 'aus {{count}} Fotos in einem Licht verbunden, die gleich irren',
		nothingRead: 'noch keines seiner Fotos ist gelesen',
		addPhoto: 'Füge ein Foto davon hinzu.',
		noPalette: 'Die Saison hat noch keine Palette; es gibt nichts, womit es sich vergleichen ließe.',
		noColours: 'Seine Fotos haben noch keine Farben ergeben; es lässt sich nicht mit der Palette vergleichen.',
		caution:
			'Eine Farbe am Bildschirm ist nicht der Stoff, eine gedruckte auch nicht: Sieh ein Stück bei Tageslicht an, bevor du entscheidest.',
	},
};
