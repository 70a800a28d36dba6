import { pairTable } from '../../src/wardrobe/pairs/pair-table.ts';
import { pairingsFromReadings } from '../../src/wardrobe/pairs/pairings.ts';
import { derivePalette } from '../../src/wardrobe/palette/palette.ts';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import type { Kind } from '../../src/wardrobe/words/kind.ts';
import { newGarment } from '../../src/wardrobe/words/new-garment.ts';
import type { Reading } from '../../src/wardrobe/words/reading.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import type { Slot } from '../../src/wardrobe/words/slot.ts';
import type { Row, Table } from '../table.ts';
import type { RealReadings } from './real-readings.ts';

const OTHERS = 9;
const BOARD = 24;
const KIND_OF: Readonly<Partial<Record<Slot, Kind>>> = {
	top: 'shirt',
	bottom: 'trousers',
	outer: 'jacket',
	shoes: 'shoes',
};
const PAIRS: readonly (readonly [Slot, Slot])[] = [
	['top', 'bottom'],
	['outer', 'bottom'],
	['bottom', 'shoes'],
	['outer', 'top'],
];

/** What an outfit wears in a slot, as a garment; null where it wears nothing there. */
function wornIn({ swatches, trust }: Reading, slot: Slot, id: string): Garment | null {
	const own = swatches.filter((swatch) => swatch.slot === slot);
	const area = own.reduce((sum, { share }) => sum + share, 0);
	if (!(area > 0)) return null;
	return {
		...newGarment(id, id, '2026-01-01T00:00:00Z', { kind: KIND_OF[slot]!, kindFrom: 'user' }),
		swatches: own.map((swatch) => ({ ...swatch, share: swatch.share / area })),
		pattern: { type: 'plain', sure: 0.5 },
		trust,
	};
}

/** How the true partner stands among others: how often before another one (ties by half), and how often first of all. */
function rowOf(outfits: readonly Reading[], boards: readonly Reading[], [slot, other]: readonly [Slot, Slot]): Row {
	const random = seededRandom(`retrieval ${slot} ${other}`);
	const contexts = Array.from({ length: Math.floor(boards.length / BOARD) }, (_, index) => {
		const board = boards.slice(index * BOARD, (index + 1) * BOARD);
		return { palette: derivePalette(board), pairings: pairingsFromReadings(board), pairWords: [], wornTogether: [] };
	});
	const both = outfits.flatMap((reading, index) => {
		const [one, partner] = [wornIn(reading, slot, `piece ${index}`), wornIn(reading, other, `partner ${index}`)];
		return one && partner ? [{ one, partner }] : [];
	});
	let [asked, before, first] = [0, 0, 0];
	for (const [index, { one, partner }] of both.entries()) {
		const strangers = both
			.filter((_, at) => at !== index)
			.map((pair) => ({ partner: pair.partner, at: random() }))
			.sort((a, b) => a.at - b.at)
			.slice(0, OTHERS);
		const table = pairTable(
			[one, partner, ...strangers.map((stranger) => stranger.partner)],
			contexts[index % contexts.length]!,
		);
		const place = table.ranked(0, { include: () => true }).indexOf(1);
		asked++;
		before += (strangers.length - place) / strangers.length;
		if (place === 0) first++;
	}
	return [`${slot} and ${other}`, asked, before / asked, (100 * first) / asked];
}

/** Pieces of street photos: the pairing judgement ranks the true partner among nine of other photos, with boards of other photos. */
export function retrievalTable({ outfits }: RealReadings): Table {
	const half = Math.floor(outfits.length / 2);
	return {
		title: `The true partner among ${OTHERS} others`,
		columns: [
			'',
			'outfits',
			'before another one (0.5 = chance)',
			`first of ${OTHERS + 1}, % (${100 / (OTHERS + 1)} = chance)`,
		],
		rows: PAIRS.map((pair) => rowOf(outfits.slice(0, half), outfits.slice(half), pair)),
		notes: ['Two pieces of one photo share its light, which helps; greys are taken as exact greys against that.'],
	};
}
