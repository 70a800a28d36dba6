import { keptWords } from '../language/kept-sentence.ts';
import { say } from '../language/speak.ts';
import { photoFormatOf } from '../photo/file/photo-format.ts';
import type { Asked, Decided, HomeReads, NewPhoto } from '../store/store.ts';
import { defaultSeason } from '../wardrobe/days/season-defaults.ts';
import { gapsNow } from '../wardrobe/gaps/season-gaps.ts';
import { buildLineUp } from '../wardrobe/line-up/line-up.ts';
import { derivePalette } from '../wardrobe/palette/palette.ts';
import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import { newGarment } from '../wardrobe/words/new-garment.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import type { Inspiration, Season } from '../wardrobe/words/season.ts';
import type { Wear } from '../wardrobe/words/wear.ts';
import { type CandidateDetails, USUAL_TOLERANCE, type Wish } from '../wardrobe/words/wish.ts';
import { decideOnce } from './decide.ts';
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

const DAY_MS = 24 * 3600 * 1000;

type Picture = NewPhoto & { readonly reading: Reading };

/** The scenario's pictures by file name. */
type Pictures = ReadonlyMap<string, Picture>;

/** Keeps the bytes of one of the scenario's pictures; what was read of it stands ready, so no reader is started. */
async function keepPicture({ store, now }: Services, file: string, title: string, reading: Reading): Promise<Picture> {
	const bytes = await demoPicture(file);
	const format = await photoFormatOf(bytes);
	if (!format.ok) throw new Error(say('cli.demoPicture', { file, message: format.message }));
	const id = await store.photos.keepOriginal(bytes);
	// A picture that the home knows and has read keeps what was made of it.
	if (!(await store.photos.get(id))?.reading) await store.photos.keepDerived(id, await demoDerived(file));
	const addedAt = now().toISOString();
	return { id, originalName: title, mediaType: format.mediaType, sizeBytes: bytes.length, addedAt, reading };
}

/** The scenario's pictures, kept, by file name. */
async function keepPictures(services: Services, scenario: DemoScenario): Promise<Pictures> {
	const readings = await demoReadings();
	const pictures = new Map<string, Picture>();
	for (const { file, title } of picturesOfScenario(scenario))
		pictures.set(file, await keepPicture(services, file, title, readings[file]!));
	return pictures;
}

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
		const before = shown === undefined ? null : await home.garments.get(shown);
		const garment = before ?? newGarment(services.newId(), told.name, addedAt, { photoIds: [photoId] });
		garments.push({ ...garment, ...detailsIn(told), nameFrom: 'user', kindFrom: 'user' });
		wears.push(...days.map((on) => ({ garmentId: garment.id, on })));
	}
	return { garments, wears };
}

/**
 * Opens the demo scenario beside whatever the home holds, as one decision: season, board with what was read of its pictures, garments with their
 * wears, candidates, wishes, and the palette and line-up that follow from them. Returns the demo's season.
 */
export async function loadDemo(services: Services, asked: Asked): Promise<Season> {
	const { newId, now, events, followLight } = services;
	const scenario = await demoScenario();
	const pictures = await keepPictures(services, scenario);
	const addedAt = now().toISOString();
	const { person: _person, ...told } = scenario.season;
	const season: Season = { ...defaultSeason({ ...told, id: newId(), addedAt }), ...told };
	const { answer, repeated } = await decideOnce(services, asked, async (home) => ({
		does: await holdingsOf(services, home, { scenario, pictures, season }),
		follows: (after) => directionOf(services, after, season),
		sentence: keptWords('decisions.openedDemo', { name: season.name }),
		answer: async (after) => (await after.seasons.get(season.id))!,
	}));
	if (repeated) return answer;
	for (const { id, reading } of pictures.values()) {
		events.send({ event: 'photo', data: { id, status: 'read' } });
		const photo = await services.store.photos.get(id);
		if (photo) await followLight(photo, reading);
	}
	return answer;
}

type Demo = { readonly scenario: DemoScenario; readonly pictures: Pictures; readonly season: Season };

/** All that the scenario itself tells. */
async function holdingsOf(services: Services, home: HomeReads, { scenario, pictures, season }: Demo): Promise<Decided> {
	const { garments, wears } = await garmentsOf(services, home, scenario, pictures);
	return {
		photos: [...pictures.values()],
		seasons: { put: [season] },
		inspirations: { put: boardOf(services, scenario, pictures, season.id) },
		garments: { put: garments },
		candidates: { put: candidatesOf(services, scenario, pictures, season.id) },
		wears: { put: wears },
		wishes: { put: wishesOf(services, scenario, season) },
	};
}

/** The palette that the pictures give, and the set that does most with the season's own numbers; both to be changed like any other. */
async function directionOf({ now }: Services, home: HomeReads, season: Season): Promise<Decided> {
	const { baseCount, colourCount, quotas, targetCount } = season;
	const readings = await loadPaletteReadings(home, season, 'inspirations');
	const palette = derivePalette(readings, { baseCount, colourCount, seed: 1 });
	const input = { ...(await loadSeasonInput({ store: home, now }, season)), palette };
	const { garmentIds } = buildLineUp(input, { quotas, targetCount, mustKeep: [], neverUse: [] });
	const lineUp = { seasonId: season.id, garmentIds, mustKeep: [], neverUse: [] };
	const gapIds = gapsNow({ ...input, lineUp }).map(({ id }) => id);
	return { palettes: [{ seasonId: season.id, palette }], lineUps: [{ ...lineUp, gapIds }] };
}

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
