import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { chroma, type Lab65 } from '../src/colour/lab65.ts';
import { medianOf } from '../src/colour/median.ts';
import { readPhoto } from '../src/photo/read-photo.ts';
import { agreedGround, type GroundPhoto, ownColour } from '../src/reading/ground/agreed-ground.ts';
import { groundLights } from '../src/reading/ground/ground-lights.ts';
import { sameGroundGroups } from '../src/reading/ground/same-ground.ts';
import { correctedBy } from '../src/reading/light/light-model.ts';
import type { Row, Table } from './table.ts';

/** Homes and photos of each that are looked at, the homes of most photos first: about 700 readings. */
const HOMES = 18;
const PHOTOS = 60;
/** Fewer photos of one ground than this are no set. */
const LEAST_PHOTOS = 6;
const NEARLY_GREY = 12;

type Listed = { readonly sender: string; readonly path: string };

/** The photos of a folder by its `index.csv` (columns `image` and `sender`), wherever below it they lie. */
function listedIn(folder: string): Listed[] {
	const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
	const pathOf = new Map(files.map((file) => [basename(file, extname(file)), join(folder, file)]));
	const index = files.find((file) => basename(file) === 'index.csv');
	if (!index) throw new Error(`Expected an index.csv in ${folder} for the real sets; found none.`);
	const [head, ...rows] = readFileSync(join(folder, index), 'utf8').trim().split(/\r?\n/);
	const [image, sender] = ['image', 'sender'].map((name) => head!.split(',').indexOf(name)) as [number, number];
	return rows.flatMap((row) => {
		const cells = row.split(',');
		const path = pathOf.get(cells[image]!);
		return path ? [{ sender: cells[sender]!, path }] : [];
	});
}

/** What each photo of a home says of its ground and cloth; what is worn, a scene or without ground is left out. */
async function photosOf(home: readonly Listed[]): Promise<GroundPhoto[]> {
	const photos: GroundPhoto[] = [];
	for (const { path } of home) {
		const read = await readPhoto(path, { correction: { camera: 'phone' } });
		if (!read.ok || read.reading.photoKind !== 'single') continue;
		const { ground, ownLight, uncorrected } = read.reading;
		if (ground && ownLight)
			photos.push({ id: path, ground, ownLight, camera: 'phone', cloth: uncorrected.slice(0, 1) });
	}
	return photos;
}

type Greys = { readonly untouched: number[]; readonly alone: number[]; readonly agreed: number[] };

/** Chroma of the set's nearly grey garments: as photographed, each photo alone, agreed by ground. */
function greysOf(set: readonly GroundPhoto[]): Greys {
	const lights = groundLights(set);
	const greys = set
		.map((photo) => {
			const seen: Lab65 = photo.cloth[0]!;
			const own = ownColour(photo, seen);
			const light = lights.get(photo.id);
			return { seen, own, agreed: light ? correctedBy(light.model ?? null)(seen) : own };
		})
		.filter(({ own }) => chroma(own) < NEARLY_GREY);
	return {
		untouched: greys.map(({ seen }) => chroma(seen)),
		alone: greys.map(({ own }) => chroma(own)),
		agreed: greys.map(({ agreed }) => chroma(agreed)),
	};
}

const rowOf = (name: string, photos: number, ground: string, use: string, greys: Greys): Row => {
	const middle = (values: number[]) => (values.length > 0 ? medianOf(values) : '');
	return [name, photos, ground, use, greys.alone.length, ...[greys.untouched, greys.alone, greys.agreed].map(middle)];
};

/**
 * Real wardrobes photographed at home, by sender: chroma of nearly grey garments before and after their ground told the light. `folder` is where photos and
 * their `index.csv` were unpacked, null for none: then the reason stands in the table's place.
 */
export async function realSets(folder: string | null): Promise<Table> {
	const title = 'The ground as reference: real wardrobes, median chroma of nearly grey garments';
	const columns = ['home', 'photos', 'ground L*, C*', 'as reference', 'greys', 'untouched', 'each alone', 'agreed'];
	if (!folder || !existsSync(folder)) {
		const why = folder ? `There is no folder ${folder}.` : 'No folder was named (npm run bench -- grounds=FOLDER).';
		return { title, columns, rows: [], notes: [`Left out. ${why}`] };
	}
	const homes = new Map<string, Listed[]>();
	for (const one of listedIn(folder)) homes.set(one.sender, [...(homes.get(one.sender) ?? []), one]);
	const largest = [...homes].sort((one, other) => other[1].length - one[1].length).slice(0, HOMES);
	const rows: Row[] = [];
	const used: Greys[] = [];
	for (const [sender, listed] of largest) {
		const photos = await photosOf(listed.slice(0, PHOTOS));
		const byId = new Map(photos.map((photo) => [photo.id, photo]));
		for (const ids of sameGroundGroups(photos.map(({ id, ground }) => ({ id, seen: ground })))) {
			if (ids.length < LEAST_PHOTOS) continue;
			const set = ids.map((id) => byId.get(id)!);
			const { lab, unused } = agreedGround(set);
			const greys = greysOf(set);
			if (!unused) used.push(greys);
			const colour = `${Math.round(lab[0])}, ${Math.round(chroma(lab))}`;
			rows.push(rowOf(sender, set.length, colour, unused ?? 'used', greys));
		}
		console.error(`grounds: home ${sender} read`);
	}
	const all = (of: keyof Greys) => used.flatMap((greys) => greys[of]);
	const worse = used.filter(({ alone, agreed }) => alone.length > 0 && medianOf(agreed) > medianOf(alone) + 1).length;
	return {
		title,
		columns,
		rows: [
			...rows,
			rowOf('all that are used', rows.length, '', '', {
				untouched: all('untouched'),
				alone: all('alone'),
				agreed: all('agreed'),
			}),
		],
		notes: [
			`${worse} of ${used.length} sets are worse than each photo alone by more than 1.`,
			'Which photos show one garment twice is not told there, so how near such come is measured on the renders alone.',
		],
	};
}
