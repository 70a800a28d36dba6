import type { Lab65 } from '../../src/colour/lab65.ts';
import { lonersOf } from '../../src/wardrobe/pairs/loners.ts';
import { derivePalette } from '../../src/wardrobe/palette/palette.ts';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import { type Kind, slotOfKind } from '../../src/wardrobe/words/kind.ts';
import { newGarment } from '../../src/wardrobe/words/new-garment.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import type { Row, Table } from '../table.ts';
import type { RealReadings } from './real-readings.ts';

const SET = 33;
const DRAWS = 3;
const BOARD = 12;
const LOUD_PIECES = 24;
const LOUD_KINDS: readonly Kind[] = [
	'jumper',
	'shirt',
	'trousers',
	'skirt',
	'coat',
	'dress',
	't-shirt',
	'jacket',
	'shoes',
	'cardigan',
	'blazer',
	'shorts',
];
/** What an uncorrected photo of a phone errs by. */
const PHOTO_ERROR = 11.5;

/** The nth loud piece: hues 15 degrees apart, chroma 58 to 75, of a kind each. */
function loudPiece(nth: number): Garment {
	const hue = (15 * nth * Math.PI) / 180;
	const chroma = [62, 70, 58, 75][nth % 4]!;
	const lab: Lab65 = [[50, 60, 45, 65, 55][nth % 5]!, chroma * Math.cos(hue), chroma * Math.sin(hue)];
	const kind = LOUD_KINDS[nth % LOUD_KINDS.length]!;
	return {
		...newGarment('loud', 'loud', '2026-01-01T00:00:00Z', { kind, kindFrom: 'user' }),
		swatches: [{ lab, share: 1, slot: slotOfKind(kind), name: '' }],
		pattern: { type: 'plain', sure: 0.9 },
		trust: { error: PHOTO_ERROR, reasons: [], advice: null, untold: true },
	};
}

function drawn(garments: readonly Garment[], seed: string): Garment[] {
	const random = seededRandom(seed);
	return garments
		.map((garment) => ({ garment, at: random() }))
		.sort((one, other) => one.at - other.at)
		.slice(0, SET)
		.map(({ garment }) => garment);
}

const rowsOf = <T>(items: readonly T[], half: number): T[] => items.filter((_, index) => index % 2 === half);

/** One half of the homes, boards and loud pieces: where the planted one ranks, and what is flagged. */
function halfRow(name: string, { homes, outfits }: RealReadings, half: number): Row {
	const boards = Array.from({ length: Math.floor(outfits.length / BOARD) }, (_, index) =>
		derivePalette(outfits.slice(index * BOARD, (index + 1) * BOARD)),
	);
	const louds = rowsOf(
		Array.from({ length: LOUD_PIECES }, (_, nth) => loudPiece(nth)),
		half,
	);
	let [planted, told, first, found, plain, falseFlags] = [0, 0, 0, 0, 0, 0];
	for (const [place, home] of rowsOf(homes, half).entries())
		for (let draw = 0; draw < DRAWS; draw++) {
			const set = drawn(home, `loners ${half} ${place} ${draw}`);
			for (const [at, palette] of rowsOf(boards, half).entries()) {
				const context = { palette, pairings: [], pairWords: [], wornTogether: [] };
				plain++;
				falseFlags += lonersOf(set, context).filter(({ flagged }) => flagged).length;
				if ((at + draw) % 2 === 1) continue;
				for (const loud of louds) {
					const ranked = lonersOf([...set, loud], context);
					const own = ranked.find(({ garmentId }) => garmentId === loud.id);
					planted++;
					if (own) told++;
					if (own?.rank === 1) first++;
					if (own?.flagged) found++;
				}
			}
		}
	const ofTwelve = (part: number, whole: number) => (12 * part) / whole;
	return [name, planted, ofTwelve(first, planted), ofTwelve(first, told), ofTwelve(found, planted), falseFlags / plain];
}

/** Loud pieces planted in sets of 33 from real homes, against palettes of real outfits. Constants were chosen on the first half alone, the threshold of flags on both. */
export const lonerTable = (readings: RealReadings): Table => ({
	title: `One loud piece in ${SET} of a real home`,
	columns: [
		'',
		'sets',
		'ranked first, of 12',
		'of 12 that the palette does not hold',
		'flagged, of 12',
		'false flags a set without it',
	],
	rows: [halfRow('chosen on', readings, 0), halfRow('held out', readings, 1)],
});
