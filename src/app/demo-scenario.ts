import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { say } from '../language/speak.ts';
import type { DerivedPictures } from '../photo/file/derived-pictures.ts';
import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import type { Kind } from '../wardrobe/words/kind.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import type { Season } from '../wardrobe/words/season.ts';
import type { Wish } from '../wardrobe/words/wish.ts';
import { UserError } from './errors.ts';

const folder = fileURLToPath(new URL('../../demo-images/', import.meta.url));

/** Where what was read of the scenario's pictures lies; `npm run demo-readings` writes it. */
export const READ_FOLDER = `${folder}read/`;
export const READINGS_FILE = `${READ_FOLDER}readings.json`;

/** A garment of the scenario: what its owner would have told, and the days she wore it. */
export type DemoGarment = Partial<GarmentDetails> & {
	readonly file: string;
	readonly name: string;
	readonly kind: Kind;
	readonly wears?: readonly string[];
};

/** The demo's own little world: `demo-images/scenario.json`. */
export type DemoScenario = {
	/** `person` says who she is, for whoever reads the scenario. */
	readonly season: Pick<Season, 'name' | 'startsOn' | 'endsOn'> & Partial<Season> & { readonly person?: string };
	readonly inspirations: readonly { readonly file: string; readonly title: string; readonly group?: string }[];
	readonly garments: readonly DemoGarment[];
	/** What she wishes for, and since how many days. */
	readonly wishes: readonly (Pick<Wish, 'name' | 'slot' | 'kind' | 'target' | 'priceLimit' | 'notes'> & {
		readonly wantedForDays: number;
	})[];
	readonly candidates: readonly {
		readonly file: string;
		readonly name: string;
		readonly kind: Kind;
		readonly price: number | null;
		readonly used?: boolean;
		readonly source?: string;
	}[];
};

/** The demo scenario of this checkout. */
export async function demoScenario(): Promise<DemoScenario> {
	if (!existsSync(`${folder}scenario.json`)) {
		throw new UserError('not-found', say('refusals.noScenario', { folder }));
	}
	return JSON.parse(await readFile(`${folder}scenario.json`, 'utf8')) as DemoScenario;
}

/** The bytes of one of the scenario's pictures. */
export const demoPicture = (file: string): Promise<Uint8Array> => readFile(folder + file);

/** The scenario's pictures with what each is called. */
export const picturesOfScenario = ({
	inspirations,
	garments,
	candidates,
}: DemoScenario): { readonly file: string; readonly title: string }[] => [
	...inspirations.map(({ file, title }) => ({ file, title })),
	...garments.map(({ file, name }) => ({ file, title: name })),
	...candidates.map(({ file, name }) => ({ file, title: name })),
];

/** What was read of each of the scenario's pictures, by file. */
export const demoReadings = async (): Promise<Readonly<Record<string, Reading>>> =>
	JSON.parse(await readFile(READINGS_FILE, 'utf8')) as Record<string, Reading>;

/** The pictures kept beside one of the scenario's; the cut-out only where it shows clothes. */
export async function demoDerived(file: string): Promise<DerivedPictures> {
	const part = (name: string) => readFile(`${READ_FOLDER}${file}.${name}`);
	const cutout = existsSync(`${READ_FOLDER}${file}.cutout.webp`) ? { cutout: await part('cutout.webp') } : {};
	const [thumb, labels, display] = await Promise.all([part('thumb.webp'), part('labels.png'), demoPicture(file)]);
	return { thumb, labels, display, ...cutout };
}
