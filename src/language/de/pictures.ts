import type { PICTURES as ENGLISH } from '../en/pictures.ts';
import type { SameKeys } from '../same-keys.ts';

/** What is said of a board's pictures and of the pieces to look for, in German. */
export const PICTURES: SameKeys<typeof ENGLISH> = {
	pieceNames: {
		either: '{{name}} oder {{other}}',
	},
	wearable: {
		now: 'Dieses Bild kannst du jetzt tragen.',
		near_one: 'Dieses Bild kannst du tragen; ein Teil kommt nur nahe.',
		near_other: 'Dieses Bild kannst du tragen; {{count}} Teile kommen nur nahe.',
		away_one: 'Ein Teil fehlt: {{pieces}}.',
		away_other: '{{count}} Teile fehlen: {{pieces}}.',
		fromStore: 'Etwas davon ist eingelagert.',
		storedForLater: 'Etwas Eingelagertes käme nahe, ist aber für eine andere Zeit des Jahres.',
		summary_one: '{{count}} von {{total}} Bildern kannst du jetzt tragen.',
		summary_other: '{{count}} von {{total}} Bildern kannst du jetzt tragen.',
		oneAway_one: 'Bei einem weiteren fehlt nur ein Teil.',
		oneAway_other: 'Bei {{count}} weiteren fehlt nur ein Teil.',
		none: 'Noch zeigt kein Bild Kleidung.',
	},
	answers: {
		has: '{{garment}}: Art und Farbe stimmen.',
		nearKind: '{{garment}}: Die Farbe stimmt, die Art des Teils nicht.',
		nearColour: '{{garment}}: Die Art stimmt, die Farbe kommt nahe.',
		nearPattern: '{{garment}} kommt nahe, hat aber ein anderes Muster.',
		missing: 'Nichts von dir passt; am nächsten kommt {{garment}}.',
		nothing: 'So etwas besitzt du nicht.',
	},
	pairingRow: {
		worn: '{{colourA}} ({{pieceA}}) mit {{colourB}} ({{pieceB}}), auf: {{pictures}}',
	},
	wearPage: {
		title: 'Deine Bilder tragen',
		more: 'Die übrigen {{count}} zeigen',
		pieces: 'Was es trägt',
		outfit: 'Das Outfit aus deinen Sachen',
		sayKind: 'Sag, was das ist: {{name}}',
		isKind: 'Es ist: {{kind}}',
		otherKind: 'Etwas anderes …',
		told: 'wie du gesagt hast',
		guessed: 'geraten',
	},
	wishPage: {
		pieceOf: '{{name}}, wie ein Bild es zeigt',
		title: 'Teile, nach denen deine Bilder fragen',
		none: 'Zu jedem Teil auf deinen Bildern besitzt du etwas Ähnliches.',
		wish: 'Als Wunsch merken',
		wishFor: 'Wünschen: {{name}}',
		wished: 'schon ein Wunsch',
		more: 'Die übrigen {{count}} zeigen',
		from: 'Aus den Bildern: {{pictures}}.',
	},
	wishedPieces: {
		seenOnly: 'In deinem einzigen Bild.',
		seen_one: 'In einem deiner {{total}} Bilder.',
		seen_other: 'In {{count}} deiner {{total}} Bilder.',
		completes_one: 'Damit kannst du ein Bild mehr tragen.',
		completes_other: 'Damit kannst du {{count}} Bilder mehr tragen.',
		completesNone: 'Allein macht es kein Bild tragbar.',
		nearest: 'Am nächsten kommt von deinen Sachen: {{garment}}.',
		nothing: 'So etwas besitzt du nicht.',
		perhaps: 'Vielleicht tut es {{garment}}, vielleicht ist es zu weit weg: Halte es bei Tageslicht neben das Bild.',
		unsure: 'Was für ein Teil es ist, ist geraten: Sieh die Bilder an.',
	},
};
