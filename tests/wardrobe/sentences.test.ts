import { describe, expect, it } from 'vitest';
import { inLanguage } from '../../src/language/speak.ts';
import { JUDGEMENTS } from './judgement-sentences.ts';

// One sentence of each judgement, to be read aloud: true of that case, short, and saying what to do where there is something to do.
const TOLD: readonly (readonly [judgement: string, data: string, english: string, german: string])[] = [
	['fit', 'a rust shirt', '100 % of it matches rust. It fits.', '100 % davon trifft Rust. Es passt.'],
	[
		'fit, off',
		'a magenta shirt',
		'It is hot pink, which matches nothing in the palette.',
		'Es ist pink, und das passt zu nichts in der Palette.',
	],
	[
		'fit, in parts',
		'a shirt, rust with a third magenta',
		'66 % of it matches rust; the hot pink part, 34 %, matches nothing in the palette. It is near the palette, not in it.',
		'66 % davon trifft Rust; der Teil in Pink, 34 %, passt zu nichts in der Palette. Es liegt nahe an der Palette, nicht darin.',
	],
	[
		'fit, unsure',
		'a grey-oat shirt in bad light',
		'100 % of it is some way from oat. Unsure, likely near: by the photo it may be anything from off to fitting (the lamp is unknown). Look at it in daylight.',
		'100 % davon liegt ein Stück weg von Oat. Unsicher, wohl nahe dran: Nach dem Foto kann es alles von unpassend bis passend sein (the lamp is unknown). Schau es bei Tageslicht an.',
	],
	[
		'fit, no palette',
		'a season without pictures',
		'The season has no palette yet, so there is nothing to compare it with.',
		'Die Saison hat noch keine Palette; es gibt nichts, womit es sich vergleichen ließe.',
	],
	[
		'light',
		'seven shirts farther and farther from oat, in bad light',
		'6 pieces are unsure because of the light. Photographed with white paper and a grey card beside them, about 3 would be clear; with a grey card alone about 2; with white paper alone about 1.',
		'6 Stücke sind wegen des Lichts unsicher. Mit weißem Papier und einer Graukarte daneben fotografiert, wären etwa 3 klar; mit einer Graukarte allein etwa 2; mit weißem Papier allein etwa 1.',
	],
	[
		'palette cover',
		'one picture of two in its colours',
		'The palette holds 50 % of the cloth in your pictures. 1 picture is mostly left out: ask for more colours, add one by hand, or take the picture off the board.',
		'Die Palette hält 50 % des Stoffs in deinen Bildern. 1 Bild bleibt größtenteils außen vor: Verlange mehr Farben, füge eine von Hand hinzu oder nimm das Bild von der Wand.',
	],
	[
		'palette change',
		'teal new, plum gone',
		"90 % of this palette was in last year's; new: teal; gone: plum.",
		'90 % dieser Palette waren in der vom letzten Jahr; neu: teal; weg: plum.',
	],
	[
		'season',
		'shorts in a cold spring',
		'it is for days of 21 degrees or more, and a warm day of the season has 12',
		'es ist für Tage ab 21 Grad, und ein warmer Tag der Saison hat 12',
	],
	[
		'enough',
		'one shirt, one pair of trousers',
		'Between two washes, 7 days apart, the tops last 1 day, the bottoms 4 days: 6 days short. Wash sooner, or add another top.',
		'Zwischen zwei Wäschen liegen 7 Tage; die Oberteile reichen 1 Tag, die Unterteile 4 Tage: Es fehlen 6 Tage. Wasche früher oder nimm ein Oberteil dazu.',
	],
	[
		'line-up',
		'four pieces, two places open',
		'3 garments: 1 of 7 days between washes dressed and 70 % of the palette covered. It is within 2 % of the best possible. 2 places stay open: nothing else you own is worth one. Make each a wish, or ask for fewer.',
		'3 Kleidungsstücke: 1 von 7 Tagen zwischen zwei Wäschen angezogen und 70 % der Palette gedeckt. Bis zum Bestmöglichen fehlen höchstens 2 %. 2 Plätze bleiben offen: Nichts anderes, was du hast, ist einen wert. Mach aus jedem einen Wunsch oder verlange weniger.',
	],
	[
		'line-up, what cannot be met',
		'shorts that must be kept in spring',
		'linen shorts must be kept, but it is for summer, not spring. Tops: 2 wanted, 1 can be chosen, 1 too few. Coats and jackets: 1 wanted, 0 can be chosen, 1 too few. Wanted a coat or jacket for cold days of 4 degrees; none that can be chosen is that warm.',
		'„linen shorts“ muss bleiben, aber es ist für den Sommer, nicht für den Frühling. Oberteile: 2 gewünscht, 1 wählbar, 1 zu wenig. Mäntel und Jacken: 1 gewünscht, 0 wählbar, 1 zu wenig. Gewünscht war ein Mantel oder eine Jacke für kalte Tage mit 4 Grad; nichts Wählbares ist so warm.',
	],
	[
		'what if',
		'the boots taken out',
		'4 garments make 4 outfits, about as many as before. They cover 50 % of the palette, before 52 %. No shoes are among them, so outfits are counted without.',
		'4 Kleidungsstücke ergeben 4 Outfits, etwa so viele wie vorher. Sie decken 50 % der Palette, vorher 52 %. Schuhe sind nicht dabei, darum wird ohne sie gezählt.',
	],
	[
		'pair',
		'an oat shirt with ink trousers',
		'Both lie in the season’s palette.',
		'Beide liegen in der Palette der Saison.',
	],
	[
		'pair, nothing known',
		'a magenta jumper with a lime skirt',
		'Nothing speaks for loud jumper with lime skirt yet, and nothing against. Wear it or approve it, and it counts.',
		'Für „loud jumper“ mit „lime skirt“ spricht noch nichts, und nichts dagegen. Trag es oder sag ja, dann zählt es.',
	],
	[
		'twins',
		'two shirts of one colour',
		'oat shirt and other shirt are nearly the same colour.',
		'„oat shirt“ und „other shirt“ haben fast dieselbe Farbe.',
	],
	[
		'loner',
		'a magenta jumper among greys',
		'Does loud jumper go with anything? It lies outside the palette, and far from most of what you own. grey skirt could carry it: wear the two together, and that settles it. New photos would most likely say the same.',
		'Passt „loud jumper“ zu etwas? Es liegt außerhalb der Palette und weit weg von dem meisten, was du hast. „grey skirt“ könnte es tragen: Zieh beides zusammen an, dann ist es entschieden. Neue Fotos sagten sehr wahrscheinlich dasselbe.',
	],
	[
		'picture',
		'one that lacks a plum coat',
		'One piece is missing: plum coat.',
		'Ein Teil fehlt: Mantel, dunkelviolett.',
	],
	[
		'pictures',
		'one that lacks a plum coat',
		'You can wear 0 of 1 pictures now. One more is a single piece away.',
		'0 von 1 Bildern kannst du jetzt tragen. Bei einem weiteren fehlt nur ein Teil.',
	],
	[
		'gap, a piece',
		'a plum coat of one picture',
		'Missing: plum coat. In your only picture. With it you could wear one more picture. You own nothing like it. One such piece would add 1 outfit.',
		'Es fehlt: Mantel, dunkelviolett. In deinem einzigen Bild. Damit kannst du ein Bild mehr tragen. So etwas besitzt du nicht. Ein solches Stück brächte 1 Outfit dazu.',
	],
	[
		'gap, perhaps',
		'a plum coat of two pictures, and a violet one owned',
		'Perhaps missing: plum coat. In each of your 2 pictures. Your violet coat may do, or be too far off: hold it beside the picture in daylight. One such piece would add 1 outfit.',
		'Vielleicht fehlt: Mantel, dunkelviolett. In jedem deiner 2 Bilder. Vielleicht genügt „violet coat“, vielleicht ist es zu anders: Halte es bei Tageslicht neben das Bild. Ein solches Stück brächte 1 Outfit dazu.',
	],
	[
		'gap, a colour',
		'rust, of which nothing is held',
		'Nothing you have here is rust. No picture shows where it is worn; among tops it would add most outfits. One such piece would add 1 outfit.',
		'Nichts, was du hier hast, ist rust. Kein Bild zeigt, wo es getragen wird; am meisten Outfits bringt es hier: Oberteile. Ein solches Stück brächte 1 Outfit dazu.',
	],
	[
		'gap, stored',
		'rust, with a rust skirt in store',
		'First bring rust skirt back: it is stored and could fill this gap. Nothing you have here is rust. No picture shows where it is worn; among tops it would add most outfits. One such piece would add 1 outfit.',
		'Hol zuerst „rust skirt“ zurück: Es ist eingelagert und könnte die Lücke füllen. Nichts, was du hier hast, ist rust. Kein Bild zeigt, wo es getragen wird; am meisten Outfits bringt es hier: Oberteile. Ein solches Stück brächte 1 Outfit dazu.',
	],
	[
		'gap, a slot',
		'one pair of shoes of four wanted',
		'Shoes: the season wants 4, you have 1. One in oat would add most: 4 outfits.',
		'Schuhe: Die Saison will 4, du hast 1. Am meisten brächte eines in Oat: 4 Outfits mehr.',
	],
	[
		'wish',
		'a rust jumper wanted since January',
		'It would add 1 outfit. Nothing you have is of its colour. You have wanted it for 68 days, so your waiting time is over: look for it used first, then new from makers you trust.',
		'Es brächte 1 Outfit dazu. Nichts, was du hast, hat seine Farbe. Du wünschst es dir seit 68 Tagen, deine Wartezeit ist also um: Such es zuerst gebraucht, dann neu von Herstellern, denen du vertraust.',
	],
	[
		'wish, waiting',
		'a rust jumper wanted since last week, beside another wish',
		'Number 2 of 2: you have too little of its colour, and it would add outfits. One other wish is worth about as much: the one wanted longer comes first. It would add 1 outfit. Look for it used. If you still want it in 23 days, look for a new one too, from makers you trust.',
		'Nummer 2 von 2: von seiner Farbe hast du zu wenig, und es brächte neue Outfits. Ein anderer Wunsch ist etwa ebenso viel wert: Der ältere steht vorn. Es brächte 1 Outfit dazu. Such es gebraucht. Willst du es in 23 Tagen noch, such es auch neu, von Herstellern, denen du vertraust.',
	],
	[
		'candidate, take',
		'a rust jumper for 60',
		'Take it. It answers the wish “rust jumper”.',
		'Nimm es. Es erfüllt den Wunsch „rust jumper“.',
	],
	[
		'candidate, think',
		'a rust jumper over the limit',
		'Think about it. It costs 95, over your limit of 80.',
		'Überleg es dir. Es kostet 95, mehr als deine Grenze von 80.',
	],
	[
		'candidate, leave',
		'a lime jumper',
		'Leave it. It is lime, which matches nothing in the palette.',
		'Lass es. Es ist gelbgrün, und das passt zu nichts in der Palette.',
	],
	[
		'candidate, ask',
		'a jumper whose colour the photo cannot tell',
		'Ask for a photo beside a sheet of white paper, or take one: this one does not tell its colour well enough.',
		'Bitte um ein Foto neben einem weißen Blatt oder mach eines: Dieses zeigt seine Farbe nicht gut genug.',
	],
	[
		'candidate, own',
		'the very photo of an owned jumper',
		'You own this: mine has the very same photo.',
		'Das hast du schon: „mine“ hat dasselbe Foto.',
	],
	[
		'sorting, keep',
		'an oat shirt worn last week',
		'Keep it on the rail: its colour fits the season.',
		'Auf der Stange lassen: seine Farbe passt zur Saison.',
	],
	[
		'sorting, store',
		'a magenta jumper, wears noted for nine days',
		'Store it: its colour is off the palette of Spring, from 1 Mar 2026 on; it may go with nothing else you have.',
		'Einlagern: seine Farbe passt nicht zur Palette von Spring, ab 01.03.2026; es passt vielleicht zu nichts anderem, was du hast.',
	],
	[
		'sorting, let go',
		'a magenta jumper last worn three years ago',
		'Let it go (swap): it was last worn on 1 Mar 2023, and two of its seasons have passed; its colour is off the palette of Spring, from 1 Mar 2026 on; it may go with nothing else you have.',
		'Weggeben (tauschen): zuletzt getragen am 01.03.2023, und zwei seiner Saisons sind vergangen; seine Farbe passt nicht zur Palette von Spring, ab 01.03.2026; es passt vielleicht zu nichts anderem, was du hast.',
	],
	[
		'sorting, another season',
		'shorts in spring',
		'Store it: it is for summer, not spring.',
		'Einlagern: es ist für den Sommer, nicht für den Frühling.',
	],
	[
		'sorting, up to you',
		'a grey skirt not worn for half a year',
		'Up to you: its colour fits the season; no wear of it is noted since 1 Aug 2025. Wear it once, in daylight, then decide.',
		'Du entscheidest: seine Farbe passt zur Saison; seit 01.08.2025 ist kein Tragen vermerkt. Trag es einmal bei Tageslicht, dann weißt du mehr.',
	],
	[
		'look-back, worn again',
		'a shirt with trousers on two days',
		'oat shirt with ink trousers: worn on 2 days. An outfit that works.',
		'oat shirt mit ink trousers: an 2 Tagen getragen. Das bewährt sich.',
	],
	[
		'look-back, never combined',
		'a loved shirt and loved boots',
		'oat shirt and ink boots are favourites of yours and go together, but you never wore them on one day: try it.',
		'„oat shirt“ und „ink boots“ gehören zu deinen Lieblingen und passen zusammen, aber du hast sie nie am selben Tag getragen: Probier es.',
	],
	[
		'look-back, never worn',
		'trousers that were not worn',
		'Not worn yet, though something on the rail goes with each: grey skirt; ink boots; ink trousers. Try them.',
		'Noch nicht getragen, obwohl auf der Stange zu jedem etwas passt: grey skirt; ink boots; ink trousers. Probier sie.',
	],
	[
		'look-back, never worn',
		'the jumper that goes with nothing',
		'loud jumper: not worn, perhaps because it goes with nothing else you have. Try it once with grey skirt, or let it go.',
		'loud jumper: nicht getragen, vielleicht weil es zu nichts anderem passt, das du hast. Versuch es einmal mit „grey skirt“ oder gib es weg.',
	],
	[
		'look-back, never worn',
		'shorts, wears noted since last week',
		'linen shorts: not worn yet; it is for summer, not spring. Its time is still to come.',
		'linen shorts: noch nicht getragen; es ist für den Sommer, nicht für den Frühling. Seine Zeit kommt noch.',
	],
	[
		'look-back',
		'one wear noted',
		'1 wear in the last twelve months; 4 of 5 garments were never worn.',
		'1-mal getragen in den letzten zwölf Monaten. 5 Kleidungsstücke, davon 4 nie getragen.',
	],
	[
		'what is held',
		'five pieces on the rail',
		'5 garments on the rail make 4 outfits for the days of this season. They cover 52 % of the palette.',
		'5 Kleidungsstücke auf der Stange ergeben für die Tage dieser Saison 4 Outfits. Sie decken 52 % der Palette.',
	],
];

describe('the sentences of the judgements', () => {
	it('are all here, each with the data behind it', () => {
		expect(TOLD.map(([judgement, data]) => [judgement, data])).toEqual(
			JUDGEMENTS.map(([judgement, data]) => [judgement, data]),
		);
	});

	it.each(TOLD.map((told, index) => [...told, JUDGEMENTS[index]![2]] as const))(
		'%s: of %s it says "%s"',
		(_, __, english, german, told) => {
			expect(inLanguage('en-GB', told)).toBe(english);
			expect(inLanguage('de', told)).toBe(german);
		},
	);
});
