/**
 * Measures how well the program tells the kinds of worn pieces, on outfits whose pixels somebody has marked:
 *
 *     node --import tsx bench/kinds/main.ts FOLDER
 *
 * FOLDER holds photo/NAME.webp, label/NAME.png (grey value = index into "kinds" of index.json), tagged/NAME.webp, and index.json with the lists
 * "val" and "tag_val". Pieces of 1 % of the frame or more; of tagged shoes all.
 */
import { kindsOfPieces } from '../../src/photo/networks/kinds/kinds.ts';
import { parsePhoto } from '../../src/photo/networks/outline/parser.ts';
import { LEAST_PIECE, type MarkedPiece, markedPieces } from '../../src/reading/kinds/marked-pieces.ts';
import { TOLD_KINDS } from '../../src/reading/kinds/told-kinds.ts';
import { outlineOf } from '../../src/reading/outline/outline.ts';
import { KIND_SURE_FROM } from '../../src/wardrobe/words/kind.ts';
import { SLOTS, type Slot } from '../../src/wardrobe/words/slot.ts';
import { type Row, type Table, textOfTable } from '../table.ts';
import { commonestErrors, type Guessed, leastFor, rightShares, saidFrom } from './first-guesses.ts';
import { ANY_SHOE, type LabelledOutfit, labelledOutfits, taggedOutfits } from './labelled-outfits.ts';

const [folder, ...more] = process.argv.slice(2);
if (!folder || more.length > 0) {
	console.error('Expected one folder of labelled outfits. Usage: node --import tsx bench/kinds/main.ts FOLDER');
	process.exit(2);
}
const percent = (part: number) => (part * 100).toFixed(1);
const known = new Set<string>(TOLD_KINDS.flatMap(({ kind }) => (kind ? [kind] : [])));

/** Each kind that is marked, as a piece whose slot is known. */
function truePieces({ kinds, marked }: LabelledOutfit): { kind: string; piece: MarkedPiece }[] {
	return kinds.flatMap(([kind, slot], label) => {
		if (!SLOTS.includes(slot as Slot) || kind === ANY_SHOE) return [];
		const marks = marked.map((one) => (one === label ? 1 : 0));
		const area = marks.reduce((sum, mark) => sum + mark, 0);
		return area < LEAST_PIECE * marks.length
			? []
			: [{ kind, piece: { slot: slot as Slot, slotTold: true, marks, area } }];
	});
}

const guesses: Guessed[] = [];
const sets = { told: 0, wanted: 0, right: 0, sure: 0, sureRight: 0 };
// Where the labels only say "shoe": pieces of ours told as a shoe, marked shoes, and both in one outfit.
const shoesOnly = { told: 0, wanted: 0, right: 0 };
let outfits = 0;
for await (const outfit of labelledOutfits(folder)) {
	const parse = await parsePhoto(outfit.pixels);
	const truth = truePieces(outfit);
	const told = await kindsOfPieces(
		outfit.pixels,
		outfit.labels,
		truth.map(({ piece }) => piece),
		parse.picture,
	);
	for (const [index, { kind }] of truth.entries()) guesses.push({ truth: kind, told: told[index]! });

	const { labels } = outlineOf(outfit.pixels, parse, null);
	const ours = await kindsOfPieces(outfit.pixels, labels, markedPieces(labels), parse.picture);
	const wanted = new Set(truth.map(({ kind }) => kind).filter((kind) => known.has(kind)));
	const anyShoe = outfit.kinds.findIndex(([kind]) => kind === ANY_SHOE);
	const hasAnyShoe = outfit.marked.includes(anyShoe);
	// A shoe whose kind nobody told can be judged by nobody.
	const isOpen = (kind: string) =>
		hasAnyShoe && !wanted.has(kind) && TOLD_KINDS.find((one) => one.kind === kind)?.slot === 'shoes';
	const said = ours.flatMap(({ kinds: [first], nothing }) =>
		first && nothing < 0.5 ? [{ ...first, sure: first.probability >= KIND_SURE_FROM }] : [],
	);
	const judged = new Map(said.filter(({ kind }) => !isOpen(kind)).map((one) => [one.kind, one]));
	sets.told += judged.size;
	sets.wanted += wanted.size;
	const shoesMarked = outfit.marked.filter((label) => label === anyShoe).length >= LEAST_PIECE * outfit.marked.length;
	const shoesTold = said.some(({ kind }) => isOpen(kind));
	if (shoesTold) shoesOnly.told++;
	if (shoesMarked) shoesOnly.wanted++;
	if (shoesTold && shoesMarked) shoesOnly.right++;
	for (const { kind, sure } of judged.values()) {
		if (wanted.has(kind)) sets.right++;
		if (sure) sets.sure++;
		if (sure && wanted.has(kind)) sets.sureRight++;
	}
	outfits++;
}

