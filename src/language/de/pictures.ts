import type { PICTURES as ENGLISH } from '../en/pictures.ts';
import type { SameKeys } from '../same-keys.ts';

/** What is said of a board's pictures and of the pieces to look for, in German. */
export const PICTURES: SameKeys<typeof ENGLISH> = {
	pieceNames: {
		either: '{{name}} oder {{other}}',
	},
	wearable: {
		now: 'Dieses Bild können Sie jetzt tragen.',
		near_one: 'Dieses Bild können Sie tragen; ein Teil kommt nur nahe.',
		near_other: 'Dieses Bild können Sie tragen; {{count}} Teile kommen nur nahe.',
		away_one: 'Ein Teil fehlt: {{pieces}}.',
		away_other: '{{count}} Teile fehlen: {{pieces}}.',
		fromStore: 'Etwas davon ist eingelagert.',
		summary_one: '{{count}} von {{total}} Bildern können Sie jetzt tragen.',
		summary_other: '{{count}} von {{total}} Bildern können Sie jetzt tragen.',
		oneAway_one: 'Bei einem weiteren fehlt nur ein Teil.',
		oneAway_other: 'Bei {{count}} weiteren fehlt nur ein Teil.',
		none: 'Noch zeigt kein Bild Kleidung.',
	},
	answers: {
		has: '{{garment}}: Art und Farbe stimmen.',
		nearKind: '{{garment}}: Die Farbe stimmt, die Art des Teils nicht.',
		nearColour: '{{garment}}: Die Art stimmt, die Farbe kommt nahe.',
		nearPattern: '{{garment}} kommt nahe, hat aber ein anderes Muster.',
		missing: 'Nichts von Ihnen passt; am nächsten kommt {{garment}}.',
		nothing: 'So etwas besitzen Sie nicht.',
	},
	sheetPictures: {
		title: 'Diese Bilder zuerst tragen',
	},
	pairingRow: {
		worn: '{{colourA}} ({{pieceA}}) mit {{colourB}} ({{pieceB}}), auf: {{pictures}}',
	},
	wearPage: {
		title: 'Ihre Bilder tragen',
		more: 'Die übrigen {{count}} zeigen',
		pieces: 'Was es trägt',
		outfit: 'Das Outfit aus Ihren Sachen',
		sayKind: 'Sag, was das ist: {{name}}',
		isKind: 'Es ist: {{kind}}',
		otherKind: 'Etwas anderes …',
		told: 'wie du gesagt hast',
		guessed: 'geraten',
	},
	wishPage: {
		pieceOf: '{{name}}, wie ein Bild es zeigt',
		title: 'Teile, nach denen Ihre Bilder fragen',
		none: 'Zu jedem Teil auf Ihren Bildern besitzen Sie etwas Ähnliches.',
		wish: 'Als Wunsch merken',
		wishFor: 'Wünschen: {{name}}',
		wished: 'schon ein Wunsch',
		more: 'Die übrigen {{count}} zeigen',
		from: 'Aus den Bildern: {{pictures}}.',
	},
	wishedPieces: {
		seen_one: 'In einem Ihrer {{total}} Bilder.',
		seen_other: 'In {{count}} Ihrer {{total}} Bilder.',
		completes_one: 'Damit können Sie ein Bild mehr tragen.',
		completes_other: 'Damit können Sie {{count}} Bilder mehr tragen.',
		completesNone: 'Allein macht es kein Bild tragbar.',
		nearest: 'Am nächsten kommt von Ihren Sachen: {{garment}}.',
		nothing: 'So etwas besitzen Sie nicht.',
		perhaps:
			'Vielleicht tut es {{garment}}, vielleicht ist es zu weit weg: Halten Sie es bei Tageslicht neben das Bild.',
		unsure: 'Was für ein Teil es ist, ist geraten: Sehen Sie die Bilder an.',
	},
};
