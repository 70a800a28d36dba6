/**
 * Measures the garment parser on any folder of photos with label maps:
 *
 *     node --import tsx bench/parser/main.ts FOLDER [--split NAME] [--crops]
 *
 * FOLDER holds photo/NAME.jpg, label/NAME.png (grey value = class, in the order of src/reading/pixels.ts) and, for --split, an index.json with
 * lists of names. --crops adds the same people off centre, cut by the frame, small, and two to a picture.
 */
import { parseArgs } from 'node:util';
import { parsePhoto } from '../../src/photo/networks/outline/parser.ts';
import { outlineOf } from '../../src/reading/outline/outline.ts';
import { CLASSES } from '../../src/reading/pixels.ts';
import { type Row, type Table, textOfTable } from '../table.ts';
import { classFigures, countPixels, emptyConfusion } from './class-figures.ts';
import { CROPS } from './crops.ts';
import { type LabelledPhoto, labelledPhotos } from './labelled-folder.ts';
import { paletteDistances } from './palette-distance.ts';

const USAGE = 'Usage: node --import tsx bench/parser/main.ts FOLDER [--split NAME] [--crops]';

const percent = (share: number) => (Number.isNaN(share) ? '-' : (share * 100).toFixed(1));
function median(values: readonly number[]): number {
	const sorted = [...values].sort((a, b) => a - b);
	const middle = Math.floor(sorted.length / 2);
	return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Figures of one way to take the photos. */
class Measured {
	readonly raw = emptyConfusion();
	readonly outlined = emptyConfusion();
	readonly taken: number[] = [];
	readonly best: number[] = [];
	readonly kinds = { worn: 0, single: 0, scene: 0 };

	async add({ pixels, truth }: LabelledPhoto): Promise<void> {
		const parse = await parsePhoto(pixels);
		countPixels(this.raw, truth.classes, parse.classes);
		const outline = outlineOf(pixels, parse, null);
		this.kinds[outline.photoKind]++;
		// In a scene nothing counts as clothes, whatever the pixels were taken for.
		const labels =
			outline.photoKind === 'scene'
				? { ...outline.labels, classes: new Uint8Array(truth.classes.length) }
				: outline.labels;
		countPixels(this.outlined, truth.classes, labels.classes);
		const distances = paletteDistances(pixels, truth, labels);
		if (distances) {
			this.taken.push(distances.taken);
			this.best.push(distances.best);
		}
	}

	row(name: string): Row {
		const [network, outline] = [classFigures(this.raw), classFigures(this.outlined)];
		const { worn, single, scene } = this.kinds;
		const [taken, best] = [median(this.taken), median(this.best)];
		return [
			name,
			...[network.clothesIou, network.precision, network.recall, network.slotsIou, outline.clothesIou].map(percent),
			taken.toFixed(2),
			best.toFixed(2),
			`${taken >= best ? '+' : ''}${((taken / best - 1) * 100).toFixed(1)}`,
			`${worn}/${single}/${scene}`,
		];
	}
}

const { values, positionals } = parseArgs({
	allowPositionals: true,
	options: { split: { type: 'string' }, crops: { type: 'boolean', default: false } },
});
const [folder, ...more] = positionals;
if (!folder || more.length > 0) {
	console.error(`Expected one folder of labelled photos; received ${positionals.length}.\n${USAGE}`);
	process.exit(2);
}

const photos: LabelledPhoto[] = [];
for await (const photo of labelledPhotos(folder, values.split ?? null)) photos.push(photo);
const ways = values.crops ? Object.entries(CROPS) : Object.entries(CROPS).slice(0, 1);
const rows: Row[] = [];
let byClass: readonly number[] = [];
for (const [name, crop] of ways) {
	const measured = new Measured();
	for (const [index, photo] of photos.entries())
		await measured.add(crop(photo, index, photos[(index + 1) % photos.length]!));
	if (rows.length === 0) byClass = classFigures(measured.raw).iouByClass;
	rows.push(measured.row(name));
}
const tables: Table[] = [
	{
		title: `IoU a class, ${photos.length} photos as they are`,
		columns: ['class', 'IoU %'],
		rows: CLASSES.map((name, index) => [name, percent(byClass[index]!)]),
	},
	{
		title: 'Clothes against the rest, and the palette',
		columns: [
			'photos',
			'IoU %',
			'precision %',
			'recall %',
			'mean IoU of the slots %',
			'IoU % of the outline used',
			'EMD',
			'EMD true mask',
			'worse by %',
			'worn/single/scene',
		],
		rows,
		notes: ['EMD: median earth mover distance (CIEDE2000) of 6 shades to the true clothing pixels.'],
	},
];
for (const table of tables) console.log(textOfTable(table));
