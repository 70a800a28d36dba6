/** Tables that come in: what a heading and a cell may hold. */
export const TABLES = {
	tableCells: {
		oneOf: 'one of {{words}}',
		price: 'a price in digits, like 24 or 24.50',
		step: 'a whole number from 0 to 3',
		anyOf: 'any of {{words}}',
		yesOrNo: 'yes or no',
		atMost: 'at most {{most}} characters',
		id: 'the id of a garment, as an export writes it',
		day: 'a day of the calendar like 2026-03-14',
		kind: 'a kind of garment',
		once: 'each id once (it is on line {{line}} too)',
		name: 'a name',
	},
	tables: {
		expected: 'Expected {{what}} for "{{column}}"; received "{{received}}".',
		tookGarments: 'Took in a table: {{added}} added, {{changed}} changed',
		tookWears_one: 'Took in a table: {{count}} wear',
		tookWears_other: 'Took in a table: {{count}} wears',
		workbook:
			'Expected a table as text (CSV); received a spreadsheet\'s own file. Save it there as "CSV", then bring that file.',
		noHeading: 'Expected a table (CSV) with a heading; received a file without a line that can be read.',
		openQuote:
			'Expected a closing quotation mark for a cell; the one that is opened here is never closed. Close or remove it.',
		noDay: 'Expected a day of the calendar like 2026-03-14 for "day"; received "{{received}}".',
		laterDay: 'Expected a day up to today ({{today}}) for "day"; received "{{received}}".',
		severalGarments_one:
			'Expected the name or id of one garment for "garment"; received "{{received}}", and {{count}} garments have that name.',
		severalGarments_other:
			'Expected the name or id of one garment for "garment"; received "{{received}}", and {{count}} garments have that name.',
		noGarment: 'Expected the name or id of one garment for "garment"; received "{{received}}", and no garment has it.',
		noColumn_one: 'Expected a column {{missing}} in the heading of the table; received {{heading}}.',
		noColumn_other: 'Expected columns {{missing}} in the heading of the table; received {{heading}}.',
	},
	garmentsTable: {
		title: 'Bring garments in from a table, or take them along',
		takeAlong: 'Take all garments along as a table (CSV)',
		how: 'Change it in a spreadsheet and bring it back here: what you changed is changed, nothing is doubled.',
		label: 'A table of garments (CSV) with the columns name and kind',
		added: '{{count}} new.',
		addedNamed: '{{count}} new: {{names}}.',
		likeOthers_one: '{{count}} of them has the name and kind of a garment you have: look whether it is the same one.',
		likeOthers_other:
			'{{count}} of them have the name and kind of a garment you have: look whether they are the same ones.',
		changed: '{{count}} to change.',
		changedNamed: '{{count}} to change: {{names}}.',
		changedOne: '{{name}} ({{fields}})',
		andMore: '{{names}} …',
		unchanged: '{{count}} as they are.',
		take: 'Take {{garments}} in',
		change: 'Change {{garments}}',
		takeAndChange: 'Take {{added}} in and change {{changed}}',
	},
	tableImport: {
		comma: 'commas',
		semicolon: 'semicolons',
		tab: 'tabs',
		takenAs:
			'Taken as {{encoding}} text with {{separator}} between the cells. If letters or columns look wrong, save the table once more as CSV in UTF-8.',
		problems_one: 'One line cannot be taken; the others can.',
		problems_other: '{{count}} lines cannot be taken; the others can.',
		first: 'The first {{shown}}:',
		line: 'Line {{line}}: {{message}}',
	},
} as const;
