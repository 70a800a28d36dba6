import { say } from '../language/speak.ts';
import { photoFormatOf } from '../photo/file/photo-format.ts';
import type { Asked, Decided, HomeReads, NewPhoto } from '../store/store.ts';
import { defaultSeason } from '../wardrobe/days/season-defaults.ts';
import { derivePalette } from '../wardrobe/palette/palette.ts';
import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import { newGarment } from '../wardrobe/words/new-garment.ts';
import { EMPTY_PALETTE } from '../wardrobe/words/palette-colour.ts';
import type { Inspiration, Season } from '../wardrobe/words/season.ts';
import type { Wear } from '../wardrobe/words/wear.ts';
import type { CandidateDetails } from '../wardrobe/words/wish.ts';
import { decideOnce, tellChanged } from './decide.ts';
import { type DemoScenario, demoPicture, demoScenario } from './demo-scenario.ts';
import { loadPaletteReadings } from './load-season.ts';
import type { Services } from './services.ts';
import { suggestFromPhotos } from './suggest-from-photos.ts';

/** Keeps the bytes of one of the scenario's pictures. */
async function keepPicture({ store, now }: Services, file: string, title: string): Promise<NewPhoto> {
	const bytes = await demoPicture(file);
	const format = await photoFormatOf(bytes);
	if (!format.ok) throw new Error(say('cli.demoPicture', { file, message: format.message }));
	const id = await store.photos.keepOriginal(bytes);
	const addedAt = now().toISOString();
	return { id, originalName: title, mediaType: format.mediaType, sizeBytes: bytes.length, addedAt };
}

/** The scenario's pictures, kept, by file name. */
async function keepPictures(services: Services, scenario: DemoScenario): Promise<ReadonlyMap<string, NewPhoto>> {
	const titled = [
		...scenario.inspirations.map(({ file, title }) => [file, title] as const),
		...scenario.garments.map(({ file, name }) => [file, name] as const),
		...scenario.candidates.map(({ file, name }) => [file, name] as const),
	];
	const photos = new Map<string, NewPhoto>();
	for (const [file, title] of titled) photos.set(file, await keepPicture(services, file, title));
	return photos;
}

type Pictures = ReadonlyMap<string, NewPhoto>;

const boardOf = (
	{ newId }: Services,
	{ inspirations }: DemoScenario,
	pictures: Pictures,
	seasonId: string,
): Inspiration[] =>
	inspirations.map(({ file, title, group = '' }) => {
		const { id: photoId, addedAt } = pictures.get(file)!;
		return { id: newId(), seasonId, photoId, title, group, addedAt };
	});

const candidatesOf = (
	{ newId }: Services,
	{ candidates }: DemoScenario,
	pictures: Pictures,
	seasonId: string,
): CandidateDetails[] =>
	candidates.map(({ file, name, kind, price, used = true, source = '' }) => {
		const { id: photoId, addedAt } = pictures.get(file)!;
		return {
			id: newId(),
			seasonId,
			photoId,
			name,
			nameFrom: 'user',
			kind,
			kindFrom: 'user',
			price,
			used,
			source,
			state: 'open',
			addedAt,
		};
	});

/** The scenario's garments and the days they were worn; a garment that shows the same picture already is described anew. */
async function garmentsOf(services: Services, home: HomeReads, scenario: DemoScenario, pictures: Pictures) {
	const garments: GarmentDetails[] = [];
	const wears: Wear[] = [];
	for (const { file, wears: days = [], ...told } of scenario.garments) {
		const { id: photoId, addedAt } = pictures.get(file)!;
		const [shown] = await home.showing('garment', photoId);
		const known = shown === undefined ? null : await home.garments.get(shown);
		const garment = known ?? newGarment(services.newId(), told.name, addedAt, { photoIds: [photoId] });
		garments.push({ ...garment, ...detailsIn(told), nameFrom: 'user', kindFrom: 'user' });
		wears.push(...days.map((on) => ({ garmentId: garment.id, on })));
	}
	return { garments, wears };
}

/**
 * Opens the demo scenario beside whatever the home holds, as one decision: season, board, garments with their wears, candidates. Once all
 * pictures are read, the palette is derived. Returns the demo's season.
 */
export async function loadDemo(services: Services, asked: Asked): Promise<Season> {
	const { store, newId, now } = services;
	const scenario = await demoScenario();
	const pictures = await keepPictures(services, scenario);
	const addedAt = now().toISOString();
	const { person: _person, ...told } = scenario.season;
	const season: Season = { ...defaultSeason({ ...told, id: newId(), addedAt }), ...told };
	const { answer, repeated } = await decideOnce(services, asked, async (home) => {
		const { garments, wears } = await garmentsOf(services, home, scenario, pictures);
		const does: Decided = {
			photos: [...pictures.values()],
			seasons: { put: [season] },
			inspirations: { put: boardOf(services, scenario, pictures, season.id) },
			garments: { put: garments },
			candidates: { put: candidatesOf(services, scenario, pictures, season.id) },
			wears: { put: wears },
			palettes: [{ seasonId: season.id, palette: EMPTY_PALETTE }],
		};
		return {
			does,
			sentence: say('decisions.openedDemo', { name: season.name }),
			answer: async (after) => (await after.seasons.get(season.id))!,
		};
	});
	if (repeated) return answer;
	const ids = [...pictures.values()].map(({ id }) => id);
	for (const { id, status } of await store.photos.list(ids)) if (status !== 'read') await services.jobs.enqueue(id);
	await services.jobs.settled();
	await suggestFromPhotos(services, ids);
	await notePalette(services, season);
	return answer;
}

/** The palette that follows from the pictures: nobody's decision. */
async function notePalette({ store, events }: Services, season: Season): Promise<void> {
	const { baseCount, colourCount } = season;
	const changed = await store.note(async (home) => {
		if (!(await home.seasons.get(season.id))) return {};
		const readings = await loadPaletteReadings(home, season, 'inspirations');
		return {
			palettes: [{ seasonId: season.id, palette: derivePalette(readings, { baseCount, colourCount, seed: 1 }) }],
		};
	});
	tellChanged(events, changed);
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
