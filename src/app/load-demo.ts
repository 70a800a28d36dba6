import { say } from '../language/speak.ts';
import { photoFormatOf } from '../photo/file/photo-format.ts';
import type { Asked, Decided, HomeReads, NewPhoto } from '../store/store.ts';
import { defaultSeason } from '../wardrobe/days/season-defaults.ts';
import { buildLineUp } from '../wardrobe/line-up/line-up.ts';
import { derivePalette } from '../wardrobe/palette/palette.ts';
import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import { newGarment } from '../wardrobe/words/new-garment.ts';
import { EMPTY_PALETTE } from '../wardrobe/words/palette-colour.ts';
import type { Inspiration, Season } from '../wardrobe/words/season.ts';
import type { Wear } from '../wardrobe/words/wear.ts';
import type { CandidateDetails, Wish } from '../wardrobe/words/wish.ts';
import { decideOnce, tellChanged } from './decide.ts';
import {
	type DemoScenario,
	demoDerived,
	demoPicture,
	demoReadings,
	demoScenario,
	picturesOfScenario,
} from './demo-scenario.ts';
import { loadPaletteReadings, loadSeasonInput } from './load-season.ts';
import type { Services } from './services.ts';
import { suggestFromPhotos } from './suggest-from-photos.ts';

const DAY_MS = 24 * 3600 * 1000;

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
	const photos = new Map<string, NewPhoto>();
	for (const { file, title } of picturesOfScenario(scenario))
		photos.set(file, await keepPicture(services, file, title));
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
		return { id: newId(), seasonId, photoId, title, titleFrom: 'user', group, addedAt };
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
 * Opens the demo scenario beside whatever the home holds, as one decision: season, board, garments with their wears, candidates, wishes. What
 * was read of the pictures stands ready; palette and line-up follow from it. Returns the demo's season.
 */
export async function loadDemo(services: Services, asked: Asked): Promise<Season> {
	const { newId, now } = services;
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
			wishes: { put: wishesOf(services, scenario, season) },
			lineUps: [{ seasonId: season.id, garmentIds: [], mustKeep: [], neverUse: [] }],
		};
		return {
			does,
			sentence: say('decisions.openedDemo', { name: season.name }),
			answer: async (after) => (await after.seasons.get(season.id))!,
		};
	});
	if (repeated) return answer;
	await keepReadings(services, pictures);
	await suggestFromPhotos(
		services,
		[...pictures.values()].map(({ id }) => id),
	);
	await notePalette(services, season);
	await noteLineUp(services, season);
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

/** Colours within this of a wish's target answer it (CIEDE2000): what the page offers too. */
const USUAL_TOLERANCE = 8;

const wishesOf = (services: Services, { wishes }: DemoScenario, season: Season): Wish[] =>
	wishes.map(({ wantedForDays, ...told }) => ({
		...told,
		id: services.newId(),
		seasonId: season.id,
		tolerance: USUAL_TOLERANCE,
		yearParts: [season.yearPart],
		expectedWearsPerYear: null,
		wantedSince: new Date(services.now().getTime() - wantedForDays * DAY_MS).toISOString().slice(0, 10),
		state: 'open',
		paletteColourId: null,
	}));

/** What was read of the scenario's pictures stands ready beside them: no reader is started. */
async function keepReadings({ store, events, followLight }: Services, pictures: Pictures): Promise<void> {
	const readings = await demoReadings();
	for (const [file, { id }] of pictures) {
		const photo = await store.photos.get(id);
		if (!photo || photo.status === 'read') continue;
		await store.photos.saveReading(id, readings[file]!, await demoDerived(file));
		events.send({ event: 'photo', data: { id, status: 'read' } });
		await followLight(photo, readings[file]!);
	}
}

/** The set that does most with the season's own numbers: nobody's decision, to be changed like any other. */
async function noteLineUp({ store, events, now }: Services, season: Season): Promise<void> {
	const changed = await store.note(async (home) => {
		if (!(await home.seasons.get(season.id))) return {};
		const input = await loadSeasonInput({ store: home, now }, season);
		const { quotas, targetCount } = season;
		const { garmentIds } = buildLineUp(input, { quotas, targetCount, mustKeep: [], neverUse: [] });
		return { lineUps: [{ seasonId: season.id, garmentIds, mustKeep: [], neverUse: [] }] };
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
