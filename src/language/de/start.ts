/** The first page. */
export const START = {
	start: {
		title: 'Plane eine Saison aus wenigen Kleidern, die zusammenpassen.',
		what: 'Fotos deiner Kleidung und Bilder davon, wie die Saison aussehen soll, gehen hinein; was passt, was fehlt und eine kleine Auswahl, die trägt, kommen heraus, jedes mit seinem Grund. Nichts verlässt diesen Rechner.',
		begin: 'Mit deiner eigenen Saison beginnen',
		demoTitle: 'Oder sieh dich erst um',
		demoWhat:
			'Ein erfundener Kleiderschrank: eine Imkerin in einer Stadt am Fluss. Ein Klick legt ihn wieder in den Papierkorb.',
		demo: 'Das Beispiel öffnen',
		demoBusy: 'Das Beispiel wird geöffnet …',
		demoTime: 'Das dauert etwa eine halbe Minute.',
		path: 'Der Weg einer Saison',
		'look-back': 'was getragen wurde, was fehlte',
		direction: 'Farben aus deinen Bildern',
		sort: 'behalten, einlagern, weggeben',
		'line-up': 'die kleine Auswahl',
		'wish-list': 'was fehlt',
		shop: 'vor dem Kauf geprüft',
		archived: 'Archivierte Saisons',
		beside: 'Alle Saisons: Sicherungen, Geräte, Sprache',
		loading: 'deine Saisons',
	},
} as const;
