import type { STATIONS } from '../../../src/wardrobe/season/stations.ts';

/** What each page is for, in one or two sentences: said while its content is still on the way, too. */
export const PURPOSES: Readonly<Record<(typeof STATIONS)[number] | 'garments', string>> = {
	'look-back':
		'Two taps a day tell what you really wear. They show what goes together, what a wear costs, and what can leave with a good conscience.',
	direction:
		'Collect pictures of how the season should look. Their clothes, not their backgrounds, give the palette; every picture weighs the same.',
	sort: 'Go through everything once. Each suggestion has its reasons; year-round basics stay where they are; every decision can be taken back.',
	'line-up':
		'The set that makes the most outfits with the pieces you want of each slot. Pin what must stay, swap what you like, and watch the outfits and bands change.',
	'wish-list':
		'What the palette and the season ask for and nothing you hold answers. Look for a wish used first; new opens only after your own waiting time.',
	shop: 'Check a piece before you buy it: its colours against the palette and your wishes, twins you own, what it goes with, what it costs a wear.',
	garments:
		'Everything you own, stored pieces included. Drop all your photos at once: one garment a photo, laid flat or on a hanger, by a window.',
};
