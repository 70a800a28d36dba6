/**
 * Measures what is proposed for a piece of a picture, through the program's own judgement of answers, on outfits whose pixels somebody has marked:
 *
 *     node --import tsx bench/kinds/retrieval.ts FOLDER
 *
 * FOLDER as for bench/kinds/main.ts. Each worn piece of a validation outfit, as the program outlines and reads it, is asked for among 200 pieces of other
 * outfits, drawn with a fixed seed; these have the colours and patterns that were read of them and the kind that somebody marked, as a wardrobe has. The
 * nearest three that `has it` or `near it` says are proposed. Right: of the marked family, and within 12 (CIEDE2000): as the judgement measures colours, and
 * by the main colours alone, whatever the light.
 */
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { parsePhoto } from '../../src/photo/networks/outline/parser.ts';
import { piecesOfPhoto } from '../../src/photo/pieces-of-photo.ts';
import { markedPieces } from '../../src/reading/kinds/marked-pieces.ts';
import { outlineOf } from '../../src/reading/outline/outline.ts';
import { readingOfPixels } from '../../src/reading/reading-of-pixels.ts';
import { costOf } from '../../src/wardrobe/pictures/picture-outfit.ts';
import { answersTo, HAS_IT_WITHIN, likelihoodOf, type PieceAnswer } from '../../src/wardrobe/pictures/piece-answer.ts';
import { KIND_NAMES, type Kind } from '../../src/wardrobe/words/kind.ts';
import { familyOfKind } from '../../src/wardrobe/words/kind-family.ts';
import type { Piece, Trust } from '../../src/wardrobe/words/reading.ts';
import { SLOTS, type Slot } from '../../src/wardrobe/words/slot.ts';
import { type Row, type Table, textOfTable } from '../table.ts';
import { drawing } from './composites.ts';
import { type LabelledOutfit, labelledOutfits } from './labelled-outfits.ts';

const [folder, ...more] = process.argv.slice(2);
if (!folder || more.length > 0) {
	console.error('Expected one folder of labelled outfits. Usage: node --import tsx bench/kinds/retrieval.ts FOLDER');
	process.exit(2);
}
const OTHERS = 200;
const PROPOSED = 3;

/** A piece as the program reads it, with the kind that somebody marked where it lies. */
type KnownPiece = { readonly outfit: string; readonly truth: Kind; readonly piece: Piece; readonly trust: Trust };

const isKind = (word: string): word is Kind => (KIND_NAMES as readonly string[]).includes(word);

/** The kind of which most of the marked cloth is that lies under these marks; null where half of the marks lie on none that has a word. */
function markedKind({ kinds, marked }: LabelledOutfit, marks: Uint8Array): Kind | null {
	const counts = new Map<string, number>();
	let area = 0;
	for (const [at, mark] of marks.entries()) {
		if (mark === 0) continue;
		area++;
		const [kind, slot] = kinds[marked[at]!]!;
		if (SLOTS.includes(slot as Slot)) counts.set(kind, (counts.get(kind) ?? 0) + 1);
	}
	const [first] = [...counts].sort((one, other) => other[1] - one[1]);
	return first && first[1] >= area / 2 && isKind(first[0]) ? first[0] : null;
}

async function knownPieces(outfit: LabelledOutfit): Promise<KnownPiece[]> {
	const { pixels } = outfit;
	const parse = await parsePhoto(pixels);
	const { labels } = outlineOf(pixels, parse, null);
	const read = readingOfPixels(pixels, labels, { correction: {}, camera: 'camera', sharedLight: null });
	if (!read) return [];
	const pieces = await piecesOfPhoto({
		pixels,
		labels,
		shown: parse.picture,
		read,
		patterns: new Map(),
		pictureScale: 1,
		noPieces: parse.noPieces,
	});
	const marked = markedPieces(labels);
	return pieces.flatMap((piece) => {
		const mine = marked.find(({ slot, area }) => slot === piece.slot && area / labels.classes.length === piece.share);
		const truth = mine && piece.slot !== 'accessory' ? markedKind(outfit, mine.marks) : null;
		return truth ? [{ outfit: outfit.name, truth, piece, trust: read.trust }] : [];
	});
}

