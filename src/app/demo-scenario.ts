import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { say } from '../language/speak.ts';
import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import type { Kind } from '../wardrobe/words/kind.ts';
import type { Season } from '../wardrobe/words/season.ts';
import { UserError } from './errors.ts';

const folder = fileURLToPath(new URL('../../demo-images/', import.meta.url));

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