const shoes: Guessed[] = [];
let shoesWithinTwo = 0;
for await (const { pixels, tags } of taggedOutfits(folder)) {
	const kinds = TOLD_KINDS.flatMap(({ kind, slot }) => (slot === 'shoes' && kind && tags.includes(kind) ? [kind] : []));
	if (kinds.length === 0 || tags.includes(ANY_SHOE)) continue;
	const parse = await parsePhoto(pixels);
	const marks = parse.classes.map((label) => (label === SLOTS.indexOf('shoes') + 1 ? 1 : 0));
	const area = marks.reduce((sum, mark) => sum + mark, 0);
	if (area < 0.001 * marks.length) continue;
	const [told] = await kindsOfPieces(pixels, parse, [{ slot: 'shoes', slotTold: true, marks, area }], parse.picture);
	const [one, two] = told!.kinds.map(({ kind }) => kind);
	shoes.push({ truth: kinds.find((kind) => kind === one) ?? kinds[0]!, told: told! });
	if ([one, two].some((kind) => kind && kinds.includes(kind as never))) shoesWithinTwo++;
}

const right = rightShares(guesses);
const atSure = saidFrom(guesses, KIND_SURE_FROM);
const ofSlot = SLOTS.map((slot) =>
	guesses.filter(({ truth }) => TOLD_KINDS.some((one) => one.kind === truth && one.slot === slot)),
);
const tables: Table[] = [
	{
		title: `Kinds of ${guesses.length} pieces in ${outfits} outfits, as somebody marked them`,
		columns: ['', 'first guess %', 'within two %'],
		rows: [
			['all', percent(right.first), percent(right.two)],
			['jackets and coats as one, tops and T-shirts too', percent(right.joinedFirst), percent(right.joinedTwo)],
			...SLOTS.flatMap((slot, index): Row[] => {
				const pieces = ofSlot[index]!;
				const shares = rightShares(pieces);
				return pieces.length > 0 ? [[`${slot}, ${pieces.length}`, percent(shares.first), percent(shares.two)]] : [];
			}),
			[`tagged shoes, ${shoes.length}`, percent(rightShares(shoes).first), percent(shoesWithinTwo / shoes.length)],
		],
	},
	{
		title: 'What is said as sure',
		columns: ['from probability', 'of the pieces %', 'right %'],
		rows: [
			[`${KIND_SURE_FROM} (as it ships)`, percent(atSure.share), percent(atSure.right)],
			...[0.9, 0.93].map((wanted): Row => {
				const least = leastFor(guesses, wanted);
				const { share, right: hits } = saidFrom(guesses, least);
				return [least.toFixed(2), percent(share), percent(hits)];
			}),
		],
	},
	{
		title: 'The set of kinds told, with our own outline',
		columns: ['', 'precision %', 'recall %', 'told', 'marked'],
		rows: [
			[
				'all',
				percent(sets.right / sets.told),
				percent(sets.right / sets.wanted),
				String(sets.told),
				String(sets.wanted),
			],
			[
				'all, and any shoe right where only "shoe" is marked',
				percent((sets.right + shoesOnly.right) / (sets.told + shoesOnly.told)),
				percent((sets.right + shoesOnly.right) / (sets.wanted + shoesOnly.wanted)),
				sets.told + shoesOnly.told,
				sets.wanted + shoesOnly.wanted,
			],
			[
				'sure',
				percent(sets.sureRight / sets.sure),
				percent(sets.sureRight / sets.wanted),
				String(sets.sure),
				String(sets.wanted),
			],
		],
	},
	{
		title: 'Commonest errors',
		columns: ['taken for another', 'times'],
		rows: commonestErrors(guesses, 12).map(([pair, times]): Row => [pair, String(times)]),
	},
];
for (const table of tables) console.log(textOfTable(table));
