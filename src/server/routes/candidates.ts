import type { FastifyInstance } from 'fastify';
import { knownIn } from '../../app/found-or-refused.ts';
import { loadSeasonInput } from '../../app/load-season.ts';
import { type Services, todayOf } from '../../app/services.ts';
import { suggestForCandidate } from '../../app/suggest-from-photos.ts';
import type { CandidateCheck } from '../../wardrobe/wishes/candidate.ts';
import { checkCandidate } from '../../wardrobe/wishes/candidate-check.ts';
import { newGarment } from '../../wardrobe/words/new-garment.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import type { CandidateDetails } from '../../wardrobe/words/wish.ts';
import { type ById, byId } from '../schemas/basics.ts';
import { type CandidateChanges, candidateChanges } from '../schemas/wish.ts';

/** Pieces found for sale: checked, then bought (they become garments) or passed. */
export function candidateRoutes(app: FastifyInstance, services: Services): void {
	const { store, events, newId, now } = services;
	const changed = () => events.send({ event: 'changed', data: { what: 'candidates' } });

	const known = knownIn(store.candidates, 'candidate');

	/** The check of one of the season's candidates. */
	async function checkIn(season: Season, id: string): Promise<CandidateCheck> {
		const input = await loadSeasonInput(services, season);
		return checkCandidate(input.candidates.find((one) => one.id === id)!, input);
	}

	app.get<ById>('/api/seasons/:id/candidates', { schema: { params: byId } }, async (request) =>
		(await store.candidates.list()).filter((candidate) => candidate.seasonId === request.params.id),
	);
	app.put<ById & { Body: CandidateChanges }>(
		'/api/candidates/:id',
		{ schema: { params: byId, body: candidateChanges } },
		async (request) => {
			const told = {
				...(request.body.kind ? { kindFrom: 'user' as const } : {}),
				...(request.body.name ? { nameFrom: 'user' as const } : {}),
			};
			const candidate = { ...(await known(request.params.id)), ...request.body, ...told };
			await store.candidates.put(candidate, `Changed the candidate ${candidate.name}`);
			await suggestForCandidate(store, candidate);
			changed();
			return known(candidate.id);
		},
	);
	app.delete<ById>('/api/candidates/:id', { schema: { params: byId } }, async (request) => {
		const candidate = await known(request.params.id);
		await store.candidates.remove(candidate.id, `Put the candidate ${candidate.name} in the bin`);
		changed();
		return { removed: true };
	});
	app.get<ById>('/api/candidates/:id/check', { schema: { params: byId } }, async (request) => {
		const details = await known(request.params.id);
		return checkIn(await knownIn(store.seasons, 'season')(details.seasonId), details.id);
	});
	app.post<ById>('/api/candidates/:id/bought', { schema: { params: byId } }, async (request) => {
		const candidate = await known(request.params.id);
		const { kind, kindFrom, price, name, nameFrom, photoId, seasonId } = candidate;
		const boughtOn = todayOf(services);
		const garment = newGarment(newId(), name, now().toISOString(), {
			...(nameFrom ? { nameFrom } : {}),
			photoIds: [photoId],
			kind,
			kindFrom,
			price,
			boughtOn,
		});
		const season = await store.seasons.get(seasonId);
		if (season) {
			const check = await checkIn(season, candidate.id);
			const wish = check.wishId ? await store.wishes.get(check.wishId) : null;
			if (wish) await store.wishes.put({ ...wish, state: 'answered' }, `${name} answers the wish ${wish.name}`);
		}
		await store.garments.put(garment, `Bought ${name}`);
		await store.candidates.put({ ...candidate, state: 'bought' }, `${name} is now a garment`);
		changed();
		events.send({ event: 'changed', data: { what: 'garments' } });
		return garment;
	});
	app.post<ById>('/api/candidates/:id/passed', { schema: { params: byId } }, async (request) => {
		const candidate: CandidateDetails = { ...(await known(request.params.id)), state: 'passed' };
		await store.candidates.put(candidate, `Passed on ${candidate.name}`);
		changed();
		return candidate;
	});
}
