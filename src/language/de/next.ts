/** What comes after a page of the season, and why. */
export const NEXT = {
	next: {
		label: 'Wie es weitergeht',
		goTo: 'Weiter: {{place}}',
		lookedBack: 'Du weißt, was du getragen hast. Sammle jetzt, wie die kommende Saison aussehen soll.',
		withoutPalette:
			'Leg ein paar Bilder hierher, und die Palette kommt aus ihnen. Deine Kleidung kannst du vorher oder nachher fotografieren.',
		photograph: 'Jetzt deine Kleidung, je Stück ein Foto: Jedes wird dann an die Farben der Saison gehalten.',
		sort_one:
			'{{count}} Kleidungsstück lässt sich jetzt an die Saison halten: Entscheide, ob es auf der Stange bleibt.',
		sort_other:
			'{{count}} Kleidungsstücke lassen sich jetzt an die Saison halten: Entscheide, welche auf der Stange bleiben.',
		meanwhile: 'Noch keine Fotos zur Hand? Fang mit Bildern davon an, wie die Saison aussehen soll.',
		kindsFirst_one: 'Bestätige die eine nur vermutete Art und sortiere dann: Eine falsche Art gibt falsche Outfits.',
		kindsFirst_other:
			'Bestätige die {{count}} nur vermuteten Arten und sortiere dann: Eine falsche Art gibt falsche Outfits.',
		paletteFirst: 'Deine Kleidung ist da. Es fehlt, wozu sie passen soll: Bilder davon, wie die Saison aussehen soll.',
		allSorted: 'Alles hat seinen Platz. Wähle jetzt die kleine Auswahl aus dem, was auf der Stange ist.',
		partSorted:
			'Noch ist nicht alles entschieden, aber eine Auswahl lässt sich jederzeit versuchen: aus dem, was auf der Stange ist.',
		notChosen: 'Ohne Auswahl zählt als Lücke, was der ganzen Stange fehlt; ansehen kannst du das schon.',
		chosen_one: 'Die Auswahl steht. {{count}} Lücke bleibt: Sieh, ob sie einen Wunsch wert ist.',
		chosen_other: 'Die Auswahl steht. {{count}} Lücken bleiben: Sieh, welche einen Wunsch wert sind.',
		wished: 'Etwas davon gefunden? Prüfe es vor dem Kauf.',
		bought:
			'Die Saison kann beginnen. Vermerke, was du trägst: Zweimal tippen am Tag sagt, was du nächstes Mal wählst.',
		printed:
			'Die Saison kann beginnen. Vermerke, was du trägst: Zweimal tippen am Tag sagt, was du nächstes Mal wählst.',
		daysTold: 'Was die Tage verlangen, ist gesagt. Sammle jetzt, wie die Saison aussehen soll.',
	},
} as const;
