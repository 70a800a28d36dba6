import { Readable } from 'node:stream';
import { defaultSeason } from '../wardrobe/days/season-defaults.ts';
import { derivePalette } from '../wardrobe/palette/palette.ts';
import type { Season } from '../wardrobe/words/season.ts';
import { demoPicture, demoScenario } from './demo-scenario.ts';
import { takeIn } from './intake.ts';
import type { Purpose } from './intake-item.ts';
import { loadPaletteReadings } from './load-season.ts';
import type { Services } from './services.ts';

/** The jobs' settling is awaited, so that the palette is derived from all pictures. */
async function take(
	services: Services,
	file: string,
	name: string,
	purpose: Purpose,
	seasonId: string,
): Promise<string> {
	const incoming = await services.receive(Readable.from([await demoPicture(file)]));
	const item = await takeIn(services, { incoming, name }, purpose, seasonId);
	if (!item.ok) throw new Error(`the demo picture ${file} cannot be taken: ${item.message}`);
	return item.thingId;
}

/**
 * Loads the demo scenario beside whatever the home holds: pictures, garments with their wears, candidates, and the palette derived once all
 * pictures are read. Returns the demo's season.
 */
export async function loadDemo(services: Services): Promise<Season> {
	const { store, newId, now } = services;
	const scenario = await demoScenario();
	const season: Season = {
		...defaultSeason({ ...scenario.season, id: newId(), addedAt: now().toISOString() }),
		...scenario.season,
	};
	await store.seasons.put(season, `Opened the demo ${season.name}`);
	for (const { file, title, group } of scenario.inspirations) {
		const id = await take(services, file, title, 'inspiration', season.id);
		const inspiration = (await store.inspirations.get(id))!;
		if (group) await store.inspirations.put({ ...inspiration, group }, `Grouped ${title}`);
	}
	for (const { file, wears = [], ...told } of scenario.garments) {
		const id = await take(services, file, told.name, 'garment', season.id);
		const garment = (await store.garments.get(id))!;
		await store.garments.put(
			{ ...garment, ...detailsIn(told), nameFrom: 'user', kindFrom: 'user' },
			`Described ${told.name}`,
		);
		if (wears.length > 0)
			await store.addWears(
				wears.map((on) => ({ garmentId: id, on })),
				`Noted the wears of ${told.name}`,
			);
	}
	for (const { file, name, kind, price, used = true, source = '' } of scenario.candidates) {
		const id = await take(services, file, name, 'candidate', season.id);
		const candidate = (await store.candidates.get(id))!;
		await store.candidates.put(
			{ ...candidate, name, nameFrom: 'user', kind, kindFrom: 'user', price, used, source },
			`Described the candidate ${name}`,
		);
	}
	await services.jobs.settled();
	const readings = await loadPaletteReadings(store, season, 'inspirations');
	const { baseCount, colourCount } = season;
	await store.savePalette(
		season.id,
		derivePalette(readings, { baseCount, colourCount, seed: 1 }),
		`Derived the palette from ${readings.length} pictures`,
	);
	services.events.send({ event: 'changed', data: { what: 'everything' } });
	return season;
}

const DETAILS = [
	'name',
	'kind',
	'place',
	'price',
	'boughtOn',
	'yearParts',
	'basic',
	'loved',
	'warmth',
	'condition',
	'wayOut',
	'notes',
	'care',
] as const;

/** The part of a scenario's garment that is stored: its truth and light are for the tests only. */
const detailsIn = (told: object) =>
	Object.fromEntries(
		DETAILS.filter((field) => field in told).map((field) => [field, told[field as keyof typeof told]]),
	);
