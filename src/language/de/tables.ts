/** Tables that come in: what a heading and a cell may hold. */
export const TABLES = {
	tableCells: {
		oneOf: 'eins von {{words}}',
		price: 'ein Preis in Ziffern, wie 24 oder 24,50',
		step: 'eine ganze Zahl von 0 bis 3',
		anyOf: 'beliebige von {{words}}',
		yesOrNo: 'ja oder nein',
		atMost: 'höchstens {{most}} Zeichen',
		id: 'die Kennung eines Kleidungsstücks, wie ein Export sie schreibt',
		day: 'ein Tag des Kalenders wie 2026-03-14',
		kind: 'eine Art von Kleidungsstück',
		once: 'jede Kennung einmal (sie steht auch in Zeile {{line}})',
		name: 'ein Name',
	},
	tables: {
		expected: 'Erwartet wurde {{what}} für „{{column}}“; gegeben wurde „{{received}}“.',
		tookGarments: 'Eine Tabelle übernommen: {{added}} hinzugefügt, {{changed}} geändert',
		tookWears_one: 'Eine Tabelle übernommen: {{count}} Tragetag',
		tookWears_other: 'Eine Tabelle übernommen: {{count}} Tragetage',
		workbook:
			'Erwartet wurde eine Tabelle als Text (CSV); gegeben wurde die eigene Datei eines Tabellenprogramms. Speichere sie dort als „CSV“ und bring diese Datei.',
		noHeading: 'Erwartet wurde eine Tabelle (CSV) mit Überschrift; gegeben wurde eine Datei ohne lesbare Zeile.',
		openQuote:
			'Erwartet wurde ein schließendes Anführungszeichen einer Zelle; das hier geöffnete wird nie geschlossen. Schließe oder entferne es.',
		noDay: 'Erwartet wurde ein Tag des Kalenders wie 2026-03-14 für „Tag“; gegeben wurde „{{received}}“.',
		laterDay: 'Erwartet wurde ein Tag bis heute ({{today}}) für „Tag“; gegeben wurde „{{received}}“.',
		severalGarments_one:
			'Erwartet wurde Name oder Kennung eines Kleidungsstücks für „Kleidungsstück“; gegeben wurde „{{received}}“, und {{count}} heißen so.',
		severalGarments_other:
			'Erwartet wurde Name oder Kennung eines Kleidungsstücks für „Kleidungsstück“; gegeben wurde „{{received}}“, und {{count}} heißen so.',
		noGarment:
			'Erwartet wurde Name oder Kennung eines Kleidungsstücks für „Kleidungsstück“; gegeben wurde „{{received}}“, und keines heißt so.',
		noColumn_one: 'Erwartet wurde eine Spalte {{missing}} in der Überschrift der Tabelle; gegeben wurde {{heading}}.',
		noColumn_other: 'Erwartet wurden Spalten {{missing}} in der Überschrift der Tabelle; gegeben wurde {{heading}}.',
	},
	garmentsTable: {
		title: 'Kleidung aus einer Tabelle übernehmen oder mitnehmen',
		takeAlong: 'Alle Kleidung als Tabelle mitnehmen (CSV)',
		how: 'Ändere sie in einem Tabellenprogramm und bring sie hierher zurück: Was du geändert hast, wird geändert, nichts verdoppelt sich.',
		label: 'Eine Tabelle mit Kleidung (CSV) mit den Spalten Name und Art',
		added: '{{count}} neu.',
		addedNamed: '{{count}} neu: {{names}}.',
		likeOthers_one: '{{count}} davon hat Namen und Art eines Stücks, das du hast: Sieh nach, ob es dasselbe ist.',
		likeOthers_other: '{{count}} davon haben Namen und Art eines Stücks, das du hast: Sieh nach, ob es dieselben sind.',
		changed: '{{count}} zu ändern.',
		changedNamed: '{{count}} zu ändern: {{names}}.',
		changedOne: '{{name}} ({{fields}})',
		andMore: '{{names}} …',
		unchanged: '{{count}} wie gehabt.',
		take: '{{garments}} übernehmen',
		change: '{{garments}} ändern',
		takeAndChange: '{{added}} übernehmen und {{changed}} ändern',
	},
	tableImport: {
		comma: 'Kommas',
		semicolon: 'Strichpunkten',
		tab: 'Tabulatoren',
		takenAs:
			'Gelesen als Text in {{encoding}} mit {{separator}} zwischen den Zellen. Sehen Buchstaben oder Spalten falsch aus, speichere die Tabelle noch einmal als CSV in UTF-8.',
		problems_one: 'Eine Zeile lässt sich nicht nehmen; die anderen schon.',
		problems_other: '{{count}} Zeilen lassen sich nicht nehmen; die anderen schon.',
		first: 'Die ersten {{shown}}:',
		line: 'Zeile {{line}}: {{message}}',
	},
};