const known: KnownPiece[] = [];
for await (const outfit of labelledOutfits(folder)) known.push(...(await knownPieces(outfit)));

const draw = drawing(1);
/** So many of these, drawn without putting back. */
function some<T>(from: readonly T[], count: number): T[] {
	const left = [...from];
	return Array.from(
		{ length: Math.min(count, left.length) },
		() => left.splice(Math.floor(draw() * left.length), 1)[0]!,
	);
}

type Proposal = { readonly other: KnownPiece; readonly answer: PieceAnswer; readonly cost: number };

/** What answers a piece, in the order in which the program prefers it. */
function answersOf(piece: Piece, trust: Trust, others: readonly KnownPiece[]): Proposal[] {
	const answerOf = answersTo(piece, trust);
	const answered: Proposal[] = [];
	for (const other of others) {
		const swatches = other.piece.swatches.map((swatch) => ({ ...swatch, slot: other.piece.slot }));
		const answer = answerOf({ kind: other.truth, swatches, trust: other.trust, pattern: other.piece.pattern });
		if (answer && answer.degree !== 'missing')
			answered.push({ other, answer, cost: costOf(answer, likelihoodOf(piece, other.truth)) });
	}
	return answered.sort((one, two) => one.cost - two.cost);
}

/** Sums over the proposals for many pieces. */
class Proposals {
	asked = 0;
	three = 0;
	proposed = 0;
	family = 0;
	judged = 0;
	both = 0;
	plainBoth = 0;

	add(one: KnownPiece, answers: readonly Proposal[]): void {
		const shown = answers.slice(0, PROPOSED);
		this.asked++;
		if (shown.length === PROPOSED) this.three++;
		for (const { other, answer } of shown) {
			const family = familyOfKind(other.truth) === familyOfKind(one.truth);
			const judged = answer.distance! <= HAS_IT_WITHIN;
			const plain = deltaE2000(other.piece.swatches[0]!.lab, one.piece.swatches[0]!.lab) <= HAS_IT_WITHIN;
			this.proposed++;
			this.family += Number(family);
			this.judged += Number(judged);
			this.both += Number(family && judged);
			this.plainBoth += Number(family && plain);
		}
	}

	row(name: string): Row {
		const share = (part: number, of = this.proposed) => ((part / of) * 100).toFixed(1);
		const shares = [this.both, this.plainBoth, this.family, this.judged].map((part) => share(part));
		return [name, this.proposed, ...shares, share(this.three, this.asked)];
	}
}

const all = new Proposals();
const hasIt = new Proposals();
const sure = new Proposals();
const told = new Proposals();
for (const one of known) {
	const others = some(
		known.filter(({ outfit }) => outfit !== one.outfit),
		OTHERS,
	);
	const { piece, trust } = one;
	const answers = answersOf(piece, trust, others);
	all.add(one, answers);
	hasIt.add(
		one,
		answers.filter(({ answer }) => answer.degree === 'has it'),
	);
	if (piece.kind !== null) sure.add(one, answers);
	told.add(one, answersOf({ ...piece, kind: one.truth }, trust, others));
}
const table: Table = {
	title: `Answers proposed for ${known.length} worn pieces, of ${OTHERS} pieces of other people each`,
	columns: [
		'',
		'proposed',
		'family, within 12 %',
		'family, main colours within 12 %',
		'family %',
		'within 12 %',
		'three found %',
	],
	rows: [
		all.row('three nearest'),
		hasIt.row('"has it" alone'),
		sure.row('where the kind is said as sure'),
		told.row('where the user has told the kind'),
	],
};
console.log(textOfTable(table));
