/** What is said of a board's pictures and of the pieces to look for. */
export const PICTURES = {
	pieceNames: {
		either: '{{name}} or {{other}}',
	},
	wearable: {
		now: 'You can wear this picture now.',
		near_one: 'You can wear this picture; one piece comes near, not more.',
		near_other: 'You can wear this picture; {{count}} pieces come near, not more.',
		away_one: 'One piece is missing: {{pieces}}.',
		away_other: '{{count}} pieces are missing: {{pieces}}.',
		fromStore: 'Part of it is in storage.',
		summary_one: 'You can wear {{count}} of {{total}} pictures now.',
		summary_other: 'You can wear {{count}} of {{total}} pictures now.',
		oneAway_one: 'One more is a single piece away.',
		oneAway_other: '{{count}} more are a single piece away.',
		none: 'No picture shows clothes yet.',
	},
	answers: {
		has: '{{garment}} has the kind and the colour.',
		nearKind: '{{garment}} has the colour, but is another kind of piece.',
		nearColour: '{{garment}} is the right kind; its colour comes near.',
		nearPattern: '{{garment}} comes near, but its pattern differs.',
		missing: 'Nothing you own answers it; {{garment}} comes nearest.',
		nothing: 'You own nothing like it.',
	},
	wishedPieces: {
		seen_one: 'In one of your {{total}} pictures.',
		seen_other: 'In {{count}} of your {{total}} pictures.',
		completes_one: 'With it you could wear one more picture.',
		completes_other: 'With it you could wear {{count}} more pictures.',
		completesNone: 'It alone completes no picture.',
		nearest: 'The nearest you own is the {{garment}}.',
		nothing: 'You own nothing like it.',
		unsure: 'What kind of piece it is, is a guess: look at the pictures.',
	},
} as const;
